package org.matraloom.prompt;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.matraloom.score.Lexicon;
import org.matraloom.wav.WholeText;

/**
 * The rows that are kept on the disk: a WAVE file for each time a row was asked for, beside it a
 * cue sheet of what was good in it, and a text of what is asked for and by whom.
 */
public final class RowFolder {

  private static final String LIST = "rows.txt";
  private static final String ROW = "row ";
  private static final int MOST_BYTES = 1_000_000;

  private final Path folder;
  private final Lexicon lexicon;

  /**
   * Who speaks, and what was agreed.
   *
   * @param owner one line, perhaps empty
   * @param terms one line, perhaps empty
   * @param consent one line
   */
  public record Head(String owner, String terms, String consent) {}

  /**
   * A folder that may not be there yet.
   *
   * @param folder where it is
   * @param lexicon how rows are taken apart
   */
  public RowFolder(Path folder, Lexicon lexicon) {
    this.folder = folder;
    this.lexicon = lexicon;
  }

  /**
   * Where it is.
   *
   * @return the folder
   */
  public Path path() {
    return folder;
  }

  /**
   * Whether a recording was begun here.
   *
   * @return true if there is a list of rows
   */
  public boolean isBegun() {
    return Files.isRegularFile(folder.resolve(LIST));
  }

  /**
   * Begins a recording.
   *
   * @param head who speaks
   * @param rows what is asked for
   * @throws IOException if the folder cannot be written
   */
  public void begin(Head head, List<AskedRow> rows) throws IOException {
    StringBuilder text = new StringBuilder("# What voice record asks for, in order.\n");
    text.append("owner ").append(oneLine(head.owner())).append('\n');
    text.append("terms ").append(oneLine(head.terms())).append('\n');
    text.append("consent ").append(oneLine(head.consent())).append('\n');
    rows.forEach(row -> text.append(ROW).append(row.phrase()).append('\n'));
    Files.createDirectories(folder);
    WholeText.put(folder.resolve(LIST), text.toString());
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }

  /**
   * Who speaks.
   *
   * @return as it was begun
   * @throws IOException if it cannot be read
   */
  public Head head() throws IOException {
    return new Head(value("owner "), value("terms "), value("consent "));
  }

  private String value(String key) throws IOException {
    return lines().stream()
        .filter(line -> line.startsWith(key))
        .map(line -> line.substring(key.length()).strip())
        .findFirst()
        .orElse("");
  }

  private List<String> lines() throws IOException {
    Path file = folder.resolve(LIST);
    if (Files.size(file) > MOST_BYTES) {
      throw new IOException(file + " has more than 1 MB; that is no list of rows");
    }
    return Files.readString(file).lines().toList();
  }

  /**
   * What is asked for.
   *
   * @return the rows in order, at least one
   * @throws IOException if the list cannot be read, or a row of it is none
   */
  public List<AskedRow> rows() throws IOException {
    List<AskedRow> rows = new ArrayList<>();
    for (String line : lines()) {
      if (line.startsWith(ROW)) {
        String phrase = line.substring(ROW.length()).strip();
        rows.add(
            AskedRow.of(phrase, lexicon)
                .orElseThrow(
                    () ->
                        new IOException(
                            folder.resolve(LIST)
                                + ": \""
                                + phrase
                                + "\" is no row of eight matras of known sollus (own ones:"
                                + " --lexicon)")));
      }
    }
    if (rows.isEmpty()) {
      throw new IOException(folder.resolve(LIST) + " asks for no row; begin anew with --anew");
    }
    return rows;
  }

  /**
   * The file for the next time a row is asked for.
   *
   * @param row the row, from 0
   * @return a file that is not there
   */
  public Path next(int row) {
    int time = 1;
    while (Files.exists(file(row, time)) || Files.exists(RowSheet.of(file(row, time)))) {
      time++;
    }
    return file(row, time);
  }

  private Path file(int row, int time) {
    return folder.resolve(String.format(Locale.ROOT, "row-%02d-%d.wav", row + 1, time));
  }

  /**
   * The recordings of a row.
   *
   * @param row the row, from 0
   * @return in the order of their numbers
   * @throws IOException if the folder cannot be read
   */
  public List<Path> recordings(int row) throws IOException {
    String name = String.format(Locale.ROOT, "row-%02d-\\d+\\.wav", row + 1);
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> file.getFileName().toString().matches(name))
          .sorted(
              Comparator.comparingInt((Path file) -> file.toString().length())
                  .thenComparing(Comparator.naturalOrder()))
          .toList();
    }
  }

  /**
   * Removes all rows, and the folder if nothing else is in it.
   *
   * @throws IOException if a file cannot be removed
   */
  public void remove() throws IOException {
    if (!Files.isDirectory(folder)) {
      return;
    }
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        if (file.getFileName().toString().matches("rows\\.txt|row-\\d+-\\d+\\.(wav|txt)")) {
          Files.delete(file);
        }
      }
    }
    try (Stream<Path> left = Files.list(folder)) {
      if (left.findAny().isEmpty()) {
        Files.delete(folder);
      }
    }
  }
}
