package org.matraloom.notation;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Tala;
import org.matraloom.spell.ScorePrinter;
import org.matraloom.spell.TalaText;
import org.matraloom.spell.UsedTalas;

/**
 * Makes changes in the text of a score and leaves everything else as the user wrote it: spaces,
 * notes, line ends and the order of the lines.
 */
public final class ScoreEditor {

  private ScoreEditor() {}

  /**
   * Writes changes into a text. A text of nothing but sollus gets the names and the tala that it
   * leaves out; one that takes over from elsewhere what it says is written out in full.
   *
   * @param text a score that is read without errors
   * @param edits the changes in order
   * @param lexicon the sollus to know
   * @return the changed text
   * @throws IllegalArgumentException if the text, as given or after one of the changes, has errors
   */
  public static String apply(String text, List<Edit> edits, Lexicon lexicon) {
    return apply(text, Optional.empty(), edits, lexicon);
  }

  /**
   * Writes changes into the text of a file, which may use other scores; such a text is written out
   * in full.
   *
   * @param text a score that is read without errors
   * @param file where it is
   * @param edits the changes in order
   * @param lexicon the sollus to know
   * @return the changed text
   * @throws IllegalArgumentException if the text, as given or after one of the changes, has errors
   */
  public static String apply(String text, Path file, List<Edit> edits, Lexicon lexicon) {
    return apply(text, Optional.of(file), edits, lexicon);
  }

  private static String apply(String text, Optional<Path> file, List<Edit> edits, Lexicon lexicon) {
    String changed = ScoreReader.inFull(text, file, lexicon);
    for (Edit edit : edits) {
      Composition before =
          ScoreReader.read(changed, "", lexicon)
              .composition()
              .orElseThrow(() -> new IllegalArgumentException("the score has errors"));
      changed = apply(changed, edit, before);
    }
    return changed;
  }

  private static String apply(String text, Edit edit, Composition before) {
    EditedLines lines = EditedLines.of(text);
    if (edit instanceof Edit.Start start) {
      HeaderEditor.set(lines, "start", ScorePrinter.place(start.place(), before.avartana()));
    } else if (edit instanceof Edit.Eduppu eduppu) {
      HeaderEditor.set(lines, "eduppu", ScorePrinter.place(eduppu.place(), before.avartana()));
    } else if (edit instanceof Edit.InTala other) {
      HeaderEditor.set(lines, "tala", TalaText.written(other.tala()));
      return keepingEduppu(lines.text(), other.tala(), before);
    } else if (edit instanceof Edit.Plan plan) {
      lines = PlanEditor.replace(lines, before.plan(), plan.steps());
    } else if (edit instanceof Edit.Splice splice) {
      lines = PhraseEditor.splice(lines, splice);
    }
    return lines.text();
  }

  /**
   * Writes the eduppu out where it was that of the tala, and that of the other one is elsewhere.
   */
  private static String keepingEduppu(String text, Tala other, Composition before) {
    int kalai = before.avartana().kalai();
    boolean alike =
        UsedTalas.usualEduppu(before.avartana().tala()).equals(UsedTalas.usualEduppu(other));
    EditedLines lines = EditedLines.of(text);
    if (!alike && !HeaderEditor.has(lines, "eduppu")) {
      Avartana avartana = Avartana.of(other, kalai, before.avartana().custom());
      HeaderEditor.set(lines, "eduppu", ScorePrinter.place(before.eduppuBeat(), avartana));
    }
    return lines.text();
  }
}
