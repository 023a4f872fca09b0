package org.matraloom.prompt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.SolluSound;
import org.matraloom.score.TwoReciters;

/** The rows that are asked for: words first, then each of their sollus alone. */
public final class RowList {

  /** Words of the trade, as in the lexicon's list of words for groups; common practice. */
  private static final List<String> WORDS =
      List.of(
          "takadimi tam , , .",
          "takajonu tom , , .",
          "takita takita , .",
          "tadiginatom , , .",
          "tarikita dhim , , .",
          "kitataka dhin , , .",
          "tadinginatom , , .",
          "takadiku jem , , .",
          "takadimi talangu .",
          "ta , dhi , tom , nam .",
          "takajunu ta , tei .",
          "tat . tit . dhit , tam .");

  /** Common beside those that stand in the words. */
  private static final List<String> ALONE =
      List.of("dim", "du", "ga", "la", "na", "ni", "nu", "ra", "tu", "ti");

  private static final double EACH_ROW_SECONDS = 1.5;
  private static final double REST_SECONDS = 20;
  private static final int SECONDS_A_MINUTE = 60;
  private static final int OPEN_A_ROW = 4;
  private static final int CLOSED_A_ROW = 2;
  private static final int MOST_RUN = 6;

  private final Lexicon lexicon;

  /**
   * A maker of lists.
   *
   * @param lexicon how words are taken apart
   */
  public RowList(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  /**
   * The common sollus.
   *
   * @return the rows in the order in which they are asked for
   */
  public List<AskedRow> common() {
    List<AskedRow> rows = words(row -> true);
    Set<String> sounds = soundsOf(rows);
    sounds.addAll(ALONE);
    rows.addAll(alone(sounds));
    return rows;
  }

  /**
   * The sollus of some scores and no others.
   *
   * @param scores at least one
   * @return the rows in the order in which they are asked for; none if nothing is said in the
   *     scores
   */
  public List<AskedRow> of(List<Composition> scores) {
    List<List<String>> said =
        scores.stream().flatMap(RowList::reciters).map(RowList::sounds).toList();
    Set<String> wanted = new LinkedHashSet<>();
    said.forEach(wanted::addAll);
    List<AskedRow> rows = words(row -> wanted.containsAll(soundsOf(List.of(row))));
    Set<String> covered = soundsOf(rows);
    for (List<String> sounds : said) {
      for (int at = 0; at < sounds.size(); at++) {
        if (!covered.contains(sounds.get(at))) {
          Optional<AskedRow> run = run(sounds, at);
          run.ifPresent(rows::add);
          run.ifPresent(row -> covered.addAll(soundsOf(List.of(row))));
        }
      }
    }
    rows.addAll(alone(wanted));
    return rows;
  }

  private static Stream<Composition> reciters(Composition score) {
    if (!TwoReciters.in(score)) {
      return Stream.of(score);
    }
    TwoReciters both = TwoReciters.of(score);
    return Stream.of(both.first(), both.second());
  }

  private static List<String> sounds(Composition score) {
    return Performance.of(score).spoken().map(said -> said.sollu().sound()).toList();
  }

  /** Some sollus that follow one another in a score, the one before the wanted one with them. */
  private Optional<AskedRow> run(List<String> sounds, int at) {
    int from = Math.max(0, at - 1);
    int to = Math.min(sounds.size(), from + MOST_RUN);
    String phrase = String.join(" ", sounds.subList(from, to));
    return AskedRow.of(phrase + " .".repeat(AskedRow.MATRAS - (to - from)), lexicon);
  }

  private List<AskedRow> words(Predicate<AskedRow> wanted) {
    return WORDS.stream()
        .flatMap(phrase -> AskedRow.of(phrase, lexicon).stream())
        .filter(wanted)
        .collect(Collectors.toCollection(ArrayList::new));
  }

  private static Set<String> soundsOf(List<AskedRow> rows) {
    return rows.stream()
        .flatMap(row -> row.places().stream())
        .map(AskedRow.DueSollu::sound)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private List<AskedRow> alone(Set<String> sounds) {
    List<String> open = sounds.stream().filter(sound -> !isClosed(sound)).toList();
    List<String> closed = sounds.stream().filter(this::isClosed).toList();
    List<AskedRow> rows = new ArrayList<>();
    addAlone(open, OPEN_A_ROW, " .", rows);
    addAlone(closed, CLOSED_A_ROW, " , , .", rows);
    return rows;
  }

  private boolean isClosed(String sound) {
    SolluSound said = lexicon.sound(sound).orElseThrow();
    return said.vowelIndex() < said.phones().size() - 1;
  }

  private void addAlone(List<String> sounds, int most, String after, List<AskedRow> rows) {
    for (int at = 0; at < sounds.size(); at += most) {
      List<String> some = sounds.subList(at, Math.min(sounds.size(), at + most));
      List<String> turned = new ArrayList<>(some);
      Collections.reverse(turned);
      Optional<AskedRow> row =
          asWritten(some, most, after).or(() -> asWritten(turned, most, after));
      if (row.isPresent()) {
        rows.add(row.get());
      } else {
        some.forEach(each -> asWritten(List.of(each), most, after).ifPresent(rows::add));
      }
    }
  }

  /** The row of these sollus, unless one of them would be said otherwise after another. */
  private Optional<AskedRow> asWritten(List<String> sounds, int most, String after) {
    String[] phrase = new String[most];
    Arrays.fill(phrase, "." + " .".repeat(AskedRow.MATRAS / most - 1));
    for (int i = 0; i < sounds.size(); i++) {
      phrase[i] = sounds.get(i) + after;
    }
    return AskedRow.of(String.join(" ", phrase), lexicon)
        .filter(row -> row.places().stream().map(AskedRow.DueSollu::sound).toList().equals(sounds));
  }

  /**
   * How long it takes to record rows, with rests, if each is said well the first time.
   *
   * @param rows how many rows
   * @param sayings how often they are said in all
   * @return seconds
   */
  public static double seconds(int rows, int sayings) {
    double heard = 2 * rows + sayings;
    double rests = REST_SECONDS * Math.max(0, (rows - 1) / Asking.ROWS_TO_REST);
    return heard * AskedRow.seconds() + rows * EACH_ROW_SECONDS + rests;
  }

  /**
   * The same in whole minutes.
   *
   * @param rows how many rows
   * @param sayings how often they are said in all
   * @return minutes, rounded up
   */
  public static int minutes(int rows, int sayings) {
    return (int) Math.ceil(seconds(rows, sayings) / SECONDS_A_MINUTE);
  }

  /**
   * How long the voice rests now and then.
   *
   * @return seconds
   */
  public static double restSeconds() {
    return REST_SECONDS;
  }
}
