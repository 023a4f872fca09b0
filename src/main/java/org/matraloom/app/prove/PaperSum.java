package org.matraloom.app.prove;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.notation.Problem;
import org.matraloom.score.Place;
import org.matraloom.time.Ratio;

/**
 * A sum as it stands on paper: {@code 14 + 5(2)5(2)5 in 32, start one late}, or {@code 32 12
 * 8(2)8(2)8 in rupaka, 4-4-5}.
 *
 * @param typed the whole of it on one line
 * @param terms what is added
 * @param claim what the writer says the terms come to, after =
 * @param whole the matras in which it lies, after "in"
 * @param tala the tala in which it lies, after "in"
 * @param rounds how it is said, after the tala or the whole: 4-4-5
 * @param start where it starts, after "start"
 */
record PaperSum(
    String typed,
    String terms,
    Optional<Integer> claim,
    Optional<Integer> whole,
    Optional<String> tala,
    Optional<String> rounds,
    Optional<String> start) {

  private static final Pattern FORM =
      Pattern.compile(
          "(.*?)(?: *= *(\\d{1,5})(?: matras?)?)?"
              + "(?:,? +in (?:(\\d{1,5})(?: matras?)?|(\\p{L}[\\p{L} ]*?)))?"
              + "(?:,? +(\\d(?:-\\d){1,9}))?"
              + "(?:,? +start(?:s|ed|ing)?(?: +(?:at|on))? +(.+))?");

  /**
   * Reads a sum.
   *
   * @param typed the sum as it was typed; what is no claim, whole or start stays in the terms
   * @return the sum
   */
  static PaperSum of(String typed) {
    String line = typed.replaceAll("[\\r\\n#]", " ").strip();
    Matcher form = FORM.matcher(line);
    if (!form.matches()) {
      Optional<Integer> none = Optional.empty();
      Optional<String> nothing = Optional.empty();
      return new PaperSum(line, line, none, none, nothing, nothing, nothing);
    }
    return new PaperSum(
        line,
        form.group(1).replace('+', ' '),
        Optional.ofNullable(form.group(2)).map(Integer::valueOf),
        Optional.ofNullable(form.group(3)).map(Integer::valueOf),
        Optional.ofNullable(form.group(4)),
        Optional.ofNullable(form.group(5)),
        Optional.ofNullable(form.group(6)));
  }

  /**
   * Problems in a score that was made of the terms, told of the sum as it was typed.
   *
   * @param problem a problem in a line of the score that ends in the terms
   * @param before how many characters stand before the terms in that line
   * @return the same problem in the typed line
   */
  Problem asTyped(Problem problem, int before) {
    return new Problem(
        problem.severity(),
        "the sum",
        new Place(0, Math.max(1, problem.place().column() - before)),
        problem.width(),
        typed,
        problem.message(),
        problem.help());
  }

  /**
   * Refuses a sum that does not come to what the writer says, or a whole that the tala has not.
   *
   * @param matras what the terms come to
   * @param avartanaMatras the matras of an avartana
   * @param tala the name of the tala
   * @throws IllegalArgumentException if the sum is refused; the message says why
   */
  void check(Ratio matras, Ratio avartanaMatras, String tala) {
    if (claim.isPresent() && !Ratio.of(claim.get()).equals(matras)) {
      throw new IllegalArgumentException(
          "the sum comes to " + matras.toMixed() + " matras, not " + claim.get());
    }
    if (whole.isPresent()
        && (whole.get() == 0 || !Ratio.of(whole.get()).dividedBy(avartanaMatras).isWhole())) {
      throw new IllegalArgumentException(
          whole.get()
              + " matras are not whole avartanas of "
              + tala
              + ", which has "
              + avartanaMatras.toMixed()
              + "; name another with --tala");
    }
  }
}
