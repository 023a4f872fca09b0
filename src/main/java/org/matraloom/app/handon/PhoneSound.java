package org.matraloom.app.handon;

import java.util.List;
import java.util.Optional;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.page.PageSound;
import org.matraloom.page.PageSoundMaker;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.sound.Sruti;
import org.matraloom.voice.SolluVoice;

/** The sounds of a page, at as many tempi as it may carry. */
final class PhoneSound {

  private static final long MOST_SOLLUS = 4_000;
  private static final long LARGEST_SOUND_BYTES = 19_000_000;

  /** The tempi that are offered, in percent; fewer for a piece whose sounds would be too large. */
  private static final List<List<Integer>> PERCENTS =
      List.of(
          List.of(50, 60, 70, 80, 90, 100, 110),
          List.of(50, 75, 100, 110),
          List.of(60, 100),
          List.of(100));

  private PhoneSound() {}

  /** Who speaks on a page, by name. */
  static SolluVoice voice(String who, Lexicon lexicon) {
    return VoiceOptions.named(who, PageSoundMaker.RATE, lexicon, PageSoundMaker.ONE_TAKE, false);
  }

  static PageSound of(
      Performance performance,
      SolluVoice voice,
      PageContentOptions content,
      Optional<Sruti> drone) {
    long sollus = performance.rounds().stream().mapToLong(Span.Round::sollus).sum();
    if (sollus > MOST_SOLLUS) {
      throw new UserError(
          "a page holds at most "
              + MOST_SOLLUS
              + " sollus and this piece has "
              + sollus
              + "; take some of it with --rounds");
    }
    for (List<Integer> percents : PERCENTS) {
      PageSound sound =
          new PageSoundMaker(performance, content.leadIn(), voice).make(percents, drone);
      if (sound.bytes() <= LARGEST_SOUND_BYTES) {
        return sound;
      }
    }
    throw new UserError(
        "the sounds of this piece are too large for a page; take some of it with --rounds");
  }
}
