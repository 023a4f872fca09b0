package org.matraloom.mouth;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.matraloom.loudness.StretchLoudness;
import org.matraloom.onset.Onset;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.score.SolluSound;
import org.matraloom.voice.PhoneConsonant;
import org.matraloom.voice.PhoneSyllable;

/**
 * Makes a voice of recordings and of sheets that say what was spoken in them: finds the sollus by
 * the ear, cuts them out, places them, and says which of them it doubts.
 */
public final class KitMaker {

  private static final int LONGEST_MINUTES = 20;
  private static final int SECONDS_A_MINUTE = 60;
  private static final double LEAST_CONFIDENCE = 0.10;
  private static final double DOUBTED_CONFIDENCE = 0.30;
  private static final int MS = Kit.RATE / 1000;
  private static final int NEXT_TO = 600 * MS;
  private static final int GUARD = 8 * MS;
  private static final int FADE_IN = 2 * MS;
  private static final int FADE_OUT = 30 * MS;
  private static final int LONGEST = 4 * Kit.RATE;
  private static final int LOUDNESS_OVER = 100 * MS;

  private final Lexicon lexicon;
  private final List<KitSample> samples = new ArrayList<>();
  private final Map<String, float[]> sounds = new LinkedHashMap<>();
  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<String> missing = new ArrayList<>();

