package org.matraloom.site;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The list of a class: its title, what is said of pieces, and homework.
 *
 * <p>Plain text, one thing a line: {@code title TEXT}, {@code piece NAME level WORD tags A, B},
 * {@code homework STUDENT | PIECE | TEMPO | TASK}; a number sign begins a note.
 *
 * @param title what stands above the contents; empty if nothing is said
 * @param entries what is said of pieces, by name, in order
 * @param homework who practises what, in order
 */
public record ClassList(String title, Map<String, ClassEntry> entries, List<Homework> homework) {

  /** The name of the list in the folder of the scores. */
  public static final String FILE_NAME = "class.txt";

  /** A folder without a list. */
  public static final ClassList NONE = new ClassList("", Map.of(), List.of());

  private static final Pattern PIECE =
      Pattern.compile("(\\S+)(?:\\s+level\\s+(\\S+))?(?:\\s+tags\\s+(.+))?");
  private static final Pattern TEMPO = Pattern.compile("\\d{1,3}%?");
  private static final int FEWEST_FIELDS = 3;
  private static final int MOST_FIELDS = 4;

  /** Copies the lists. */
  public ClassList {
    entries = new LinkedHashMap<>(entries);
    homework = List.copyOf(homework);
  }

  /**
   * Reads a list.
   *
   * @param lines its lines
   * @param pieces the names of the pieces there are
   * @return the list
   * @throws IllegalArgumentException if a line is none of a list; the message begins with its place
   */
  public static ClassList read(List<String> lines, List<String> pieces) {
    String title = "";
    Map<String, ClassEntry> entries = new LinkedHashMap<>();
    List<Homework> homework = new ArrayList<>();
    for (int index = 0; index < lines.size(); index++) {
      String line = lines.get(index).strip();
      String place = FILE_NAME + ":" + (index + 1) + ": ";
      if (line.isEmpty() || line.startsWith("#")) {
        continue;
      }
      String[] words = line.split("\\s+", 2);
      String rest = words.length == 1 ? "" : words[1];
      switch (words[0]) {
        case "title" -> title = rest;
        case "piece" -> {
          Matcher matcher = PIECE.matcher(rest);
          if (!matcher.matches()) {
            throw new IllegalArgumentException(
                place + "a piece is written \"piece gutter-song level 2 tags rain, korvai\"");
          }
          String name = known(matcher.group(1), pieces, place);
          entries.put(name, entry(matcher));
        }
        case "homework" -> homework.add(homework(rest, pieces, place));
        default ->
            throw new IllegalArgumentException(
                place + "\"" + words[0] + "\" is none of title, piece, homework");
      }
    }
    return new ClassList(title, entries, homework);
  }

  private static ClassEntry entry(Matcher matcher) {
    List<String> tags =
        matcher.group(3) == null
            ? List.of()
            : Arrays.stream(matcher.group(3).split(","))
                .map(String::strip)
                .filter(tag -> !tag.isEmpty())
                .toList();
    return new ClassEntry(Optional.ofNullable(matcher.group(2)).orElse(""), tags);
  }

  private static Homework homework(String rest, List<String> pieces, String place) {
    List<String> fields = Arrays.stream(rest.split("\\|")).map(String::strip).toList();
    boolean right = fields.size() >= FEWEST_FIELDS && fields.size() <= MOST_FIELDS;
    if (!right || fields.get(0).isEmpty() || !TEMPO.matcher(fields.get(2)).matches()) {
      throw new IllegalArgumentException(
          place
              + "homework is written \"homework Nila | gutter-song | 60 | three times clean\", with"
              + " a tempo of whole beats a minute or of percent");
    }
    String task = fields.size() == MOST_FIELDS ? fields.get(3) : "";
    return new Homework(fields.get(0), known(fields.get(1), pieces, place), fields.get(2), task);
  }

  private static String known(String name, List<String> pieces, String place) {
    if (!pieces.contains(name)) {
      throw new IllegalArgumentException(
          place + "there is no score " + name + ".loom in the folder of the class");
    }
    return name;
  }

  /**
   * What is said of a piece.
   *
   * @param piece its name
   * @return an entry, empty if nothing is said
   */
  public ClassEntry entry(String piece) {
    return entries.getOrDefault(piece, ClassEntry.NONE);
  }
}
