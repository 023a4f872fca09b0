package org.matraloom.mouth;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The voices of a shelf that stand aside for the moment in which another takes their place. A
 * program that is ended in that moment leaves one there; it is put back when the shelf is used
 * next.
 */
final class AsideVoices {

  private static final String FIRST = ".old.";

  /** How {@link KitShelf#put} and {@link #swap} name what is on its way. */
  private static final Pattern PART = Pattern.compile("\\.[a-z0-9][a-z0-9-]*\\.\\d+");

  /** A part that nobody has touched for so long is not being written any more. */
  private static final Duration FORSAKEN = Duration.ofMinutes(10);

  /** How often another process may put the old voice back while this one takes it away. */
  private static final int MOST_TURNS = 3;

  private final Path folder;

  AsideVoices(Path folder) {
    this.folder = folder;
  }

  /** Puts a whole new voice in the place of one that may be there, which is gone afterwards. */
  void swap(Path part, Path target) throws IOException {
    for (int turn = 1; Files.exists(target); turn++) {
      Path old = Files.createTempDirectory(folder, FIRST);
      Path aside = old.resolve(target.getFileName());
      try {
        Files.move(target, aside);
        Files.move(part, target);
        return;
      } catch (FileAlreadyExistsException | DirectoryNotEmptyException putBack) {
        if (turn == MOST_TURNS) {
          throw putBack;
        }
      } catch (IOException failure) {
        if (Files.exists(aside) && !Files.exists(target)) {
          Files.move(aside, target);
        }
        throw failure;
      } finally {
        delete(old);
      }
    }
    Files.move(part, target);
  }

  /**
   * Puts back what a program that was ended left aside, and removes nothing. A shelf on which
   * nothing may be written stays as it is: its other voices can be used all the same.
   */
  void settle() {
    try {
      for (Path each : hidden()) {
        if (each.getFileName().toString().startsWith(FIRST)) {
          putBack(each);
        }
      }
    } catch (IOException | UncheckedIOException notOurs) {
      return;
    }
  }

  /**
   * Removes the parts of voices that a program that was ended left over. The folder may be any that
   * the user named, so nothing is touched that has not the name and the files of such a part.
   */
  void clear() throws IOException {
    Instant before = Instant.now().minus(FORSAKEN);
    for (Path each : hidden()) {
      if (isPart(each) && Files.getLastModifiedTime(each).toInstant().isBefore(before)) {
        delete(each);
      }
    }
  }

  private static boolean isPart(Path hidden) throws IOException {
    if (!PART.matcher(hidden.getFileName().toString()).matches()) {
      return false;
    }
    try (Stream<Path> all = Files.walk(hidden)) {
      return all.allMatch(
          each -> {
            String name = each.getFileName().toString();
            return Files.isDirectory(each, LinkOption.NOFOLLOW_LINKS)
                ? hidden.equals(each) || hidden.equals(each.getParent())
                : name.endsWith(".wav") || name.contains(KitText.FILE);
          });
    }
  }

  private void putBack(Path old) throws IOException {
    for (Path voice : inside(old)) {
      Path target = folder.resolve(voice.getFileName());
      if (Files.isRegularFile(voice.resolve(KitText.FILE)) && !Files.exists(target)) {
        Files.move(voice, target);
        Files.delete(old);
        return;
      }
    }
  }

  /**
   * Removes the voices of a name that stand aside, so that none comes back after the voice is
   * removed.
   */
  void forget(String name) throws IOException {
    for (Path each : hidden()) {
      if (each.getFileName().toString().startsWith(FIRST)) {
        delete(each.resolve(name));
      }
    }
  }

  private List<Path> hidden() throws IOException {
    return inside(folder).stream()
        .filter(each -> each.getFileName().toString().startsWith("."))
        .filter(each -> Files.isDirectory(each, LinkOption.NOFOLLOW_LINKS))
        .toList();
  }

  private static List<Path> inside(Path place) throws IOException {
    if (!Files.isDirectory(place)) {
      return List.of();
    }
    try (Stream<Path> inside = Files.list(place)) {
      return inside.toList();
    }
  }

  /** Removes a folder; its text goes first, so that what is left half removed is no voice. */
  static void delete(Path place) throws IOException {
    if (!Files.exists(place)) {
      return;
    }
    try (Stream<Path> inside = Files.walk(place)) {
      List<Path> all = inside.sorted(Comparator.reverseOrder()).toList();
      for (Path each : all) {
        if (each.endsWith(KitText.FILE)) {
          Files.deleteIfExists(each);
        }
      }
      for (Path each : all) {
        Files.deleteIfExists(each);
      }
    }
  }
}