  /**
   * A maker that has heard nothing.
   *
   * @param lexicon the phones of the sollus
   */
  public KitMaker(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  /**
   * Takes the sollus of a recording.
   *
   * @param recording any file that can be read as a recording, up to 20 minutes
   * @param sheet what was spoken in it
   * @throws KitException if it is too long or silent
   * @throws IOException if it cannot be read
   */
  public void add(Path recording, CueSheet sheet) throws IOException {
    KitSounds.Read read = KitSounds.readBoth(recording, LONGEST_MINUTES * SECONDS_A_MINUTE);
    float[] raw = read.sound();
    OnsetCurve curve = OnsetCurve.of(KitSounds.recording(raw));
    if (curve.isSilent()) {
      throw new KitException(recording + " is silent; was the microphone open?");
    }
    List<Onset> onsets = CueMatching.withTold(sheet.called(), curve.onsets(LEAST_CONFIDENCE));
    double[] levelsDb = onsets.stream().mapToDouble(onset -> levelDb(raw, frame(onset))).toArray();
    List<OptionalInt> matched = CueMatching.of(sheet.called(), onsets, levelsDb);
    float[] sound = RumbleFilter.without(raw);
    double usualPeriod = PitchMarks.usualPeriod(sound);
    for (int i = 0; i < matched.size(); i++) {
      CalledSollu called = sheet.called().get(i);
      Optional<SamplePlacer.Placed> placed =
          matched.get(i).isPresent()
              ? placed(sound, onsets, matched, i, sheet.called(), usualPeriod)
              : Optional.empty();
      if (placed.isEmpty()) {
        missing.add(told(called) + (matched.get(i).isEmpty() ? " was not heard" : " has no voice"));
      } else {
        double confidence = onsets.get(matched.get(i).getAsInt()).confidence();
        keep(sound, read, called, placed.get(), confidence, neighbours(onsets, matched, sheet, i));
      }
    }
  }

  /**
   * What was made of everything that was added.
   *
   * @param head whose voice it is
   * @return the voice
   * @throws KitException if no sollu was found
   */
  public KitDraft draft(KitHead head) throws KitException {
    if (samples.isEmpty()) {
      throw new KitException(
          "no sollu of the sheet was found in the recording; do they belong together?");
    }
    List<KitSample> judged = new SampleDoubts(samples).judged();
    return new KitDraft(new Kit(head, judged), sounds, missing);
  }

  private static String told(CalledSollu called) {
    return called.sollu() + " (line " + called.line() + " of the sheet)";
  }

  private PhoneSyllable syllable(String sollu) {
    return lexicon
        .sound(new Sollu(sollu, sollu))
        .map(SolluSound::phones)
        .map(PhoneSyllable::of)
        .orElseThrow(() -> new IllegalArgumentException("the lexicon does not know " + sollu));
  }

  private Optional<SamplePlacer.Placed> placed(
      float[] sound,
      List<Onset> onsets,
      List<OptionalInt> matched,
      int index,
      List<CalledSollu> called,
      double usualPeriod) {
    int at = matched.get(index).getAsInt();
    int onset = frame(onsets.get(at));
    int from = at == 0 ? 0 : frame(onsets.get(at - 1)) + GUARD;
    int to = Math.min(sound.length, onset + LONGEST);
    for (int next = index + 1; next < matched.size() && to > onset; next++) {
      if (matched.get(next).isPresent()) {
        PhoneSyllable after = syllable(called.get(next).sollu());
        int murmur =
            after.first().map(PhoneConsonant::isVoiceless).orElse(true)
                ? GUARD
                : (int) (after.onsetSeconds() * Kit.RATE);
        int begins = frame(onsets.get(matched.get(next).getAsInt())) - murmur;
        to = Math.min(to, begins);
        break;
      }
    }
    return SamplePlacer.place(
        sound, Math.max(0, from), onset, to, syllable(called.get(index).sollu()), usualPeriod);
  }

  /** What was said just before and just after, if it was close. */
  private static List<Optional<String>> neighbours(
      List<Onset> onsets, List<OptionalInt> matched, CueSheet sheet, int index) {
    List<Optional<String>> both = new ArrayList<>();
    for (int other : new int[] {index - 1, index + 1}) {
      boolean near =
          other >= 0
              && other < matched.size()
              && matched.get(other).isPresent()
              && Math.abs(
                      frame(onsets.get(matched.get(other).getAsInt()))
                          - frame(onsets.get(matched.get(index).getAsInt())))
                  < NEXT_TO;
      both.add(near ? Optional.of(sheet.called().get(other).sollu()) : Optional.empty());
    }
    return both;
  }

  private static double levelDb(float[] sound, int from) {
    double sum = 1e-12;
    int end = Math.min(sound.length, from + LOUDNESS_OVER);
    for (int i = from; i < end; i++) {
      sum += sound[i] * sound[i];
    }
    return 10 * Math.log10(sum / LOUDNESS_OVER);
  }

  private static int frame(Onset onset) {
    return (int) Math.round(onset.seconds() * Kit.RATE);
  }

  private void keep(
      float[] sound,
      KitSounds.Read read,
      CalledSollu called,
      SamplePlacer.Placed placed,
      double confidence,
      List<Optional<String>> neighbours) {
    SamplePlaces places = placed.places();
    float[] cut = new float[places.end()];
    System.arraycopy(sound, placed.begin(), cut, 0, cut.length);
    List<String> doubts = new ArrayList<>(placed.doubts());
    if (confidence < DOUBTED_CONFIDENCE) {
      doubts.add("the ear is not sure of it");
    }
    if (read.isClipped(placed.begin(), placed.begin() + cut.length)) {
      doubts.add("it is clipped");
    }
    fade(
        cut,
        Math.min(FADE_IN, places.release()),
        Math.min(FADE_OUT, cut.length - places.steadyBegin()));
    int number = numbers.merge(called.sollu(), 1, Integer::sum);
    String file = called.sollu() + "-" + number + ".wav";
    int vowel = places.vowel();
    sounds.put(file, cut);
    samples.add(
        new KitSample(
            called.sollu(),
            file,
            neighbours.get(0),
            neighbours.get(1),
            places,
            StretchLoudness.loudestLufs(cut, vowel, cut.length, LOUDNESS_OVER, Kit.RATE),
            peakDb(cut, vowel),
            doubts));
  }

  private static void fade(float[] cut, int in, int out) {
    for (int i = 0; i < in; i++) {
      cut[i] *= (float) FadeShape.at((double) i / in);
    }
    for (int i = 0; i < out; i++) {
      cut[cut.length - 1 - i] *= (float) FadeShape.at((double) i / out);
    }
  }

  private static double peakDb(float[] cut, int from) {
    double peak = 1e-9;
    for (int i = from; i < cut.length; i++) {
      peak = Math.max(peak, Math.abs(cut[i]));
    }
    return 20 * Math.log10(peak);
  }
}
