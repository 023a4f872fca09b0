package org.matraloom.app.open;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.matraloom.app.cli.UserError;
import org.matraloom.score.Lexicon;
import org.matraloom.shelf.SavedText;
import org.matraloom.shelf.ScoreFolder;
import org.matraloom.shelf.ScoreName;

/**
 * What is known of the scores of a folder: a text is proved once, and again when it is another one.
 * A folder of thousands is looked at by all processors. Safe for several threads.
 */
final class KnownScores {

  private record Known(String stamp, ShelfFacts facts) {}

  private final ScoreFolder scores;
  private final Lexicon lexicon;
  private final Map<ScoreName, Known> known = new ConcurrentHashMap<>();

  KnownScores(ScoreFolder scores, Lexicon lexicon) {
    this.scores = scores;
    this.lexicon = lexicon;
  }

  /** What is known of the scores of these names, in their order; of no other is anything kept. */
  List<ShelfFacts> of(List<ScoreName> names) {
    List<ShelfFacts> facts = names.parallelStream().map(this::of).toList();
    known.keySet().retainAll(Set.copyOf(names));
    return facts;
  }

  private ShelfFacts of(ScoreName name) {
    try {
      SavedText saved = scores.read(name);
      return known
          .compute(
              name,
              (same, before) ->
                  before != null && before.stamp().equals(saved.stamp())
                      ? before
                      : new Known(saved.stamp(), ShelfFacts.of(saved.text(), lexicon)))
          .facts();
    } catch (UserError | IOException unreadable) {
      return new ShelfFacts.Unread(String.valueOf(unreadable.getMessage()), 0);
    }
  }
}
