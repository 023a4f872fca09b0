package org.matraloom.prompt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.mouth.CueSheet;
import org.matraloom.score.Lexicon;

/** What is kept of a recording on the disk. */
class RowFolderTest {

  private static final Lexicon LEXICON = Lexicon.standard();
  private static final List<AskedRow> ROWS =
      List.of(
          AskedRow.of("takita takita , .", LEXICON).orElseThrow(),
          AskedRow.of("tam , , . tom , , .", LEXICON).orElseThrow());

  @TempDir private Path place;

  private RowFolder begun() throws IOException {
    RowFolder folder = new RowFolder(place.resolve("river.rows"), LEXICON);
    folder.begin(new RowFolder.Head("Mira\nof the Delta", "", "yes"), ROWS);
    return folder;
  }

  @Test
  void whatIsAskedForAndByWhomIsReadBack() throws IOException {
    RowFolder folder = begun();
    assertTrue(folder.isBegun());
    assertEquals(ROWS, folder.rows());
    assertEquals(new RowFolder.Head("Mira of the Delta", "", "yes"), folder.head());
  }

  @Test
  void theSheetOfARecordingHoldsWhatWasGood() throws IOException {
    RowFolder folder = begun();
    Path first = folder.next(1);
    Files.write(first, new byte[1]);
    assertEquals(0, RowSheet.good(first), "not judged yet");
    RowSheet.note(
        first,
        ROWS.get(1),
        List.of(
            SayVerdict.good(List.of(6.5, 8.1)),
            SayVerdict.bad("it was clipped"),
            SayVerdict.good(List.of(12.9, 14.5))));
    assertEquals(2, RowSheet.good(first));
    String text = Files.readString(RowSheet.of(first));
    assertTrue(text.contains("6.5000 tam 8.1000 tom"), text);
    assertTrue(text.contains("# again: it was clipped"), text);
    assertEquals(4, CueSheet.read(text, "row", LEXICON).size(), "voice make reads it");
    Path second = folder.next(1);
    assertFalse(second.equals(first));
    Files.write(second, new byte[1]);
    assertEquals(List.of(first, second), folder.recordings(1));
    assertEquals(List.of(), folder.recordings(0));
    RowSheet.drop(first);
    assertEquals(List.of(second), folder.recordings(1));
  }

  @Test
  void soundsThatCompanyChangesStayWhatTheyAre() throws IOException {
    RowFolder folder = begun();
    Path file = folder.next(0);
    RowSheet.note(
        file, ROWS.get(0), List.of(SayVerdict.good(List.of(6.4, 6.8, 7.2, 7.6, 8.0, 8.4))));
    assertTrue(Files.readString(RowSheet.of(file)).contains("7.2000 ṭa"));
  }

  @Test
  void aListThatWasChangedWronglyIsToldWithItsRow() throws IOException {
    RowFolder folder = begun();
    Files.writeString(folder.path().resolve("rows.txt"), "row takita\n");
    IOException wrong = assertThrows(IOException.class, folder::rows);
    assertTrue(wrong.getMessage().contains("\"takita\" is no row of eight matras"));
    Files.writeString(folder.path().resolve("rows.txt"), "owner x\n");
    assertTrue(assertThrows(IOException.class, folder::rows).getMessage().contains("no row"));
  }

  @Test
  void removingTakesTheRowsAndNothingElse() throws IOException {
    RowFolder folder = begun();
    Path file = folder.next(0);
    Files.write(file, new byte[1]);
    RowSheet.note(file, ROWS.get(0), List.of());
    Path own = folder.path().resolve("my-notes.txt");
    Files.writeString(own, "x");
    folder.remove();
    assertFalse(Files.exists(file));
    assertTrue(Files.exists(own));
    Files.delete(own);
    folder.remove();
    assertFalse(Files.exists(folder.path()));
  }
}
