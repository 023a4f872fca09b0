package org.matraloom.app.lesson;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.matraloom.breath.BreathSettings;
import org.matraloom.live.LivePiece;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;
import org.matraloom.sound.SrutiDrone;
import org.matraloom.sound.TakeNote;
import org.matraloom.spell.ScorePrinter;
import org.matraloom.staircase.Help;
import org.matraloom.voice.SolluVoice;
import org.matraloom.wav.PcmFormat;

/**
 * One pass: what is said, and with what help.
 *
 * @param what its name in words
 * @param composition what is said, at its tempo
 * @param timeline the same laid out, with what is heard of the hand
 * @param help what is played with it
 */
public record LessonPass(String what, Composition composition, Timeline timeline, Help help) {

  /** Avartanas that are counted before it. */
  static final int COUNT_IN = 1;

  /**
   * The tempo.
   *
   * @return whole beats a minute
   */
  public int tempo() {
    return (int) Math.round(composition.tempo().beatsPerMinute().toDouble());
  }

  /**
   * What is played next.
   *
   * @return one line
   */
  public String words() {
    return what + ", " + tempo() + " beats a minute, " + help.words();
  }

  /**
   * What is said, as a score.
   *
   * @return its text
   */
  public String text() {
    return ScorePrinter.print(composition);
  }

  /**
   * The guide.
   *
   * @param voice says the sollus
   * @param drone sounds below it, if one is asked for
   * @param format the format in which it is heard
   * @return the piece, one passage
   */
  public LivePiece piece(SolluVoice voice, Optional<SrutiDrone> drone, PcmFormat format) {
    return new LivePiece(List.of(timeline), COUNT_IN, voice, drone, format, BreathSettings.study());
  }

  /**
   * What its take belongs to.
   *
   * @param startFrame the frame of the take at which the guide begins, if it is known
   * @param roundTripFrames the round trip, if it was measured
   * @return the note for the take's file
   */
  public TakeNote note(Optional<Long> startFrame, Optional<Long> roundTripFrames) {
    return new TakeNote(what, text(), timeline, startFrame, roundTripFrames);
  }

  /**
   * What is heard with the help that is left.
   *
   * @return how loud each part is
   */
  public Mix mix() {
    Set<MixPart> silent = EnumSet.noneOf(MixPart.class);
    if (help.compareTo(Help.NO_VOICE) >= 0) {
      silent.add(MixPart.VOICE);
    }
    if (help.compareTo(Help.NO_TICKS) >= 0) {
      silent.add(MixPart.TICK);
    }
    if (help.compareTo(Help.CLAPS) >= 0) {
      silent.add(MixPart.COUNT);
    }
    Mix mix = Mix.practice();
    return silent.isEmpty() ? mix : mix.without(silent).withWholeCountIn();
  }
}
