package org.matraloom.app.lesson;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.madetake.Flaws;
import org.matraloom.madetake.KhandaFault;
import org.matraloom.madetake.MadeTake;
import org.matraloom.madetake.SolluSpeaker;
import org.matraloom.madetake.Speakers;
import org.matraloom.notation.ScoreReader;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.staircase.Help;
import org.matraloom.staircase.Spot;

/**
 * The voice of {@code scripts/rig-session}: reads headings of passes, one a line with the name of a
 * file before it, and says each pass into its file (16 bits, 48 kHz, one channel, no header).
 *
 * <p>Answers a line: the seconds from the first clap of the count-in to the first sollu, the
 * seconds of that sollu in the file, and how many sollus there are. Above the tempo of the second
 * argument it keeps the old speed in five.
 */
final class RigVoice {

  private static final double START_SECONDS = 0.5;
  private static final int RATE = 48_000;
  private static final Pattern HEADING =
      Pattern.compile("(\\S+) (The whole|Join (\\d+)|The phrase (\\w+)), (\\d+) beats a minute");

  private RigVoice() {}

  /**
   * Runs it.
   *
   * @param arguments the score, and the fastest tempo at which five is said evenly
   * @throws IOException if a file cannot be written
   */
  public static void main(String[] arguments) throws IOException {
    Composition score =
        ScoreReader.read(Path.of(arguments[0]), Lexicon.standard()).composition().orElseThrow();
    LessonPieces pieces = new LessonPieces(score, Lexicon.standard(), Optional.empty());
    int cleanUpTo = Integer.parseInt(arguments[1]);
    BufferedReader headings = new BufferedReader(new InputStreamReader(System.in));
    int number = 0;
    for (String line = headings.readLine(); line != null; line = headings.readLine()) {
      Matcher heading = HEADING.matcher(line);
      if (!heading.find()) {
        System.out.println("unknown");
        continue;
      }
      int tempo = Integer.parseInt(heading.group(5));
      LessonPass pass = pass(pieces, heading, tempo);
      MadeTake take = take(pass, ++number, tempo > cleanUpTo);
      write(Path.of(heading.group(1)), take.sound());
      double first =
          pass.timeline().secondsAt(ExpectedSollu.of(pass.timeline()).get(0).beat()).toDouble();
      System.out.printf(
          Locale.ROOT, "%.6f %.6f %d%n", first, START_SECONDS, take.plan().sollus().size());
    }
  }

  /** What is asked for; who says another piece, which has no such place, says all of it. */
  private static LessonPass pass(LessonPieces pieces, Matcher heading, int tempo) {
    String join = heading.group(3);
    String phrase = heading.group(4);
    if (join != null && Integer.parseInt(join) <= pieces.joins()) {
      return pieces.loop(new Spot(Spot.Kind.JOIN, join), tempo, Help.ALL);
    }
    return phrase != null && pieces.sections().contains(phrase)
        ? pieces.loop(new Spot(Spot.Kind.PHRASE, phrase), tempo, Help.ALL)
        : pieces.whole(tempo, Help.ALL);
  }

  private static MadeTake take(LessonPass pass, int seed, boolean isFaulty) {
    Flaws flaws = new Flaws(seed);
    flaws.startSeconds = START_SECONDS;
    if (isFaulty) {
      flaws.khanda = Optional.of(KhandaFault.OLD_SPEED_THROUGHOUT);
    }
    return MadeTake.of(
        ScoreTimeline.of(Performance.of(pass.composition()), 0),
        flaws,
        new Speakers(Path.of(".")).named(Speakers.LOW));
  }

  private static void write(Path file, float[] sound) throws IOException {
    int frames = (int) ((sound.length - 1L) * RATE / SolluSpeaker.RATE);
    byte[] pcm = new byte[2 * frames];
    for (int i = 0; i < frames; i++) {
      double place = (double) i * SolluSpeaker.RATE / RATE;
      int at = (int) place;
      double between = sound[at] + (place - at) * (sound[at + 1] - sound[at]);
      short sample = (short) Math.round(32_000 * Math.max(-1, Math.min(1, between)));
      pcm[2 * i] = (byte) sample;
      pcm[2 * i + 1] = (byte) (sample >> 8);
    }
    Files.write(file, pcm);
  }
}
