package org.matraloom.app.handon;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.matraloom.app.cli.GivenText;
import org.matraloom.app.cli.ShellWord;
import org.matraloom.app.cli.UserError;
import org.matraloom.site.ClassList;
import org.matraloom.site.SitePages;

/**
 * The folder of a class: its scores and its list.
 *
 * @param folder the folder
 * @param names the scores without their ending, in order
 * @param list what is said of them
 */
record ClassFolder(Path folder, List<String> names, ClassList list) {

  private static final String ENDING = ".loom";
  private static final int MOST_PIECES = 2_000;
  private static final int MOST_PAGE_BYTES = 32_000_000;

  ClassFolder {
    names = List.copyOf(names);
  }

  /** Reads the names of the scores and the list beside them. */
  static ClassFolder read(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new UserError(folder + " is no folder; give a folder of scores (.loom)");
    }
    List<String> names;
    try (Stream<Path> files = Files.list(folder)) {
      names =
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith(ENDING) && !name.startsWith("."))
              .map(name -> name.substring(0, name.length() - ENDING.length()))
              .sorted()
              .toList();
    }
    if (names.isEmpty() || names.size() > MOST_PIECES) {
      throw new UserError(
          folder + " holds " + names.size() + " scores (.loom); a class has 1 to " + MOST_PIECES);
    }
    TreeSet<String> alike = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    for (String name : names) {
      if (!alike.add(name)) {
        throw new UserError(
            "two scores are called " + name + " but for small and large letters; rename one");
      }
    }
    Path list = folder.resolve(ClassList.FILE_NAME);
    if (!Files.exists(list)) {
      return new ClassFolder(folder, names, ClassList.NONE);
    }
    List<String> lines = GivenText.read("the list of the class", list).lines().toList();
    List<String> known = names;
    return new ClassFolder(
        folder, names, UserError.unlessRefused(() -> ClassList.read(lines, known)));
  }

  Path score(String name) {
    return folder.resolve(name + ENDING);
  }

  /** The title of the class; the name of its folder if the list has none. */
  String title() {
    return list.title().isEmpty()
        ? folder.toAbsolutePath().normalize().getFileName().toString()
        : list.title();
  }

  /**
   * One command a line, from the words that were typed after the program; none needs what another
   * makes.
   */
  List<String> plan(List<String> typed) {
    List<String> words = new ArrayList<>(List.of("matraloom"));
    typed.stream().filter(word -> !word.equals("--plan")).forEach(words::add);
    String line = String.join(" ", words.stream().map(ShellWord::quoted).toList());
    List<String> lines = new ArrayList<>();
    names.forEach(name -> lines.add(line + " --piece " + ShellWord.quoted(name)));
    lines.add(line + " --contents");
    return lines;
  }

  /** Whether a page was made by this program; it may be any file, of any size and coding. */
  static boolean isOwnPage(Path page) throws IOException {
    return Files.isRegularFile(page)
        && Files.size(page) <= MOST_PAGE_BYTES
        && SitePages.isOwn(new String(Files.readAllBytes(page), StandardCharsets.ISO_8859_1));
  }

  boolean isHere(Path other) {
    return other.toAbsolutePath().normalize().equals(folder.toAbsolutePath().normalize());
  }
}
