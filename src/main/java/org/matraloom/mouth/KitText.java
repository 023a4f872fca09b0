package org.matraloom.mouth;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The text beside the samples of a voice, as {@link KitReader} reads it. */
final class KitText {

  /** The name of the text in the folder of a voice. */
  static final String FILE = "voice.txt";

  /** What a missing neighbour is written as. */
  static final String SILENCE = "-";

  private static final String HEAD =
      """
      # A voice of one's own. Times are seconds from the beginning of each sample's file; change
      # them as you like. "beat" is what falls on the grid. "steady" is what is drawn out. "marks",
      # one moment in each period, may be left out: they are then found anew.
      # A sollu that is said badly: delete its lines, from "sollu" to the next "sollu".
      """;

  private KitText() {}

  static String of(Kit kit) {
    StringBuilder text = new StringBuilder(HEAD);
    KitHead head = kit.head();
    line(text, "name", head.name());
    line(text, "owner", head.owner());
    line(text, "terms", head.terms());
    line(text, "consent", head.consent());
    kit.samples().forEach(sample -> append(text, sample));
    return text.toString();
  }

  private static void append(StringBuilder text, KitSample sample) {
    SamplePlaces places = sample.places();
    line(text.append('\n'), "sollu", sample.sollu());
    line(text, "  file", sample.file());
    line(text, "  after", neighbour(sample.after()));
    line(text, "  before", neighbour(sample.before()));
    line(text, "  release", seconds(places.release()));
    line(text, "  vowel", seconds(places.vowel()));
    line(text, "  beat", seconds(places.beat()));
    line(text, "  steady", seconds(places.steadyBegin()) + " " + seconds(places.steadyEnd()));
    places.nasal().ifPresent(nasal -> line(text, "  nasal", seconds(nasal)));
    line(text, "  end", seconds(places.end()));
    line(text, "  loudness", String.format(Locale.ROOT, "%.2f", sample.loudnessLufs()));
    line(text, "  peak", String.format(Locale.ROOT, "%.2f", sample.peakDb()));
    sample.doubts().forEach(doubt -> line(text, "  doubt", doubt));
    line(text, "  marks", all(places.pitchMarks()));
  }

  private static void line(StringBuilder text, String key, String value) {
    text.append((key + " " + value).stripTrailing()).append('\n');
  }

  private static String neighbour(Optional<String> sollu) {
    return sollu.orElse(SILENCE);
  }

  private static String all(List<Integer> frames) {
    return frames.stream().map(KitText::seconds).collect(Collectors.joining(" "));
  }

  /** A hundredth of a millisecond is less than a frame, so that every frame is read back. */
  private static String seconds(int frame) {
    return String.format(Locale.ROOT, "%.5f", (double) frame / Kit.RATE);
  }
}
