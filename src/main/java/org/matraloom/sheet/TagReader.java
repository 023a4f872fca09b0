package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.matraloom.form.Joints;
import org.matraloom.form.Mora;
import org.matraloom.score.Moment;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/**
 * Finds what stands above the rows: names, figures, and the statements of moras. A round that names
 * no phrases bears its own name.
 */
final class TagReader {

  private static final int ANY_NADAI = 4;
  private static final int STATEMENTS = 3;

  /** The longest word that is only counted with, takadimi (common practice). */
  private static final Ratio PLAIN_WORD = Ratio.of(4);

  private final Performance performance;
  private final Map<String, List<Mora>> moras = new HashMap<>();
  private final List<Row.Tag> tags = new ArrayList<>();
  private final List<Spoken> said = new ArrayList<>();
  private Span.Round round;
  private Moment.PhraseStart named;
  private boolean namesParts;

  private TagReader(Performance performance) {
    this.performance = performance;
    this.round = performance.rounds().get(0);
  }

  /** All tags of a performance, in order of time. */
  static List<Row.Tag> of(Performance performance) {
    TagReader reader = new TagReader(performance);
    Iterator<Moment> moments = performance.moments();
    while (moments.hasNext()) {
      reader.take(moments.next());
    }
    reader.finish();
    reader.tags.sort(Comparator.comparing(Row.Tag::from));
    return List.copyOf(reader.tags);
  }

  private void take(Moment moment) {
    if (moment instanceof Moment.SpanStart start && start.span() instanceof Span.Round begun) {
      finish();
      round = begun;
      namesParts = false;
    } else if (moment instanceof Moment.PhraseStart start && start.depth() == 1) {
      named = start;
      namesParts = true;
    } else if (moment instanceof Moment.PhraseEnd end && end.depth() == 1) {
      name(named.name(), named.beat(), end.beat());
    } else if (moment instanceof Moment.GroupStart start) {
      String text = start.size() + (start.hold() == 1 ? "" : "\u00d7" + start.hold());
      Ratio end = start.beat().plus(start.beats());
      tags.add(new Row.Tag(Row.Tag.Kind.FIGURE, start.beat(), end, text));
    } else if (moment instanceof Spoken spoken) {
      said.add(spoken);
    }
  }

  /** What is known of a round only when it has been read. */
  private void finish() {
    if (!namesParts && !said.isEmpty()) {
      name(round.phrase(), round.startBeat(), round.endBeat());
    }
    statements();
  }

  private void name(String name, Ratio from, Ratio to) {
    Ratio matras = to.minus(from).times(round.matrasPerBeat());
    tags.add(new Row.Tag(Row.Tag.Kind.NAME, from, to, name + " " + matras.toMixed()));
  }

  /** Equal words that count, as a fill-in says them, are no mora: it has gaps or is longer. */
  private static boolean isMeant(Mora mora) {
    boolean counts =
        mora.starts().size() > STATEMENTS || mora.statements().get(0).compareTo(PLAIN_WORD) <= 0;
    return mora.gap().signum() > 0 || !counts;
  }

  /** The moras of the round that has been read; of a mora of moras only those inside. */
  private void statements() {
    if (said.isEmpty()) {
      return;
    }
    List<Mora> found =
        moras.computeIfAbsent(
            round.phrase(),
            phrase -> Mora.inner(Joints.of(performance.composition(), phrase, ANY_NADAI).moras()));
    for (Mora mora : found.stream().filter(TagReader::isMeant).toList()) {
      for (int time = 0; time < mora.starts().size(); time++) {
        int next = time + 1 < mora.starts().size() ? mora.starts().get(time + 1) : mora.end();
        Spoken last = said.get(next - 1);
        tags.add(
            new Row.Tag(
                Row.Tag.Kind.STATEMENT,
                said.get(mora.starts().get(time)).beat(),
                last.beat().plus(last.ownBeats()),
                ""));
      }
    }
    said.clear();
  }
}
