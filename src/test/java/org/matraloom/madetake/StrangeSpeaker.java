package org.matraloom.madetake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.matraloom.recording.SoundFiles;
import org.matraloom.voice.SolluCue;

/**
 * A voice that is not ours: a folder with one recording of each sollu, said alone; its marks are
 * measured on that recording.
 */
final class StrangeSpeaker implements SolluSpeaker {

  private static final int MARGIN = RATE / 50;
  private static final int SHORT_LEAD = RATE * 42 / 1000;
  private static final double LEAD_SHARE = 0.4;
  private static final int GAP = RATE * 30 / 1000;
  private static final int FADE = RATE / 50;

  private record Word(float[] samples, SyllableMarks marks) {}

  private final Path folder;
  private final Map<String, Word> words = new HashMap<>();

  /** Files are named after the lexicon's name of the sound, at 44.1 kHz. */
  StrangeSpeaker(Path folder) {
    this.folder = folder;
  }

  @Override
  public Spoken say(Optional<SolluCue> before, SolluCue cue, Optional<SolluCue> after) {
    Word word = word(cue);
    int lead = lead(before, cue);
    int onset = word.marks.vowelFrame() - lead;
    boolean whole = onset <= word.marks.releaseFrame();
    int from = whole ? Math.max(0, onset - MARGIN) : onset;
    long until = word.marks.vowelFrame() + cue.lengthFrames();
    if (after.isPresent()) {
      long nextOnset =
          after.get().startFrame() - cue.startFrame() - lead(Optional.of(cue), after.get());
      until = Math.min(until, word.marks.vowelFrame() + nextOnset - GAP);
    }
    int to = (int) Math.min(word.samples.length, Math.max(until, onset + GAP));
    float[] samples = Arrays.copyOfRange(word.samples, from, to);
    for (int i = 0; i < Math.min(FADE, samples.length); i++) {
      samples[samples.length - 1 - i] *= (float) i / FADE;
    }
    for (int i = 0; !whole && i < FADE / 4; i++) {
      samples[i] *= 4f * i / FADE;
    }
    return new Spoken(samples, word.marks.vowelFrame() - from, onset - from);
  }

  /**
   * How long before its vowel a word is heard. Who speaks fast shortens a murmur to less than half
   * the time since the vowel before; here its beginning is left out.
   */
  private int lead(Optional<SolluCue> before, SolluCue cue) {
    SyllableMarks marks = word(cue).marks;
    int lead = marks.vowelFrame() - marks.releaseFrame();
    if (before.isEmpty() || lead <= SHORT_LEAD) {
      return lead;
    }
    long since = cue.startFrame() - before.get().startFrame();
    return (int) Math.min(lead, Math.max(SHORT_LEAD, LEAD_SHARE * since));
  }

  private Word word(SolluCue cue) {
    return words.computeIfAbsent(cue.said().sollu().sound(), this::read);
  }

  private Word read(String name) {
    try {
      float[] samples = SoundFiles.readAll(folder.resolve(name + ".wav"));
      float peak = 0;
      for (float sample : samples) {
        peak = Math.max(peak, Math.abs(sample));
      }
      for (int i = 0; i < samples.length; i++) {
        samples[i] *= 0.9f / peak;
      }
      return new Word(samples, SyllableMarks.of(samples, RATE));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
