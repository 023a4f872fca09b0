package org.matraloom;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.matraloom.notation.RandomScores;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Closing;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/**
 * What a performance says, worked out apart from the program by writing all of it out: a sollu
 * lasts a matra, a comma after a sound lets it ring on, a comma after silence is silence (common
 * practice of the written signs).
 */
public final class Unrolled {

  /**
   * A sollu, or all the silence up to the next one.
   *
   * @param beat where it begins
   * @param ownEnd where its own part ends; where it ends, for silence
   * @param end where it ends
   * @param name its spelling, or {@code .}
   * @param round its round; for silence the one in which it begins
   */
  public record Piece(Ratio beat, Ratio ownEnd, Ratio end, String name, int round) {
    /** The piece as a line: from, what, until. */
    public String line() {
      return beat + " " + name + " " + end;
    }

    private Piece until(Ratio end) {
      return new Piece(beat, isSilent() ? end : ownEnd, end, name, round);
    }

    private boolean isSilent() {
      return name.equals(".");
    }
  }

  private static final List<Composition> SCORES = List.copyOf(read());

  private final Map<String, Sequence> phrases;
  private final List<Piece> pieces = new ArrayList<>();
  private Ratio now = Ratio.ZERO;
  private int round;
  private int kalam;

  private Unrolled(Map<String, Sequence> phrases) {
    this.phrases = phrases;
  }

  /** The samples and 500 made-up scores of every kind. */
  public static List<Composition> scores() {
    return SCORES;
  }

  private static List<Composition> read() {
    List<Composition> scores = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("samples-synth"))) {
      files
          .filter(file -> file.toString().endsWith(".loom"))
          .sorted()
          .map(file -> ScoreReader.read(file, Lexicon.standard()).composition().orElseThrow())
          .forEach(scores::add);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    RandomScores random = new RandomScores(1_406);
    for (int count = 0; count < 500; count++) {
      scores.add(random.composition());
    }
    return scores;
  }

  /** What a performance says, in order and without gaps. */
  public static List<Piece> of(Performance performance) {
    Unrolled unrolled = new Unrolled(performance.composition().phrases());
    for (Span span : performance.spans()) {
      unrolled.now = span.startBeat();
      if (span instanceof Span.Round said) {
        unrolled.round = said.number();
        unrolled.kalam = said.kalam();
        unrolled.say(unrolled.phrases.get(said.phrase()), said.nadai(), 1);
      } else if (span.beats().signum() > 0) {
        unrolled.silent(span.beats());
      }
    }
    performance.closing().stroke().ifPresent(stroke -> unrolled.strike(stroke, performance));
    return unrolled.pieces;
  }

  /** A last stroke without commas fills a beat; with commas it is as long as they say. */
  private void strike(Closing.Stroke stroke, Performance performance) {
    List<Span.Round> rounds = performance.rounds();
    Span.Round last = rounds.get(rounds.size() - 1);
    int perBeat = last.nadai() << (last.kalam() - 1);
    int matras = stroke.karvai() == 0 ? perBeat : 1 + stroke.karvai();
    sollu(stroke.sollu(), Ratio.of(1, perBeat));
    ring(Ratio.of(matras - 1, perBeat));
  }

  /** The same as lines: from, what, until. */
  public static List<String> lines(Performance performance) {
    return of(performance).stream().map(Piece::line).toList();
  }

  /**
   * Signs as they are written, each with its beat, as such lines; a comma belongs to the sollu
   * before it, and dots that follow one another are one silence.
   */
  public static List<String> lines(List<Map.Entry<Ratio, String>> signs, Ratio end) {
    List<Piece> pieces = new ArrayList<>();
    for (int index = 0; index < signs.size(); index++) {
      Ratio from = signs.get(index).getKey();
      Ratio to = index + 1 < signs.size() ? signs.get(index + 1).getKey() : end;
      String sign = signs.get(index).getValue();
      int last = pieces.size() - 1;
      boolean silent = last < 0 || pieces.get(last).isSilent();
      if (sign.equals(",") && silent) {
        throw new AssertionError("a comma after silence at " + from + " in " + signs);
      }
      if (sign.equals(",") || (sign.equals(".") && silent && last >= 0)) {
        pieces.set(last, pieces.get(last).until(to));
      } else {
        pieces.add(new Piece(from, to, to, sign, 0));
      }
    }
    return pieces.stream().map(Piece::line).toList();
  }

  private void say(Sequence sequence, int nadai, int speed) {
    int perBeat = nadai << (kalam - 1);
    Ratio matra = Ratio.of(1, (long) perBeat * speed);
    for (Element element : sequence.elements()) {
      if (element instanceof Element.Word word) {
        word.sollus().forEach(sollu -> sollu(sollu, matra));
      } else if (element instanceof Element.Karvai karvai) {
        ring(matra.times(karvai.matras()));
      } else if (element instanceof Element.Silence) {
        silent(matra);
      } else if (element instanceof Element.Group group) {
        for (int said = 0; said < group.sollus().size(); said++) {
          int matras = group.hold() * group.words().matras().get(said);
          sollu(group.sollus().get(said), matra);
          ring(matra.times(matras - 1));
        }
        ring(matra.times(group.karvai()));
      } else if (element instanceof Element.Faster faster) {
        say(faster.body(), nadai, speed * faster.factor());
      } else if (element instanceof Element.Repeat repeat) {
        for (int time = 0; time < repeat.times(); time++) {
          say(repeat.body(), nadai, speed);
        }
      } else if (element instanceof Element.InnerNadai inner) {
        say(inner.body(), inner.nadai(), speed);
      } else if (element instanceof Element.Reference reference) {
        say(phrases.get(reference.name()), nadai, speed);
      }
    }
  }

  /** The own part is a matra as it is written: half of one in square brackets, and so on. */
  private void sollu(Sollu sollu, Ratio matra) {
    now = now.plus(matra);
    pieces.add(new Piece(now.minus(matra), now, now, sollu.spelling(), round));
  }

  private void ring(Ratio beats) {
    int last = pieces.size() - 1;
    if (last < 0 || pieces.get(last).isSilent()) {
      silent(beats);
    } else {
      now = now.plus(beats);
      pieces.set(last, pieces.get(last).until(now));
    }
  }

  private void silent(Ratio beats) {
    Ratio from = now;
    now = now.plus(beats);
    int last = pieces.size() - 1;
    if (last >= 0 && pieces.get(last).isSilent()) {
      pieces.set(last, pieces.get(last).until(now));
    } else if (beats.signum() > 0) {
      pieces.add(new Piece(from, now, now, ".", round));
    }
  }
}
