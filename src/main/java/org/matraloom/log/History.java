package org.matraloom.log;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * All that the log holds.
 *
 * @param entries the records, oldest first
 * @param damaged the lines that could not be read, in the order of the file
 * @param withdrawn the records that were taken back, in the order in which that was done; they are
 *     not among the entries
 * @param usualVoice the recorded voice takes are measured with, as it was said last; empty if that
 *     was never said
 */
public record History(
    List<LogEntry> entries,
    List<DamagedLine> damaged,
    List<LogEntry> withdrawn,
    Optional<String> usualVoice) {

  /** Puts the records in order of time; those of one moment stay as they are in the file. */
  public History {
    List<LogEntry> sorted = new ArrayList<>(entries);
    sorted.sort(Comparator.comparing(entry -> entry.when().toInstant()));
    entries = List.copyOf(sorted);
    damaged = List.copyOf(damaged);
    withdrawn = List.copyOf(withdrawn);
  }

  /**
   * A log in which nothing was taken back.
   *
   * @param entries the records, in any order
   * @param damaged the lines that could not be read, in the order of the file
   */
  public History(List<LogEntry> entries, List<DamagedLine> damaged) {
    this(entries, damaged, List.of());
  }

  /**
   * A log in which no usual voice is named.
   *
   * @param entries the records, in any order
   * @param damaged the lines that could not be read, in the order of the file
   * @param withdrawn the records that were taken back
   */
  public History(List<LogEntry> entries, List<DamagedLine> damaged, List<LogEntry> withdrawn) {
    this(entries, damaged, withdrawn, Optional.empty());
  }

  /**
   * The pieces that were practised.
   *
   * @return their names, in alphabetical order
   */
  public List<String> pieces() {
    TreeSet<String> names = new TreeSet<>();
    entries.forEach(entry -> names.add(entry.piece()));
    return List.copyOf(names);
  }

  /**
   * What was practised of one piece.
   *
   * @param piece its name
   * @return the records, oldest first; empty if it was never practised
   */
  public List<LogEntry> of(String piece) {
    return entries.stream().filter(entry -> entry.piece().equals(piece)).toList();
  }

  /**
   * Whether a recording was measured before.
   *
   * @param recording what its sound is known by
   * @return true if a record of it is kept
   */
  public boolean holds(String recording) {
    return entries.stream()
        .anyMatch(entry -> entry.recording().filter(recording::equals).isPresent());
  }
}
