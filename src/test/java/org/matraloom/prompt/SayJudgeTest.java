package org.matraloom.prompt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Lexicon;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.SpokenLine;
import org.matraloom.voice.VoiceSettings;

/** Rows said by the synthesiser, well and not well. */
class SayJudgeTest {

  private static final int RATE = SpokenLine.RATE;
  private static final double START = 0.5;
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final Lexicon LEXICON = Lexicon.standard();
  private static final AskedRow ROW = AskedRow.of("takadimi tam , , .", LEXICON).orElseThrow();

  private final Random random = new Random(3);

  /** What was said, where its first beat is in it, and how late it came. */
  private record Saying(float[] said, double firstSeconds, double lateSeconds) {}

  /** Sayings of the row, each in its own way, in a room with some noise. */
  private float[] room(double noise, Saying... sayings) {
    float[] sound = new float[(int) ((START + AskedRow.sayBegins(sayings.length) + 0.5) * RATE)];
    for (int say = 0; say < sayings.length; say++) {
      float[] said = sayings[say].said();
      int from =
          (int)
              ((START
                      + AskedRow.sayBegins(say)
                      + sayings[say].lateSeconds()
                      - sayings[say].firstSeconds())
                  * RATE);
      for (int i = 0; i < said.length && from + i < sound.length; i++) {
        sound[from + i] += said[i];
      }
    }
    for (int i = 0; i < sound.length; i++) {
      double noisy = sound[i] + noise * random.nextGaussian();
      sound[i] = (float) Math.max(-1, Math.min(1, noisy));
    }
    return sound;
  }

  private static Saying said(double gain, double late, String... sollus) {
    SpokenLine line = new SpokenLine();
    double first = (double) line.endFrame() / RATE;
    for (String sollu : sollus) {
      line.say(sollu, sollu.equals("tam") ? 900 : 400);
    }
    float[] wave = line.render(new FormantVoice(RATE, LEXICON, VoiceSettings.USUAL));
    for (int i = 0; i < wave.length; i++) {
      wave[i] *= (float) (0.5 * gain);
    }
    return new Saying(wave, first, late);
  }

  private static Saying row(double gain, double late) {
    return said(gain, late, "ta", "ka", "di", "mi", "tam");
  }

  private static Saying good() {
    return row(1, 0.03);
  }

  private SayJudge.Heard heard(double noise, OptionalDouble clapDb, Saying... sayings)
      throws IOException {
    return new SayJudge(ROW, room(noise, sayings), RATE, START).judge(3, clapDb, NONE);
  }

  private static String fault(SayJudge.Heard heard, int say) {
    return heard.says().get(say).fault().orElse("good");
  }

  @Test
  void aGoodSayingTellsWhereEachSolluBegins() throws IOException {
    SayJudge.Heard heard = heard(1e-4, NONE, good(), row(1, 0.25), good());
    assertEquals(3, heard.says().size());
    for (int say = 0; say < 3; say++) {
      assertEquals("good", fault(heard, say));
      List<Double> seconds = heard.says().get(say).seconds();
      double late = say == 1 ? 0.25 : 0.03;
      for (int i = 0; i < 5; i++) {
        double vowel = START + AskedRow.sayBegins(say) + late + ROW.places().get(i).seconds();
        // The release lies before the vowel by the length of the consonant, 100 ms at most.
        assertEquals(vowel - 0.04, seconds.get(i), 0.06, ROW.places().get(i).sound());
      }
    }
    assertTrue(heard.usualDb().isPresent());
  }

  @Test
  void aLateSayingThatRunsIntoTheNextIsStillItsOwn() throws IOException {
    SayJudge.Heard heard = heard(1e-4, NONE, row(1, 0.3), good());
    assertEquals("good", fault(heard, 0));
    assertEquals("good", fault(heard, 1));
  }

  @Test
  void eachFaultIsToldWithItsReason() throws IOException {
    SayJudge.Heard heard = heard(1e-5, NONE, row(8, 0), row(0.01, 0), said(0, 0, "ta"));
    assertTrue(fault(heard, 0).startsWith("it was clipped"), fault(heard, 0));
    assertTrue(fault(heard, 1).startsWith("it was too soft"), fault(heard, 1));
    assertTrue(fault(heard, 2).startsWith("nothing was heard"), fault(heard, 2));
  }

  @Test
  void aSolluThatIsLeftOutIsNamed() throws IOException {
    SayJudge.Heard heard = heard(1e-4, NONE, said(1, 0, "ta", "ka", ".", "mi", "tam"), good());
    assertEquals("di was not heard", fault(heard, 0));
    assertEquals("good", fault(heard, 1));
  }

  @Test
  void aLoudRoomAndClapsInTheMicrophoneAreTold() throws IOException {
    assertTrue(fault(heard(0.02, NONE, good()), 0).startsWith("the room is loud"));
    assertTrue(fault(heard(1e-4, OptionalDouble.of(-20), good()), 0).contains("headphones"));
    assertEquals("good", fault(heard(1e-4, OptionalDouble.of(-60), good()), 0));
  }

  @Test
  void whatIsMuchSofterThanTheRowsBeforeIsTold() throws IOException {
    OptionalDouble usual = heard(1e-5, NONE, good()).usualDb();
    SayJudge judge = new SayJudge(ROW, room(1e-5, row(0.15, 0)), RATE, START);
    SayVerdict softer = judge.judge(1, NONE, usual).says().get(0);
    assertTrue(softer.fault().orElse("good").contains("softer than the rows before"));
    assertTrue(judge.judge(1, NONE, NONE).says().get(0).isGood(), "alone it is loud enough");
  }

  @Test
  void aSayingThatWasBrokenOffIsNotJudged() throws IOException {
    float[] whole = room(1e-4, good(), good());
    float[] cut = Arrays.copyOf(whole, (int) ((START + AskedRow.sayBegins(1) + 1) * RATE));
    SayJudge.Heard heard = new SayJudge(ROW, cut, RATE, START).judge(3, NONE, NONE);
    assertEquals(1, heard.says().size());
    assertTrue(heard.says().get(0).isGood());
  }

  @Test
  void howLongARoomRingsIsReadFromItsDecay() {
    // Noise that falls by 60 dB in a known time: ISO 3382-2 reads T20 from 5 to 25 dB under.
    for (double ring : new double[] {0.4, 1.2}) {
      float[] sound = new float[3 * RATE];
      for (int i = 0; i < sound.length; i++) {
        double after = Math.max(0, (double) i / RATE - 0.5);
        sound[i] = (float) (0.3 * random.nextGaussian() * Math.pow(10, -3 * after / ring));
      }
      assertEquals(ring, new StretchLevel(sound, RATE).ringSeconds(0, 3), 0.1 + 0.1 * ring);
    }
    float[] steady = new float[RATE];
    Arrays.fill(steady, 0.1f);
    assertEquals(0, new StretchLevel(steady, RATE).ringSeconds(0, 1));
    assertFalse(new StretchLevel(steady, RATE).isClipped(0, 1));
  }
}
