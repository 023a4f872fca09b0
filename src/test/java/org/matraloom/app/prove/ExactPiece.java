package org.matraloom.app.prove;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A piece as docs/score.md defines it, for tests: written as a score, and summed up without the
 * program's arithmetic. All lengths are whole numbers of a unit of which a beat has {@link #BEAT},
 * so that every matra of every nadai from 1 to 9 in every kalam is whole.
 *
 * @param talaName the tala as it is written
 * @param cycle beats of an avartana
 * @param start where the first round begins, in units after samam
 * @param eduppu where the last matra must end, in units after samam
 * @param steps what is performed
 */
record ExactPiece(String talaName, int cycle, long start, long eduppu, List<Step> steps) {

  /** Units of a beat: the least common multiple of 1 to 9, times 4 for the third kalam. */
  static final long BEAT = 10_080;

  /** A step of the perform plan. */
  sealed interface Step {
    /** The phrase of so many matras, said a number of times. */
    record Say(int matras, int times, int nadai, int kalam) implements Step {}

    /** A silence of matras of a nadai. */
    record RestMatras(int matras, int nadai) implements Step {}

    /** A silence of whole beats. */
    record RestBeats(int beats) implements Step {}

    /** A silence up to a counted beat. */
    record Until(int beat) implements Step {}
  }

  /** A matra of a nadai in a kalam: each kalam twice as many in a beat as the one before. */
  static long matra(int nadai, int kalam) {
    return BEAT / nadai / (1L << (kalam - 1));
  }

  /** Where it ends, in units after the samam before its start. */
  long end() {
    long now = start;
    for (Step step : steps) {
      if (step instanceof Step.Say say) {
        now += say.matras() * say.times() * matra(say.nadai(), say.kalam());
      } else if (step instanceof Step.RestMatras rest) {
        now += rest.matras() * matra(rest.nadai(), 1);
      } else if (step instanceof Step.RestBeats rest) {
        now += rest.beats() * BEAT;
      } else if (step instanceof Step.Until until) {
        now += Math.floorMod((until.beat() - 1) * BEAT - now, cycle * BEAT);
      }
    }
    return now;
  }

  /** By how many units it ends after the nearest eduppu, negative before it. */
  long miss() {
    long past = Math.floorMod(end() - eduppu, cycle * BEAT);
    return 2 * past > cycle * BEAT ? past - cycle * BEAT : past;
  }

  /** What is printed for the length and the miss. */
  String told() {
    Step.Say last = null;
    for (Step step : steps) {
      last = step instanceof Step.Say say ? say : last;
    }
    long matra = matra(last.nadai(), last.kalam());
    long size = Math.abs(miss());
    String side = miss() > 0 ? " late" : " early";
    String beats = mixed(size) + (size <= BEAT ? " beat" : " beats");
    String miss = beats;
    if (size % matra == 0 && size % BEAT != 0) {
      long matras = size / matra;
      String inMatras = matras + (matras == 1 ? " matra" : " matras");
      miss = size % (BEAT / 2) == 0 ? beats + " (" + inMatras + ")" : inMatras + " (" + beats + ")";
    }
    long length = end() - start;
    return mixed(length)
        + (length <= BEAT ? " beat, " : " beats, ")
        + (size == 0 ? "lands" : miss + side);
  }

  /** Units as beats in writing: "3 1/5". */
  static String mixed(long units) {
    long whole = units / BEAT;
    long rest = units % BEAT;
    if (rest == 0) {
      return Long.toString(whole);
    }
    long divisor = BEAT;
    for (long other = rest; other != 0; ) {
      long left = divisor % other;
      divisor = other;
      other = left;
    }
    return (whole == 0 ? "" : whole + " ") + rest / divisor + "/" + BEAT / divisor;
  }

  /** The score. */
  String text() {
    List<String> phrases = new ArrayList<>();
    List<String> plan = new ArrayList<>();
    for (Step step : steps) {
      if (step instanceof Step.Say say) {
        String name = "P" + say.matras();
        String phrase = name + " = " + "ta ".repeat(say.matras()).strip();
        if (!phrases.contains(phrase)) {
          phrases.add(phrase);
        }
        plan.add(name + " x" + say.times() + " nadai " + say.nadai() + " kalam " + say.kalam());
      } else if (step instanceof Step.RestMatras rest) {
        plan.add("rest " + rest.matras() + " matras nadai " + rest.nadai());
      } else if (step instanceof Step.RestBeats rest) {
        plan.add("rest " + rest.beats() + " beats");
      } else if (step instanceof Step.Until until) {
        plan.add("until beat " + until.beat());
      }
    }
    return "tala "
        + talaName
        + "\nstart "
        + place(start)
        + "\neduppu "
        + place(eduppu)
        + "\n\n"
        + String.join("\n", phrases)
        + "\n\nperform\n"
        + plan.stream().map(line -> "  " + line + "\n").collect(Collectors.joining());
  }

  private static String place(long units) {
    return (units < 0 ? "-" : "+") + mixed(Math.abs(units));
  }
}
