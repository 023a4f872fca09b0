package org.matraloom.mouth;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.matraloom.score.Lexicon;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.SpokenLine;
import org.matraloom.voice.VoiceEffort;
import org.matraloom.voice.VoicePerson;
import org.matraloom.voice.VoicePlacement;
import org.matraloom.voice.VoiceSettings;

/** A reciter who does not exist: the synthesiser's high voice reads a list into a recording. */
public final class MadeMouth {

  /** What it reads: rows of words, and sollus alone. */
  public static final String SHEET =
      """
      ta
      ka
      di
      mi
      ki
      na
      jo
      dhin
      tom
      nam
      ri
      la
      takadimi
      takita
      tadiginatom
      """;

  private static final List<String> ROWS = SHEET.lines().toList();
  private static final Lexicon LEXICON = Lexicon.standard();

  private final float[] sound;
  private final List<Long> vowels = new ArrayList<>();

  public MadeMouth() {
    SpokenLine line = new SpokenLine();
    for (String row : ROWS) {
      var sollus = LEXICON.split(row).orElseThrow();
      for (var sollu : sollus) {
        vowels.add(line.endFrame());
        line.say(sollu.sound(), sollus.size() == 1 ? 320 : 200);
      }
      line.say(".", 350);
    }
    VoiceSettings settings =
        new VoiceSettings(VoicePerson.HIGH, VoiceEffort.FULL, VoicePlacement.VOWEL, 0, 3);
    sound = line.render(new FormantVoice(SpokenLine.RATE, LEXICON, settings));
    for (int i = 0; i < sound.length; i++) {
      sound[i] *= 0.5f;
    }
  }

  /** Where each vowel began, in frames of the recording. */
  List<Long> vowels() {
    return vowels;
  }

  public float[] sound() {
    return sound;
  }

  /** Writes the recording and its sheet. */
  public Path write(Path folder) throws IOException {
    Path file = folder.resolve("list.wav");
    KitSounds.write(file, sound);
    Files.writeString(folder.resolve("list.txt"), SHEET);
    return file;
  }

  /** The voice that is made of it. */
  static KitDraft draft(Path folder) throws IOException {
    KitMaker maker = new KitMaker(LEXICON);
    maker.add(new MadeMouth().write(folder), CueSheet.read(SHEET, "list.txt", LEXICON));
    return maker.draft(new KitHead("river", "Mira of the Delta", "for the class", "yes"));
  }
}
