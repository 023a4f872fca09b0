package org.matraloom.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.script.Script;
import org.matraloom.sheet.Sheets;

/** Films are whole or not there, and what was left lying is swept. */
class FilmFolderTest {

  @TempDir private Path folder;

  @Test
  void whatAnInterruptedRunLeftIsThrownAway() throws IOException {
    Path target = folder.resolve("a.mp4");
    Path left = Files.createDirectories(folder.resolve(".a.mp4.part")).resolve("sound.wav");
    Files.writeString(left, "half");
    try (FilmFolder work = FilmFolder.beside(target)) {
      assertFalse(Files.exists(left));
      Files.writeString(work.file("film.mp4"), "whole");
      assertThrows(FilmFault.class, () -> FilmFolder.beside(target));
      work.finish(work.file("film.mp4"));
    }
    assertEquals("whole", Files.readString(target));
    assertEquals(List.of("a.mp4"), names());
  }

  @Test
  void aProgramThatFailsLeavesTheOldFilmAndNothingElse() throws IOException {
    Path target = Files.writeString(folder.resolve("a.mp4"), "old");
    FilmMaker maker =
        new FilmMaker(
            Films.order(
                FilmSize.SMALL, 25, Films.pass(Sheets.sample("culvert"), Script.LATIN, "")));
    FilmFault none =
        assertThrows(
            FilmFault.class,
            () -> maker.write(target, FilmCoding.MP4, "no-such-ffmpeg-here", (done, total) -> {}));
    assertTrue(none.getMessage().contains("apt install ffmpeg"), none.getMessage());
    FilmFault broken =
        assertThrows(
            FilmFault.class,
            () -> maker.write(target, FilmCoding.MP4, "false", (done, total) -> {}));
    assertTrue(broken.getMessage().startsWith("ffmpeg could not make the film"));
    assertEquals("old", Files.readString(target));
    assertEquals(List.of("a.mp4"), names());
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
