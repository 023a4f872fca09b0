package org.matraloom.notation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.matraloom.score.Place;
import org.matraloom.spell.Quoted;

/** Collects the problems of one text, the first hundred in full. */
final class Problems {

  private static final int MOST_SHOWN = 100;

  private final String file;
  private final List<Problem> shown = new ArrayList<>();
  private final Set<String> toldOnce = new HashSet<>();
  private final Set<String> told = new HashSet<>();
  private int errors;
  private int left;

  Problems(String file) {
    this.file = Quoted.printable(file);
  }

  boolean hasErrors() {
    return errors > 0;
  }

  int errors() {
    return errors;
  }

  /** An error about part of a line; the help is worked out only if it will be shown. */
  void error(SourceLine line, int start, int end, String message, Supplier<Optional<String>> help) {
    add(Problem.Severity.ERROR, line, start, end, message, help);
  }

  void error(Token token, String message, Supplier<Optional<String>> help) {
    error(token.line(), token.start(), token.end(), message, help);
  }

  void error(Token token, String message, String help) {
    error(token, message, () -> Optional.of(help));
  }

  void error(Token token, String message) {
    error(token, message, Optional::empty);
  }

  /** An error about the file as a whole. */
  void error(String message, Optional<String> help) {
    count(
        Problem.Severity.ERROR,
        () -> new Problem(Problem.Severity.ERROR, file, Problem.WHOLE_FILE, 0, "", message, help));
  }

  void warning(Token token, String message, Optional<String> help) {
    SourceLine line = token.line();
    add(Problem.Severity.WARNING, line, token.start(), token.end(), message, () -> help);
  }

  /** A warning of which its kind, told by its help, is told but once. */
  void warnOnce(Token token, String message, String help) {
    if (toldOnce.add(help)) {
      warning(token, message, Optional.of(help));
    }
  }

  /** All problems in the order of the text, and how many are not shown. */
  List<Problem> inOrder() {
    List<Problem> all = new ArrayList<>(shown);
    if (all.size() > 1) {
      all.sort((a, b) -> inText(a.place(), b.place()));
    }
    if (left > 0) {
      Place last = all.get(all.size() - 1).place();
      String message = "and " + left + " more";
      all.add(new Problem(Problem.Severity.ERROR, file, last, 0, "", message, Optional.empty()));
    }
    return all;
  }

  private static int inText(Place a, Place b) {
    return a.line() != b.line()
        ? Integer.compare(a.line(), b.line())
        : Integer.compare(a.column(), b.column());
  }

  private void add(
      Problem.Severity severity,
      SourceLine line,
      int start,
      int end,
      String message,
      Supplier<Optional<String>> help) {
    if (!told.add(line.number() + ":" + start + ":" + message)) {
      return;
    }
    count(
        severity,
        () ->
            new Problem(
                severity,
                file,
                line.place(start),
                Math.max(1, line.width(start, end)),
                line.text(),
                message,
                help.get()));
  }

  private void count(Problem.Severity severity, Supplier<Problem> problem) {
    if (severity == Problem.Severity.ERROR) {
      errors++;
    }
    if (shown.size() < MOST_SHOWN) {
      shown.add(problem.get());
    } else {
      left++;
    }
  }
}
