package org.matraloom.app.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is whole or not there. */
class WholeFileTest {

  @TempDir private Path folder;

  @Test
  void aFullDiskLeavesTheOldFileAndNothingElse() throws IOException {
    Path target = folder.resolve("page.svg");
    Files.writeString(target, "old");
    IOException told =
        assertThrows(
            IOException.class,
            () ->
                WholeFile.write(
                    target,
                    out -> {
                      out.write("half of it".getBytes(StandardCharsets.UTF_8));
                      throw new IOException("No space left on device");
                    }));
    assertEquals("cannot write " + target + ": No space left on device", told.getMessage());
    assertEquals("old", Files.readString(target));
    assertEquals(List.of("page.svg"), names());
  }

  @Test
  void anOldFileIsReplaced() throws IOException {
    Path target = folder.resolve("page.txt");
    Files.writeString(target, "old and longer");
    WholeFile.writeText(target, out -> out.append("நடை"));
    assertEquals("நடை", Files.readString(target));
    assertEquals(List.of("page.txt"), names());
  }

  @Test
  void foldersAndDevicesAreRefused() {
    UserError folderError =
        assertThrows(UserError.class, () -> WholeFile.writeText(folder, out -> out.append("x")));
    assertTrue(folderError.getMessage().contains("is a folder"));
    Path missing = folder.resolve("not/there.svg");
    UserError missingError =
        assertThrows(UserError.class, () -> WholeFile.writeText(missing, out -> out.append("x")));
    assertTrue(missingError.getMessage().contains("does not exist; make it first"));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
