package org.matraloom.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The list of a class, read and refused. */
class ClassListTest {

  private static final List<String> PIECES = List.of("gutter-song", "weir");

  @Test
  void everyKindOfLineIsRead() {
    ClassList list =
        ClassList.read(
            List.of(
                "# a note",
                "title   The rain class",
                "",
                "piece weir",
                "piece   gutter-song   level 2   tags korvai,  first year ,",
                "homework Nila | weir | 75% | three times | clean".replace(" | clean", ""),
                "homework Tarun|gutter-song|60"),
            PIECES);
    assertEquals("The rain class", list.title());
    assertEquals(ClassEntry.NONE, list.entry("weir"));
    assertEquals(new ClassEntry("2", List.of("korvai", "first year")), list.entry("gutter-song"));
    assertEquals(
        List.of(
            new Homework("Nila", "weir", "75%", "three times"),
            new Homework("Tarun", "gutter-song", "60", "")),
        list.homework());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      value = {
        "piece nila@there is no score nila.loom in the folder of the class",
        "piece weir tag a@a piece is written",
        "homework Nila | weir@homework is written",
        "homework Nila | weir | fast@homework is written",
        "homework Nila | weir | 60 | a | b@homework is written",
        "homework | weir | 60@homework is written",
        "level 3@\"level\" is none of title, piece, homework"
      })
  void aWrongLineIsNamedWithItsPlace(String line, String words) {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class, () -> ClassList.read(List.of("title A", line), PIECES));
    assertEquals(
        "class.txt:2: " + words,
        refused.getMessage().substring(0, "class.txt:2: ".length() + words.length()));
  }
}
