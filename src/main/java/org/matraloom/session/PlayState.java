package org.matraloom.session;

import java.util.List;
import java.util.Optional;
import org.matraloom.live.LivePosition;
import org.matraloom.live.PieceSection;
import org.matraloom.score.Composition;
import org.matraloom.sound.Mix;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * All that is to be seen at one moment.
 *
 * @param played what is played
 * @param chosen what was asked for last
 * @param told what is said beside it
 * @param said what was heard of the performer; empty where nobody listens
 */
record PlayState(Played played, Chosen chosen, Told told, Optional<SaidMarks> said) {

  /**
   * What is played.
   *
   * @param composition the piece
   * @param endBeat where its last matra ends
   * @param isPlaying whether something sounds or is about to
   * @param position what is heard; empty before the first start
   * @param sheet the piece beat by beat
   * @param gaps how often the device ran dry
   */
  record Played(
      Composition composition,
      Ratio endBeat,
      boolean isPlaying,
      Optional<LivePosition> position,
      BeatSheet sheet,
      GapTally gaps) {}

  /**
   * What was asked for last.
   *
   * @param section the section that is heard, or will be when the mouth begins, or is chosen
   * @param sectionNumber its place among the sections, from 1
   * @param sections how many sections there are
   * @param rounds how many rounds there are
   * @param tempo the tempo
   * @param mix the mix
   * @param loop what is looped
   * @param parts the parts that can be switched, those that are in the piece
   */
  record Chosen(
      PieceSection section,
      int sectionNumber,
      int sections,
      int rounds,
      Tempo tempo,
      Mix mix,
      Optional<PieceSection> loop,
      List<PartSwitch> parts) {}

  /**
   * What is said beside it.
   *
   * @param showsKeys whether the list of keys is asked for
   * @param message what was done last, in words
   * @param meter the level of the input in words; empty where nothing is recorded
   * @param hint the keys that matter most
   */
  record Told(boolean showsKeys, String message, String meter, String hint) {}

  /** The same moment while a take is recorded. */
  PlayState recording(String words, String level, String keys, Optional<SaidMarks> heard) {
    return new PlayState(played, chosen, new Told(told.showsKeys, words, level, keys), heard);
  }
}
