package org.matraloom.score;

import java.util.List;
import java.util.stream.Collectors;

/** A lexicon text that cannot be used; it names every faulty line. */
public final class LexiconException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /** All faults, in order of their lines. */
  private final transient List<Fault> faults;

  /**
   * One faulty line.
   *
   * @param line the line, from 1
   * @param message what is wrong with it and what is allowed
   */
  public record Fault(int line, String message) {}

  /**
   * Names the faults.
   *
   * @param sourceName the name of the text, for the message
   * @param faults at least one, in order
   */
  public LexiconException(String sourceName, List<Fault> faults) {
    super(
        faults.stream()
            .map(fault -> sourceName + ":" + fault.line() + ": error: " + fault.message())
            .collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /**
   * The faults.
   *
   * @return at least one, in order of their lines
   */
  public List<Fault> faults() {
    return faults;
  }
}
