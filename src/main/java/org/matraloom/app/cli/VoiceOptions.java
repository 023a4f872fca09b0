package org.matraloom.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.matraloom.device.UserFolders;
import org.matraloom.mouth.Kit;
import org.matraloom.mouth.KitShelf;
import org.matraloom.mouth.MouthEar;
import org.matraloom.mouth.OwnVoice;
import org.matraloom.onset.KnownSounds;
import org.matraloom.score.Lexicon;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.SolluVoice;
import org.matraloom.voice.VoiceEffort;
import org.matraloom.voice.VoicePerson;
import org.matraloom.voice.VoicePlacement;
import org.matraloom.voice.VoiceSettings;
import picocli.CommandLine.Option;

/** Who says the sollus, and how. */
public final class VoiceOptions {

  /** Who speaks where nobody is named. */
  public static final String USUAL = "low";

  /** What the option that names a voice says of itself. */
  public static final String WHO =
      "Who speaks: low, high, or a recorded voice by name (default ${DEFAULT-VALUE}).";

  @Option(names = "--voice", paramLabel = "WHO", defaultValue = USUAL, description = WHO)
  private String who;

  @Option(names = "--half-voice", description = "Speak softer and breathier.")
  private boolean halfVoice;

  @Option(
      names = "--felt-beat",
      paramLabel = "WHERE",
      defaultValue = "vowel",
      description = {
        "What falls on the grid: vowel, consonant, or marcus, the estimate of Marcus (1981)",
        "(default ${DEFAULT-VALUE})."
      })
  private VoicePlacement placement;

  @Option(
      names = "--accents",
      paramLabel = "N",
      defaultValue = "1",
      description =
          "How far rounds, samam and phrases stand out, 0 to 3 (default ${DEFAULT-VALUE}).")
  private double accents;

  @Option(
      names = "--spoken-ticks",
      description = "Speak takadimi, takatakita and so on, softly, in place of ticks.")
  private boolean spokenTicks;

  private final List<OwnVoice> own = Collections.synchronizedList(new ArrayList<>());

  /**
   * Who was asked for.
   *
   * @return low, high, or the name or the folder of a recorded voice
   */
  public String who() {
    return who;
  }

  /**
   * The voice that was asked for.
   *
   * @param ratePerSecond frames a second
   * @param lexicon how sollus are said
   * @return the voice
   * @throws UserError if a setting is out of its range, or there is no voice of that name
   */
  public SolluVoice voice(int ratePerSecond, Lexicon lexicon) {
    return noted(named(who, ratePerSecond, lexicon, settings(VoicePerson.LOW), spokenTicks));
  }

  /**
   * The voice of a second reciter: another person, so that the two can be told apart.
   *
   * @param ratePerSecond frames a second
   * @param lexicon how sollus are said
   * @return the voice, without spoken ticks
   * @throws UserError if a setting is out of its range, or there is no voice of that name
   */
  public SolluVoice second(int ratePerSecond, Lexicon lexicon) {
    SolluVoice first = named(who, ratePerSecond, lexicon, settings(VoicePerson.LOW), false);
    VoicePerson like =
        first instanceof OwnVoice recorded ? recorded.like() : person(who).orElseThrow();
    VoicePerson other = like == VoicePerson.LOW ? VoicePerson.HIGH : VoicePerson.LOW;
    return new FormantVoice(ratePerSecond, lexicon, settings(other));
  }

  /**
   * A voice by its name.
   *
   * @param who low, high, or the name or the folder of a recorded voice
   * @param ratePerSecond frames a second
   * @param lexicon how sollus are said
   * @param settings how they are said, whoever speaks
   * @param spokenTicks whether another voice says the subdivision words in place of ticks
   * @return the voice
   * @throws UserError if there is no voice of that name
   */
  public static SolluVoice named(
      String who, int ratePerSecond, Lexicon lexicon, VoiceSettings settings, boolean spokenTicks) {
    Optional<VoicePerson> person = person(who);
    if (person.isPresent()) {
      VoiceSettings all = settings.with(person.get());
      return spokenTicks
          ? FormantVoice.withSpokenTicks(ratePerSecond, lexicon, all)
          : new FormantVoice(ratePerSecond, lexicon, all);
    }
    try {
      Path folder = folderOf(who);
      Kit kit = new KitShelf(folder.getParent()).open(folder.getFileName().toString());
      return new OwnVoice(ratePerSecond, lexicon, settings, kit, folder, spokenTicks);
    } catch (IllegalArgumentException | IOException none) {
      throw new UserError("--voice takes low, high or a recorded voice: " + none.getMessage());
    }
  }

  private static Path folderOf(String who) {
    Path given = Path.of(who);
    Path shelf = given.getParent() == null ? UserFolders.voices() : given.getParent();
    return shelf.resolve(String.valueOf(given.getFileName()));
  }

  /**
   * What the ear may know of a recorded voice.
   *
   * @param who its name or its folder
   * @param lexicon how sollus are said
   * @return what is known of its mouth
   * @throws UserError if there is no voice of that name
   */
  public static KnownSounds mouth(String who, Lexicon lexicon) {
    try {
      Path folder = folderOf(who);
      Kit kit = new KitShelf(folder.getParent()).open(folder.getFileName().toString());
      return MouthEar.of(kit, folder, lexicon);
    } catch (IllegalArgumentException | IOException none) {
      throw new UserError("--voice takes a recorded voice here: " + none.getMessage());
    }
  }

  private static Optional<VoicePerson> person(String who) {
    return Arrays.stream(VoicePerson.values())
        .filter(each -> each.name().equalsIgnoreCase(who))
        .findFirst();
  }

  private SolluVoice noted(SolluVoice voice) {
    if (voice instanceof OwnVoice recorded) {
      own.add(recorded);
    }
    return voice;
  }

  /**
   * Tells which sollus a recorded voice had to have said by another sollu or by the synthesiser.
   *
   * @param err where it is told; nothing is told if nothing was missing
   */
  public void tellInstead(PrintWriter err) {
    tellInstead(List.copyOf(own), who, err);
  }

  /**
   * Tells which sollus a recorded voice had to have said by another sollu or by the synthesiser.
   *
   * @param voices any voices that have spoken
   * @param who what they are called
   * @param err where it is told; nothing is told if nothing was missing
   */
  public static void tellInstead(List<? extends SolluVoice> voices, String who, PrintWriter err) {
    Map<String, String> instead = new TreeMap<>();
    for (SolluVoice voice : voices) {
      if (voice instanceof OwnVoice recorded) {
        instead.putAll(recorded.instead());
      }
    }
    if (!instead.isEmpty()) {
      String list =
          instead.entrySet().stream()
              .map(each -> each.getKey() + " (" + sayer(each.getValue()) + ")")
              .collect(Collectors.joining(", "));
      err.println(Paragraph.folded("Not recorded by " + who + ": " + list + "."));
    }
  }

  private static String sayer(String recorded) {
    return recorded.isEmpty() ? "said by the synthesiser" : "said by its " + recorded;
  }

  VoiceSettings settings() {
    return settings(person(who).orElse(VoicePerson.LOW));
  }

  private VoiceSettings settings(VoicePerson person) {
    try {
      return VoiceSettings.USUAL
          .with(person)
          .with(halfVoice ? VoiceEffort.HALF : VoiceEffort.FULL)
          .with(placement)
          .withAccents(accents);
    } catch (IllegalArgumentException outOfRange) {
      throw new UserError(outOfRange.getMessage());
    }
  }
}
