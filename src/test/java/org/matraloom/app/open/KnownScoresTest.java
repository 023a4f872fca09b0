package org.matraloom.app.open;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.score.Lexicon;
import org.matraloom.shelf.ScoreFolder;
import org.matraloom.shelf.ScoreName;

/** A text is proved once, and anew as soon as it is another one, whoever wrote it. */
class KnownScoresTest {

  private static final String LANDS =
      "title Weir\ntala adi\nSong = (takadimi takajunu) x4\nperform\n Song nadai 4\n";

  @TempDir private Path top;
  private Path folder;
  private ScoreFolder scores;
  private KnownScores known;

  @BeforeEach
  void open() throws IOException {
    folder = Files.createDirectory(top.resolve("scores"));
    scores = new ScoreFolder(folder, top.resolve("kept"), Clock.systemUTC());
    known = new KnownScores(scores, Lexicon.standard());
  }

  private ShelfFacts only() throws IOException {
    List<ShelfFacts> facts = known.of(scores.names());
    assertEquals(1, facts.size());
    return facts.get(0);
  }

  @Test
  void whatDidNotChangeIsNotProvedAgain() throws IOException {
    Files.writeString(folder.resolve("weir.loom"), LANDS);
    ShelfFacts first = only();
    assertSame(first, only());
    assertTrue(assertInstanceOf(ShelfFacts.Told.class, first).lands());
    Files.writeString(folder.resolve("weir.loom"), LANDS.replace("x4", "x3"));
    ShelfFacts second = only();
    assertNotSame(first, second);
    assertEquals(false, assertInstanceOf(ShelfFacts.Told.class, second).lands());
  }

  @Test
  void whatIsNoScoreOrGoneIsToldAsSuch() throws IOException {
    Files.writeString(folder.resolve("weir.loom"), LANDS.replace("adi\n", "nowhere\n"));
    assertEquals(2, assertInstanceOf(ShelfFacts.Unread.class, only()).line());
    List<ScoreName> names = scores.names();
    Files.delete(folder.resolve("weir.loom"));
    ShelfFacts.Unread gone = assertInstanceOf(ShelfFacts.Unread.class, known.of(names).get(0));
    assertEquals(0, gone.line());
    assertTrue(gone.problem().contains("weir"), gone.problem());
  }

  @Test
  void manyAreToldInTheOrderOfTheirNames() throws IOException {
    for (int i = 0; i < 60; i++) {
      String name = String.format("weir-%02d.loom", i);
      Files.writeString(folder.resolve(name), LANDS.replace("Weir", "Weir " + i));
    }
    List<ShelfFacts> facts = known.of(scores.names());
    assertEquals(60, facts.size());
    for (int i = 0; i < 60; i++) {
      assertEquals("Weir " + i, facts.get(i).practisedAs().orElseThrow());
    }
  }
}
