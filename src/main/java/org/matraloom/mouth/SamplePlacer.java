package org.matraloom.mouth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.matraloom.voice.PhoneConsonant;
import org.matraloom.voice.PhoneManner;
import org.matraloom.voice.PhoneSyllable;

/**
 * Finds the parts of one spoken sollu.
 *
 * <p>The release is where the high bands rise most; the vowel onset is found by {@link
 * VowelFinder}; a nasal begins where the bands above the first formant have fallen half of the way.
 */
final class SamplePlacer {

  /** A sollu in a recording: where its file begins there, and its places in the file. */
  record Placed(int begin, SamplePlaces places, List<String> doubts) {}

  private static final int MS = Kit.RATE / 1000;
  private static final int RISE_REACH = 150 * MS;
  private static final int BURST_REACH = 12 * MS;
  private static final int BURST = 3 * MS;
  private static final int BEFORE_BURST = 5 * MS;
  private static final int LONGEST_MURMUR = 90 * MS;
  private static final int LATE_VOWEL = 120 * MS;
  private static final int LATEST_VOICE = 80 * MS;
  private static final int INTO_VOWEL = 45 * MS;
  private static final int LEAST_STEADY = 25 * MS;
  private static final int NASAL_AFTER = 50 * MS;
  private static final int CLOSING = 15 * MS;
  private static final int QUIET = 20 * MS;
  private static final int SHORT_VOWEL = 70 * MS;
  private static final double SILENT = 0.02;
  private static final double MURMUR = 0.10;
  private static final double STEADY = 0.5;

  private final float[] sound;
  private final int from;
  private final int to;
  private final int onset;
  private final PhoneSyllable syllable;
  private final double usualPeriod;
  private final List<String> doubts = new ArrayList<>();
  private final BandLevel voice;
  private final BandLevel open;

  private SamplePlacer(
      float[] sound, int from, int onset, int to, PhoneSyllable syllable, double usualPeriod) {
    this.usualPeriod = usualPeriod;
    this.sound = sound;
    this.from = from;
    this.to = to;
    this.onset = onset;
    this.syllable = syllable;
    this.voice = BandLevel.of(sound, from, to, OnsetBand.VOICE, Kit.RATE);
    this.open = BandLevel.of(sound, from, to, OnsetBand.OPEN, Kit.RATE);
  }

  /**
   * Places a sollu.
   *
   * @param sound the recording, freed of rumble
   * @param from nothing of the sollu lies before this frame
   * @param onset where the ear heard it begin
   * @param to nothing of it lies from this frame on
   * @param syllable what was said
   * @param usualPeriod about how long a period of this voice is, in frames
   * @return the places; nothing where no voice is
   */
  static Optional<Placed> place(
      float[] sound, int from, int onset, int to, PhoneSyllable syllable, double usualPeriod) {
    return to - onset < LEAST_STEADY
        ? Optional.empty()
        : new SamplePlacer(sound, from, onset, to, syllable, usualPeriod).placed();
  }

  private Optional<Placed> placed() {
    VowelFinder finder = new VowelFinder(from, to, voice, open);
    int found = release(finder);
    int vowel = finder.find(found, syllable);
    int release = goesOn() ? Math.max(found, vowel - LONGEST_MURMUR) : found;
    if (!finder.isClear(vowel, syllable)) {
      doubts.add("where its vowel begins is not clear");
    }
    int begin = begin(release);
    int end = end(vowel);
    List<Integer> marks = PitchMarks.of(sound, begin, Math.min(to, end + QUIET), usualPeriod);
    marks = marks.stream().filter(mark -> mark < end).toList();
    List<Integer> voiced = marks.stream().filter(mark -> mark >= vowel - MS).toList();
    boolean silent = voiced.isEmpty() || voiced.get(0) - vowel > LATEST_VOICE;
    if (silent || voiced.size() < SamplePlaces.FEWEST_MARKS || end - vowel < LEAST_STEADY) {
      return Optional.empty();
    }
    int lastVoice = voiced.get(voiced.size() - 1);
    OptionalInt nasal = syllable.closesIntoNasal() ? nasal(vowel, lastVoice) : OptionalInt.empty();
    int vowelEnd = nasal.orElse(Math.min(lastVoice, end));
    int[] steady = steady(vowel, vowelEnd, nasal.isPresent());
    judge(release, vowel, vowelEnd, voiced);
    SamplePlaces places =
        new SamplePlaces(
            Math.max(0, release - begin),
            vowel - begin,
            vowel - begin,
            steady[0] - begin,
            steady[1] - begin,
            nasal.isEmpty() ? nasal : OptionalInt.of(nasal.getAsInt() - begin),
            end - begin,
            marks.stream().map(mark -> mark - begin).toList());
    return Optional.of(new Placed(begin, places, doubts));
  }

  /** Whether the vowel is opened by what may go on as long as one likes, a murmur or a trill. */
  private boolean goesOn() {
    return OnsetBand.of(syllable) == OnsetBand.OPEN || OnsetBand.opensBy(syllable, PhoneManner.TAP);
  }

