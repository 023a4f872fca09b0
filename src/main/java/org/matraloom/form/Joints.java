package org.matraloom.form;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.matraloom.score.Composition;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/**
 * The joints of a phrase as it is said, and which of its sollus stand at equal places.
 *
 * <p>Equal places are the same sollu of a phrase named again, of equal statements side by side, and
 * the gaps of one mora; they have the same joint and the same time after them.
 */
public final class Joints {

  /** Sollus on which the voice rests; common practice. */
  private static final Set<String> CLOSING =
      Set.of("tom", "tam", "dhim", "dim", "dom", "nam", "nom", "jem");

  private static final int ANY_NADAI = 4;
  private static final Ratio LONG_GAP = Ratio.of(2);
  private static final int RUN = 3;

  private final SaidPhrase phrase;
  private final List<Mora> moras;
  private final Joint[] joints;
  private final int[] places;

  private Joints(SaidPhrase phrase) {
    this.phrase = phrase;
    this.joints = new Joint[phrase.size()];
    this.places = new int[phrase.size()];
    Moras found = Moras.in(phrase);
    this.moras = found.moras();
    int top = phrase.topDepth();
    for (int at = 0; at < joints.length; at++) {
      places[at] = at;
      joints[at] = at + 1 == joints.length ? Joint.ROUND : asWritten(at, top);
    }
    moras.forEach(this::strengthen);
    unite(found.runs());
  }

  /**
   * Finds the joints of a phrase.
   *
   * @param composition the piece
   * @param phrase the name of one of its phrases
   * @param nadai the nadai in which passages with a nadai of their own are counted
   * @return its joints
   */
  public static Joints of(Composition composition, String phrase, int nadai) {
    return new Joints(SaidPhrase.of(composition, phrase, nadai));
  }

  /**
   * The joint after a sollu.
   *
   * @param sollu which, counted from 0
   * @return the joint; a round after the last one
   */
  public Joint after(int sollu) {
    return joints[sollu];
  }

  /**
   * Where the next sollu begins, or the phrase ends.
   *
   * @param sollu which sollu comes before, counted from 0
   * @return matras from the beginning of the phrase
   */
  public Ratio matrasAfter(int sollu) {
    return phrase.said().get(sollu).end();
  }

  /**
   * Where a sollu begins.
   *
   * @param sollu which, counted from 0
   * @return matras from the beginning of the phrase
   */
  public Ratio matrasBefore(int sollu) {
    return phrase.said().get(sollu).matra();
  }

  /**
   * Which place a sollu stands at.
   *
   * @param sollu which, counted from 0
   * @return a number, the same for equal places
   */
  public int place(int sollu) {
    int at = sollu;
    while (places[at] != at) {
      at = places[at];
    }
    return at;
  }

  /**
   * How many sollus the phrase says.
   *
   * @return sollus, possibly none
   */
  public int sollus() {
    return joints.length;
  }

  /**
   * The moras of the phrase, those that hold others before these.
   *
   * @return in the order of their beginnings
   */
  public List<Mora> moras() {
    return moras;
  }

  /**
   * The last mora of the phrase that is not a part of another.
   *
   * @return it, if there is a mora
   */
  public Optional<Mora> lastMora() {
    return IntStream.iterate(moras.size() - 1, at -> at >= 0, at -> at - 1)
        .mapToObj(moras::get)
        .filter(mora -> mora.isOutermostOf(moras))
        .findFirst();
  }

  private Joint asWritten(int sollu, int top) {
    int next = sollu + 1;
    if (phrase.hasPartBefore(next, top)) {
      return Joint.SECTION;
    } else if (phrase.hasNameBefore(next, top)) {
      return Joint.LINE;
    } else if (phrase.said().get(next).opens() != Spoken.Opens.NOTHING) {
      return Joint.PHRASE;
    }
    return isPause(sollu) ? Joint.PAUSE : Joint.INSIDE;
  }

  private boolean isPause(int sollu) {
    SaidPhrase.Said said = phrase.said().get(sollu);
    boolean first = sollu == 0 || said.opens() != Spoken.Opens.NOTHING;
    boolean closes = !first && CLOSING.contains(said.sound()) && said.gap().signum() > 0;
    boolean parts =
        said.gap().compareTo(LONG_GAP) >= 0 && runTo(sollu) >= RUN && runFrom(sollu + 1) >= RUN;
    return closes || parts || said.silence().compareTo(LONG_GAP) >= 0;
  }

  /** How many sollus are said without a gap up to one, as far as it matters. */
  private int runTo(int last) {
    int first = last;
    while (last - first + 1 < RUN && first > 0 && goesOn(first - 1)) {
      first--;
    }
    return last - first + 1;
  }

  private int runFrom(int first) {
    int last = first;
    while (last - first + 1 < RUN && last + 1 < joints.length && goesOn(last)) {
      last++;
    }
    return last - first + 1;
  }

  private boolean goesOn(int sollu) {
    return phrase.said().get(sollu).gap().signum() == 0
        && phrase.said().get(sollu + 1).opens() == Spoken.Opens.NOTHING;
  }

  /** The gaps of a mora are joints of it, and so are its beginning and its end. */
  private void strengthen(Mora mora) {
    for (int gap : mora.gaps()) {
      boolean aroundMora =
          moras.stream()
              .anyMatch(
                  o -> o != mora && mora.holds(o) && (o.start() == gap + 1 || o.end() == gap + 1));
      joints[gap] = (aroundMora ? Joint.SECTION : Joint.STATEMENT).or(joints[gap]);
    }
    Joint around = mora.isOutermostOf(moras) ? Joint.SECTION : Joint.PHRASE;
    if (mora.start() > 0) {
      joints[mora.start() - 1] = around.or(joints[mora.start() - 1]);
    }
    joints[mora.end() - 1] = around.or(joints[mora.end() - 1]);
  }

  private void unite(List<Moras.Run> runs) {
    Map<List<Object>, Integer> named = new HashMap<>();
    for (int at = 0; at + 1 < joints.length; at++) {
      SaidPhrase.Said one = phrase.said().get(at);
      List<Object> length = List.of(one.own(), one.ring(), one.silence());
      Integer known =
          named.putIfAbsent(List.of(one.phrase(), phrase.offset(at), length, joints[at]), at);
      if (known != null) {
        unite(known, at);
      }
    }
    for (Moras.Run run : runs) {
      for (int at = run.from(); at + run.sollus() < run.end(); at++) {
        unite(at, at + run.sollus());
      }
    }
    for (Mora mora : moras) {
      List<Integer> gaps = mora.gaps();
      gaps.forEach(gap -> unite(gaps.get(0), gap));
    }
  }

  private void unite(int one, int other) {
    SaidPhrase.Said a = phrase.said().get(one);
    SaidPhrase.Said b = phrase.said().get(other);
    boolean alike =
        joints[one] == joints[other]
            && a.own().equals(b.own())
            && a.ring().equals(b.ring())
            && a.silence().equals(b.silence());
    if (alike) {
      int low = Math.min(place(one), place(other));
      places[Math.max(place(one), place(other))] = low;
    }
  }

  /**
   * The joints of every phrase that is said in rounds.
   *
   * @param composition the piece
   * @param names the phrases of its rounds, possibly repeated
   * @return by name
   */
  public static Map<String, Joints> of(Composition composition, List<String> names) {
    Map<String, Joints> joints = new HashMap<>();
    new HashSet<>(names).forEach(name -> joints.put(name, of(composition, name, ANY_NADAI)));
    return joints;
  }
}
