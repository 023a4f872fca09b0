package org.matraloom.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The list of sollus is read by the reader of lists here, and by nobody else. */
class StandardSollusTest {

  private static final String STALE = "scripts/draw-sollus --write draws the class anew";
  private static final String STANDARD = "sollus.txt";

  private static LexiconText asRead() throws IOException {
    try (InputStream list = Lexicon.class.getResourceAsStream(STANDARD)) {
      String text = new String(list.readAllBytes(), StandardCharsets.UTF_8);
      return new LexiconText().plus(text, STANDARD);
    }
  }

  @Test
  void whatIsDrawnIsWhatTheListSays() throws IOException {
    LexiconText read = asRead();
    LexiconText drawn = LexiconText.standard();
    assertTrue(read.sounds().size() > 100, "sounds were read: " + read.sounds().size());
    assertEquals(read.sounds(), drawn.sounds(), STALE);
    assertEquals(read.spellings(), drawn.spellings(), STALE);
    for (String spelling : read.spellings()) {
      assertEquals(read.bySpelling(spelling), drawn.bySpelling(spelling), STALE);
    }
    assertEquals(read.longestSpelling(), drawn.longestSpelling(), STALE);
    assertEquals(read.fastest(), drawn.fastest(), STALE);
  }

  @Test
  void theWordsForGroupsAreThoseOfTheList() throws IOException {
    LexiconText read = asRead();
    LexiconText drawn = LexiconText.standard();
    int plain = 0;
    int rings = 0;
    for (int size = 1; size <= LexiconText.LARGEST_GROUP; size++) {
      plain += read.words(size).size();
      rings += read.mora(size).size();
      assertEquals(read.words(size), drawn.words(size), STALE);
      assertEquals(read.mora(size), drawn.mora(size), STALE);
      assertEquals(read.firstOwn(size), drawn.firstOwn(size), STALE);
    }
    assertTrue(plain > 20 && rings > 5, plain + " plain words, " + rings + " of a mora");
  }

  @Test
  void whatChangesInCompanyIsWhatTheListSays() throws IOException {
    LexiconText read = asRead();
    LexiconText drawn = LexiconText.standard();
    List<String> names = read.sounds().stream().map(SolluSound::name).toList();
    int changed = 0;
    for (String before : names) {
      for (String sound : names) {
        changed += read.soundAfter(before, sound).isPresent() ? 1 : 0;
        assertEquals(read.soundAfter(before, sound), drawn.soundAfter(before, sound), STALE);
      }
    }
    assertTrue(changed > 5, changed + " pairs change");
  }
}