  /**
   * Of a stop, where the high bands rise most, near where the ear heard it; if it heard the voice
   * that sets in behind the closed mouth, near where the mouth opens.
   */
  private int release(VowelFinder finder) {
    boolean released = syllable.first().map(PhoneConsonant::isReleased).orElse(false);
    if (!released) {
      return onset;
    }
    boolean voiceless = syllable.first().map(PhoneConsonant::isVoiceless).orElse(true);
    int opening = voiceless ? onset : finder.opening(onset);
    return opening - onset > INTO_VOWEL ? burst(opening - 2 * BURST_REACH, opening) : burst(onset);
  }

  private int burst(int heard) {
    return burst(heard - BURST_REACH, heard + BURST_REACH);
  }

  private int burst(int earliest, int latest) {
    int best = (earliest + latest) / 2;
    double most = 0;
    int first = Math.max(from + BURST, earliest);
    double floor = 1e-4 * rough(earliest, latest + BURST_REACH) + 1e-12;
    for (int at = first; at < Math.min(to - BURST, latest); at += MS / 4) {
      double rise = rough(at, at + BURST) / (rough(at - BURST, at) + floor);
      if (rise > most) {
        most = rise;
        best = at;
      }
    }
    return best;
  }

  /** The mean power of the differences of neighbours, which are large in noise. */
  private double rough(int first, int end) {
    double sum = 0;
    int begin = Math.max(Math.max(from, 0) + 1, first);
    for (int i = begin; i < Math.min(to, end); i++) {
      double step = sound[i] - sound[i - 1];
      sum += step * step;
    }
    return sum / Math.max(1, end - begin);
  }

  /** Before the release there is nothing to keep but a murmur. */
  private int begin(int release) {
    boolean voiceless = syllable.first().map(PhoneConsonant::isVoiceless).orElse(true);
    if (voiceless) {
      return Math.max(from, release - BEFORE_BURST);
    }
    double least = MURMUR * voice.at(voice.top(release, Math.min(to, release + RISE_REACH)));
    int natural = (int) (1.3 * syllable.onsetSeconds() * Kit.RATE);
    int earliest = Math.max(from, release - Math.min(LONGEST_MURMUR, natural));
    int begin = release;
    while (begin > earliest && voice.at(begin - 1) > least) {
      begin--;
    }
    return Math.max(from, Math.min(begin, release - BEFORE_BURST));
  }

  private int end(int vowel) {
    int top = voice.top(vowel, Math.min(to, vowel + RISE_REACH));
    double least = SILENT * voice.at(top);
    int quiet = 0;
    for (int at = top; at < to; at++) {
      quiet = voice.at(at) < least ? quiet + 1 : 0;
      if (quiet >= QUIET) {
        return at - QUIET / 2;
      }
    }
    return to;
  }

  private OptionalInt nasal(int vowel, int lastVoice) {
    int from = vowel + NASAL_AFTER;
    if (lastVoice - from < NASAL_AFTER / 2) {
      return OptionalInt.empty();
    }
    int top = open.top(vowel, Math.min(lastVoice, vowel + RISE_REACH));
    int late = lastVoice - (lastVoice - from) / 4;
    double murmur = open.at(open.bottom(from, late));
    double middle = (open.at(top) + murmur) / 2;
    int at = Math.max(top, from);
    while (at < late && open.at(at) > middle) {
      at++;
    }
    return OptionalInt.of(at);
  }

  /** What may be drawn out: not the opening into the vowel, not what fades or closes. */
  private int[] steady(int vowel, int vowelEnd, boolean closes) {
    int length = vowelEnd - vowel;
    int begin = vowel + Math.min(INTO_VOWEL, length / 3);
    int last = vowelEnd - (closes ? Math.min(CLOSING, length / 5) : 0);
    double least = STEADY * voice.at(voice.top(vowel, vowelEnd));
    int end = last;
    while (end > begin + LEAST_STEADY && voice.at(end) < least) {
      end--;
    }
    if (end - begin < LEAST_STEADY) {
      end = Math.min(last, begin + LEAST_STEADY);
      begin = Math.min(begin, Math.max(vowel, end - LEAST_STEADY));
    }
    return new int[] {begin, Math.max(begin + 1, end)};
  }

  private void judge(int release, int vowel, int vowelEnd, List<Integer> voiced) {
    if (vowel - release > LATE_VOWEL) {
      doubts.add("its vowel begins late");
    }
    if (vowelEnd - vowel < SHORT_VOWEL) {
      doubts.add("its vowel is short");
    }
    if (voiced.get(0) - vowel > INTO_VOWEL) {
      doubts.add("its voice is rough where the vowel begins");
    }
    if (syllable.closesIntoNasal() && vowelEnd == voiced.get(voiced.size() - 1)) {
      doubts.add("its nasal was not found");
    }
  }
}
