package org.matraloom.sheet;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.matraloom.kanakku.SumWords;
import org.matraloom.schedule.SpokenLeadIn;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Kriya;
import org.matraloom.score.Nadai;
import org.matraloom.score.Notice;
import org.matraloom.score.Performance;
import org.matraloom.score.TalaSections;
import org.matraloom.script.Script;
import org.matraloom.script.ScriptTerms;
import org.matraloom.time.Ratio;

/** The sentences of a sheet: title block, headings, sums and the landing line. */
public final class SheetWords {

  static final String ENDS_HERE = "here the last matra ends";
  static final String STROKE_HERE = "here it lands, with the last stroke";
  static final String RINGS_ON_LARGE = "a square: the sound before rings on";
  static final String RINGS_ON = "grey: the sound before rings on";
  static final String ONCE_MORE = "two dots: the same once more";
  static final String SAID_AGAIN = "bracket: one statement of a mora";
  static final String BREATHE_HERE = "breathe here, if it suits you; stop if it strains";

  private static final String LEAD_IN = "; lead-in from samam: ";
  private static final int MOST_HEADINGS = 4;

  private final Performance performance;
  private final Composition composition;
  private final Avartana avartana;
  private final Script script;
  private final Optional<Integer> leadIn;

  /**
   * Prepares to say.
   *
   * @param sheet the sheet
   */
  public SheetWords(Sheet sheet) {
    this(sheet.performance(), sheet.options().writing().script(), sheet.options().leadIn());
  }

  SheetWords(Performance performance, Script script, Optional<Integer> leadIn) {
    this.performance = performance;
    this.composition = performance.composition();
    this.avartana = performance.avartana();
    this.script = script;
    this.leadIn = leadIn;
  }

  /**
   * The title.
   *
   * @return the title of the piece; a stand-in if it has none
   */
  public String title() {
    return composition.title().isEmpty() ? "Without a title" : composition.title();
  }

  /**
   * Tala, beats and tempo.
   *
   * @return one line
   */
  public String setting() {
    String kalai = avartana.kalai() == 1 ? "" : " in " + avartana.kalai() + " kalai";
    return "Tala "
        + avartana.tala().name()
        + kalai
        + " ("
        + avartana.tala().formula()
        + "), "
        + SumWords.counted(Ratio.of(avartana.beats()), "beat")
        + "; tempo "
        + composition.tempo().beatsPerMinute().toMixed()
        + " beats a minute";
  }

  /** A place as it is said everywhere. */
  String place(Ratio beat) {
    return avartana.goingOnAt(beat).say(beat);
  }

  /** Where it begins and where it must end. */
  String places() {
    return "From "
        + composition.avartana().say(composition.startBeat())
        + "; eduppu "
        + avartana.goingOnAt(performance.endBeat()).say(composition.eduppuBeat())
        + leadIn
            .flatMap(avartanas -> SpokenLeadIn.words(performance, avartanas))
            .map(LEAD_IN::concat)
            .orElse("");
  }

  /**
   * The lines of the plan that take no time.
   *
   * @return in order
   */
  public List<Notice> notices() {
    return performance.notices();
  }

  /** What stands above a row, before its heading: parts that begin, words to students. */
  List<String> above(Row row) {
    return SheetNotices.above(row, performance);
  }

  /** The heading of a row: the rounds that begin in it and the changes of nadai. */
  String heading(Row row) {
    Map<Ratio, String> parts = headings(row);
    return parts.values().stream().limit(MOST_HEADINGS).collect(Collectors.joining(" · "))
        + (parts.size() > MOST_HEADINGS ? " …" : "");
  }

  /** The rounds that begin in a row and the changes of nadai, each with its place. */
  Map<Ratio, String> headings(Row row) {
    Map<Ratio, String> parts = new TreeMap<>();
    for (Row.NadaiTurn turn : row.turns()) {
      parts.put(turn.beat(), nadai(turn.matrasPerBeat()) + whereIn(row, turn.beat()));
    }
    for (RoundPart part : row.parts()) {
      if (part.opensHere()) {
        parts.put(part.from(), roundHeading(part) + whereIn(row, part.from()));
      }
    }
    return parts;
  }

  /**
   * A round, its nadai and its kalam.
   *
   * @param part what the round contributes to a row
   * @return one line
   */
  public String roundHeading(RoundPart part) {
    String kalam = part.kalam() == 1 ? "" : ", kalam " + part.kalam();
    return "Round " + part.round() + ", " + nadai(part.nadai()) + kalam;
  }

  /**
   * A nadai by name and number, and by its name in the script where there is one.
   *
   * @param matrasPerBeat matras a beat in the first kalam
   * @return the name
   */
  public String nadai(int matrasPerBeat) {
    return ScriptTerms.nadai(script, matrasPerBeat)
        .map(own -> Nadai.inWords(matrasPerBeat) + " " + own)
        .orElseGet(() -> Nadai.inWords(matrasPerBeat));
  }

  /**
   * A kriya by name, and by its name in the script where there is one.
   *
   * @param kriya what the hand does
   * @return the name
   */
  public String kriya(Kriya kriya) {
    return ScriptTerms.kriya(script, kriya)
        .map(own -> kriya.words() + " " + own)
        .orElseGet(kriya::words);
  }

  /** The kriyas of all talas, each once. */
  Set<Kriya> kriyas() {
    Set<Kriya> kriyas = new LinkedHashSet<>();
    TalaSections.of(avartana).forEach(part -> kriyas.addAll(part.avartana().kriyas()));
    return kriyas;
  }

  /** A beat by its number and its kriya. */
  String beat(Cell cell) {
    long place = avartana.placeOf(Ratio.of(cell.beat())).floor() + 1;
    String kriya =
        cell.kriya().map(given -> ", " + kriya(given) + (cell.again() ? " again" : "")).orElse("");
    return "Beat " + place + (cell.kriya().isEmpty() ? " goes on" : "") + kriya;
  }

  private String whereIn(Row row, Ratio beat) {
    return beat.equals(row.startBeat()) && row.label().isEmpty()
        ? ""
        : " from " + avartana.say(beat);
  }

  /**
   * The sum of all rounds and silences.
   *
   * @return one line
   */
  public String sum() {
    return new SheetSums(performance).sum();
  }

  /**
   * Whether it lands, in a sentence.
   *
   * @return the sentence
   */
  public String landing() {
    return new SheetSums(performance).landing();
  }

  /** What the drop means. */
  String landsHere() {
    return performance.closing().stroke().isPresent() ? STROKE_HERE : ENDS_HERE;
  }
}
