package org.matraloom.measure;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.recording.Recording;
import org.matraloom.recording.ShortenedRecording;

/**
 * The silences that a device put into the guide while a take was recorded, as the recorder of this
 * program notes them: a reciter who follows the guide waits with it, and is not to be blamed.
 *
 * @param count how many there were
 * @param stretches where they lie in the take, in its frames; empty if that is not known, the first
 *     ones if there were very many
 * @param ratePerSecond frames a second of the take
 */
public record GuideGaps(int count, List<ShortenedRecording.LeftOut> stretches, int ratePerSecond) {

  /** The guide went on all the time. */
  public static final GuideGaps NONE = new GuideGaps(0, List.of(), 1);

  private static final Pattern NOTE =
      Pattern.compile(
          "; start frame: +(-?\\d{1,12}|unknown); round trip frames: [^;]{1,40};"
              + " frames a second: (\\d{1,6}); silences: (\\d{1,6})((?: \\d{1,12}\\+\\d{1,12})*)");

  /** Copies the list. */
  public GuideGaps {
    stretches = List.copyOf(stretches);
  }

  /**
   * Reads the note of a take.
   *
   * @param file a recording
   * @return {@link #NONE} if it has no such note
   * @throws IOException if the file cannot be read
   */
  public static GuideGaps of(Path file) throws IOException {
    Matcher note = NOTE.matcher(RecordedNote.of(file));
    if (!note.find() || note.group(3).equals("0")) {
      return NONE;
    }
    List<ShortenedRecording.LeftOut> stretches = new ArrayList<>();
    if (!note.group(1).equals("unknown")) {
      long before = Long.parseLong(note.group(1));
      for (String gap : note.group(4).strip().split(" ")) {
        int plus = gap.indexOf('+');
        if (plus > 0) {
          long frames = Long.parseLong(gap.substring(plus + 1));
          long at = before + Long.parseLong(gap.substring(0, plus));
          stretches.add(new ShortenedRecording.LeftOut(at, frames));
          before += frames;
        }
      }
    }
    return new GuideGaps(
        Integer.parseInt(note.group(3)), stretches, Integer.parseInt(note.group(2)));
  }

  /**
   * The take as if the guide had gone on.
   *
   * @param take the whole take
   * @return the same without the stretches in which the guide stood still
   */
  public Recording leftOutOf(Recording take) {
    return stretches.isEmpty() ? take : new ShortenedRecording(take, stretches);
  }

  /**
   * How long the guide stood still, as far as its place is known.
   *
   * @return frames
   */
  public long frames() {
    return stretches.stream().mapToLong(ShortenedRecording.LeftOut::frames).sum();
  }
}
