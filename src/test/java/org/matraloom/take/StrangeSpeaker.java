package org.matraloom.take;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.matraloom.sound.SolluCue;

/**
 * A voice that is not ours: a folder with one recording of each sollu, said alone; its marks are
 * measured on that recording.
 */
final class StrangeSpeaker implements SolluSpeaker {

  private static final int LEAD = RATE / 50;
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
    SyllableMarks marks = word.marks;
    int from = Math.max(0, marks.releaseFrame() - LEAD);
    long until = marks.vowelFrame() + cue.lengthFrames();
    if (after.isPresent()) {
      SyllableMarks next = word(after.get()).marks;
      long nextOnset =
          after.get().startFrame() - cue.startFrame() - next.vowelFrame() + next.releaseFrame();
      until = Math.min(until, marks.vowelFrame() + nextOnset - GAP);
    }
    int to = (int) Math.min(word.samples.length, Math.max(until, marks.releaseFrame() + GAP));
    float[] samples = Arrays.copyOfRange(word.samples, from, to);
    for (int i = 0; i < Math.min(FADE, samples.length); i++) {
      samples[samples.length - 1 - i] *= (float) i / FADE;
    }
    return new Spoken(samples, marks.vowelFrame() - from, marks.releaseFrame() - from);
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
