package org.matraloom.pack;

import java.util.Locale;
import java.util.Set;
import org.matraloom.practice.AnswerDrill;
import org.matraloom.score.Composition;
import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;

/**
 * The mixes of a set. The count-in is heard in the middle in all of them.
 *
 * <p>One part on each side and the other parts on the other, and tracks of one part alone, are
 * common practice for rehearsal recordings.
 */
public enum PackMix {
  /** Hand and voice. */
  FULL("everything"),
  /** The voice alone: the student keeps the tala. */
  VOICE("voice only, you keep the tala"),
  /** The hand alone: the student recites. */
  TALA("tala only, you recite"),
  /** Each section is said, then the student says it back. */
  ANSWER("call and answer"),
  /** The tala on the left, the voice on the right. */
  SPLIT("tala left, voice right");

  private static final Set<MixPart> HAND = Set.of(MixPart.CLAP, MixPart.COUNT, MixPart.WAVE);

  private final String words;

  PackMix(String words) {
    this.words = words;
  }

  /**
   * The mix in a file name.
   *
   * @return for example "tala"
   */
  public String slug() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The mix in words.
   *
   * @return for example "tala only, you recite"
   */
  public String words() {
    return words;
  }

  /** The levels. */
  Mix mix() {
    Mix lesson = Mix.lesson().without(Set.of(MixPart.TICK)).withWholeCountIn();
    return switch (this) {
      case FULL, ANSWER -> lesson;
      case VOICE -> lesson.only(Set.of(MixPart.VOICE, MixPart.DRONE));
      case TALA -> lesson.without(Set.of(MixPart.VOICE, MixPart.DRUM));
      case SPLIT -> split(lesson);
    };
  }

  /** What is performed. */
  Composition arranged(Composition composition) {
    return this == ANSWER ? AnswerDrill.of(composition, 1) : composition;
  }

  private static Mix split(Mix lesson) {
    Mix split = lesson.withPan(MixPart.VOICE, 1).withPan(MixPart.DRUM, 1);
    for (MixPart part : HAND) {
      split = split.withPan(part, -1);
    }
    return split;
  }
}
