package org.matraloom.spell;

import java.math.BigDecimal;
import java.util.Locale;
import org.matraloom.score.Avartana;
import org.matraloom.score.Closing;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Sequence;
import org.matraloom.score.Step;
import org.matraloom.score.Wording;
import org.matraloom.time.Ratio;

/**
 * Writes a composition as a score, always in the same form.
 *
 * <p>Reading what was written gives the same composition again, but for the places of bars. This
 * holds for every composition that reading can give; one made otherwise may have a part that the
 * notation cannot say, such as a group with words of its own.
 */
public final class ScorePrinter {

  private static final ElementSigns SIGNS = new ElementSigns();
  private static final int WIDEST = 100;
  private static final int LONGEST_CHAIN = 60;
  private static final String INDENT = "  ";
  private static final int DECIMAL = 1_000;

  private ScorePrinter() {}

  /**
   * Writes a composition.
   *
   * @param composition what to write
   * @return the score, each line ended by a line feed
   */
  public static String print(Composition composition) {
    StringBuilder text = new StringBuilder();
    Avartana avartana = composition.avartana();
    if (!composition.title().isBlank()) {
      header("title", title(composition.title()), text);
    }
    header("tala", TalaText.written(avartana.tala()), text);
    header("kalai", Integer.toString(avartana.kalai()), text);
    header("tempo", tempo(composition.tempo().beatsPerMinute()), text);
    header("start", place(composition.startBeat(), avartana), text);
    header("eduppu", place(composition.eduppuBeat(), avartana), text);
    closing(composition.closing(), text);
    wording(composition.wording(), text);
    if (avartana.custom() == FingerCustom.RETURN) {
      header("fingers", "return", text);
    }
    text.append('\n');
    composition.phrases().forEach((name, sequence) -> phrase(name, sequence, text));
    text.append("\nperform\n");
    for (Step step : composition.plan()) {
      text.append(INDENT).append(print(step)).append('\n');
    }
    return text.toString();
  }

  /**
   * Writes what a phrase says, without its name.
   *
   * @param sequence the phrase or a part of it
   * @return one line without a line end
   */
  public static String print(Sequence sequence) {
    StringBuilder text = new StringBuilder();
    boolean ringing = false;
    for (Element element : sequence.elements()) {
      boolean tight =
          ringing
              && element instanceof Element.Group
              && text.length() - text.lastIndexOf(" ") < LONGEST_CHAIN;
      text.append(text.isEmpty() || tight ? "" : " ").append(element.told(SIGNS));
      ringing = element instanceof Element.Group group && group.karvai() > 0;
    }
    return text.toString();
  }

  private static void closing(Closing closing, StringBuilder text) {
    closing.stroke().ifPresent(stroke -> header("stroke", stroke(stroke), text));
    if (closing.avartanas() != Closing.usualAvartanas(closing.stroke())) {
      header("after", Integer.toString(closing.avartanas()), text);
    }
  }

  private static void wording(Wording wording, StringBuilder text) {
    if (wording.kind() != Wording.Kind.USUAL) {
      header("words", wording.kind().name().toLowerCase(Locale.ROOT), text);
    }
    wording
        .own()
        .forEach((size, words) -> text.append(size + " = " + words.written()).append('\n'));
    wording
        .strokes()
        .forEach(
            (sollu, strokes) -> header("drum", new StrokeLine(sollu, strokes).written(), text));
  }

  private static String stroke(Closing.Stroke stroke) {
    int karvai = stroke.karvai();
    return stroke.sollu().spelling() + " ;".repeat(karvai / 2) + " ,".repeat(karvai % 2);
  }

  private static void header(String keyword, String value, StringBuilder text) {
    boolean looksLikeMark = value.startsWith(":") || value.startsWith("=");
    text.append(String.format("%-8s", looksLikeMark ? keyword + ":" : keyword));
    text.append(value).append('\n');
  }

  /** A title without what would end it: line ends, and the sign of a note. */
  private static String title(String title) {
    return title.replaceAll("\\s", " ").replace('#', '\u266f').strip();
  }

  private static String tempo(Ratio tempo) {
    return DECIMAL % tempo.den() == 0
        ? BigDecimal.valueOf(tempo.num()).divide(BigDecimal.valueOf(tempo.den())).toPlainString()
        : tempo.toMixed();
  }

  /**
   * Writes a place of an avartana, as after start and eduppu.
   *
   * @param beats beats from samam, before it if negative
   * @param avartana the cycle
   * @return samam, a beat, or aksharas before samam with a minus
   */
  public static String place(Ratio beats, Avartana avartana) {
    if (beats.signum() == 0) {
      return "samam";
    } else if (beats.signum() > 0) {
      return "beat " + beats.plus(Ratio.ONE).toMixed();
    }
    return "-" + beats.negate().dividedBy(avartana.kalai()).toMixed();
  }

  private static void phrase(String name, Sequence sequence, StringBuilder text) {
    StringBuilder line = new StringBuilder(name + " =");
    for (String part : print(sequence).split(" ")) {
      if (line.length() + 1 + part.length() > WIDEST && !line.toString().isBlank()) {
        text.append(line).append('\n');
        line = new StringBuilder(INDENT + part);
      } else {
        line.append(' ').append(part);
      }
    }
    text.append(line).append('\n');
  }

  /**
   * Writes a line of a plan.
   *
   * @param step the line
   * @return one line without a line end
   */
  public static String print(Step step) {
    return step.told(new PlanLine());
  }
}
