package org.matraloom.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.matraloom.sheet.Mark;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.Sheets;

/** The page for a phone, as far as it can be looked at without a browser. */
class PhonePageTest {

  private static final float[] CLICK = {0, 0.5f, -0.5f, 0.25f, 0};

  @Test
  void theScoreInThePageIsTheSheet() throws IOException {
    Sheet sheet = Sheets.plain(Sheets.sample("culvert"));
    String page = page(sheet);
    assertEquals(
        Sheets.marks(sheet).stream().map(mark -> mark.beat().toDouble()).toList(),
        numbers(page, "marks"));
    assertEquals(
        sheet.rows().stream().map(row -> row.startBeat().toDouble()).toList(),
        numbers(page, "rows"));
    assertEquals(List.of(50.0, 100.0), numbers(page, "percents"));
    long marked = Pattern.compile("<span id=\"m\\d+\"").matcher(page).results().count();
    assertEquals(Sheets.marks(sheet).size(), marked);
  }

  @Test
  void aPageCarriesEverythingAndMayFetchNothing() throws IOException {
    String page = page(Sheets.plain(Sheets.sample("gutter-song")));
    assertTrue(page.contains("Content-Security-Policy\" content=\"default-src 'none';"));
    assertFalse(
        Pattern.compile(
                "(?:src|href)\\s*=\\s*\"(?!#)|url\\((?!data:)|@import|https?:|fetch\\(|XMLHttp")
            .matcher(page)
            .find());
  }

  /**
   * The only script that may run is the one whose hash the policy names, and it is always the same.
   */
  @Test
  void nothingFromAScoreBecomesAScript() throws Exception {
    String trap = "title \"><script>alert(1)</script>\ntala adi\nTrap = ta ka\nA = Trap Trap\n";
    Matcher policy = Pattern.compile("script-src 'sha256-([^']+)'").matcher("");
    List<String> scripts = new ArrayList<>();
    for (Sheet sheet :
        List.of(Sheets.plain(Sheets.score(trap)), Sheets.plain(Sheets.sample("culvert")))) {
      String page = page(sheet);
      Matcher script = Pattern.compile("<script>(.*?)</script>", Pattern.DOTALL).matcher(page);
      assertTrue(script.find());
      scripts.add(script.group(1));
      byte[] hash =
          MessageDigest.getInstance("SHA-256")
              .digest(script.group(1).getBytes(StandardCharsets.UTF_8));
      assertTrue(policy.reset(page).find());
      assertEquals(Base64.getEncoder().encodeToString(hash), policy.group(1));
      assertFalse(
          Pattern.compile("<[^>]* on[a-z]+=").matcher(page).find(), "no handler in the text");
    }
    assertEquals(scripts.get(0), scripts.get(1));
  }

  /** What is touched says what it plays: each name of the score with its place in beats. */
  @Test
  void namesRoundsAndAvartanasKnowTheirBeats() throws IOException {
    String page =
        page(
            Sheets.plain(
                Sheets.score(
                    "tala adi\ntempo 60\nstart beat 5\nFall = takadimi\nSong = Fall Fall , , ,,\nperform\n Song x2 nadai 4\n")));
    assertTrue(page.contains("class=\"name\" data-from=\"4\" data-to=\"5\">Fall 4<"));
    assertTrue(page.contains("class=\"name\" data-from=\"5\" data-to=\"6\">Fall 4<"));
    assertTrue(page.contains("<b class=\"round\" data-from=\"4\" data-to=\"7\">Round 1<"));
    assertTrue(page.contains("<b class=\"round\" data-from=\"7\" data-to=\"10\">Round 2<"));
    assertTrue(page.contains("class=\"no\" data-from=\"0\" data-to=\"8\">1<"));
    assertEquals(6, Pattern.compile("data-from=\"").matcher(page).results().count() - 2);
  }

  @Test
  void aTitleCannotEndTheScript() throws IOException {
    Sheet sheet = Sheets.plain(Sheets.score("title </script><b>\ntala adi\nTrap = ta\nA = Trap\n"));
    String page = page(sheet);
    assertEquals(2, Pattern.compile("</script>").matcher(page).results().count());
  }

  @Test
  void packedClipsSoundLikeWhatWasPacked() {
    SplittableRandom random = new SplittableRandom(3);
    for (int trial = 0; trial < 20; trial++) {
      float[] sound = new float[4_800];
      double hz = 100 + random.nextInt(1_500);
      for (int i = 0; i < sound.length; i++) {
        double fade = Math.exp(-i / 1_500.0);
        sound[i] = (float) (0.7 * fade * Math.sin(2 * Math.PI * hz * i / 24_000));
      }
      float[] heard = PackedClip.of(sound).samples();
      double signal = 0;
      double noise = 0;
      for (int i = 0; i < sound.length; i++) {
        signal += sound[i] * sound[i];
        noise += (sound[i] - heard[i]) * (sound[i] - heard[i]);
      }
      double db = 10 * Math.log10(signal / noise);
      assertTrue(db > 20, "signal to noise in dB: " + db + " at " + hz + " Hz");
    }
  }

  /** The first step sizes and the last: IMA recommended practices, 1992, table of step sizes. */
  @Test
  void theStepsAreThoseOfTheStandard() {
    assertEquals(89, PackedClip.STEPS.size());
    assertEquals(List.of(7, 8, 9, 10, 11, 12, 13, 14, 16, 17), PackedClip.STEPS.subList(0, 10));
    assertEquals(32_767, PackedClip.STEPS.get(88));
  }

  private static String page(Sheet sheet) throws IOException {
    int sollus = (int) Sheets.marks(sheet).stream().filter(Mark.Said.class::isInstance).count();
    PageSound.Stroke stroke = new PageSound.Stroke(0, 0.5);
    List<Optional<PageSound.Stroke>> hand = new ArrayList<>();
    for (int beat = 0; beat < sheet.performance().composition().avartana().beats(); beat++) {
      hand.add(beat == 0 ? Optional.of(stroke) : Optional.empty());
    }
    List<Integer> clips = new ArrayList<>();
    for (int sollu = 0; sollu < sollus; sollu++) {
      clips.add(0);
    }
    PageSound sound =
        new PageSound(
            24_000,
            List.of(new PageSound.Clip(CLICK, 1)),
            hand,
            stroke,
            0.7,
            Map.of(100, clips, 50, clips));
    StringBuilder page = new StringBuilder();
    PhonePage.write(sheet, sound, page);
    return page.toString();
  }

  private static List<Double> numbers(String page, String field) throws IOException {
    Matcher score =
        Pattern.compile(
                "<script type=\"application/json\" id=\"score\">(.*?)</script>", Pattern.DOTALL)
            .matcher(page);
    assertTrue(score.find());
    List<Double> numbers = new ArrayList<>();
    try (JsonParser json = new JsonFactory().createParser(score.group(1))) {
      while (json.nextToken() != null) {
        if (json.currentToken() == JsonToken.FIELD_NAME && json.currentName().equals(field)) {
          json.nextToken();
          while (json.nextToken() != JsonToken.END_ARRAY) {
            numbers.add(json.getDoubleValue());
          }
          return numbers;
        }
      }
    }
    return numbers;
  }
}
