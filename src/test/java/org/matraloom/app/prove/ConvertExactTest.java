package org.matraloom.app.prove;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.prove.ExactPiece.Step;

/**
 * Every combination of the options of {@code convert}, against sums made from the definitions of
 * docs/score.md: what is printed, and what {@code --apply 0} writes.
 */
class ConvertExactTest {

  private static final long HALF = ExactPiece.BEAT / 2;

  /** 0 leaves the nadai as it is. */
  private static final int[] NADAIS = {0, 3, 4, 5, 7, 9};

  private static final Map<String, Integer> TALAS =
      new TreeMap<>(Map.of("adi", 8, "chatusra rupaka", 6, "misra chapu", 7, "khanda chapu", 5));

  private static final List<ExactPiece> PIECES =
      List.of(
          new ExactPiece(
              "adi", 8, 0, 0, List.of(new Step.Say(64, 2, 4, 1), new Step.Say(64, 1, 5, 1))),
          new ExactPiece("adi", 8, 0, HALF, List.of(new Step.Say(54, 3, 4, 1))),
          new ExactPiece(
              "misra chapu",
              7,
              5 * ExactPiece.BEAT,
              -HALF,
              List.of(
                  new Step.Say(7, 2, 4, 2),
                  new Step.RestMatras(9, 8),
                  new Step.Until(7),
                  new Step.RestBeats(2),
                  new Step.Say(20, 1, 3, 1))),
          new ExactPiece(
              "adi",
              8,
              7 * ExactPiece.BEAT + HALF,
              7 * ExactPiece.BEAT,
              List.of(new Step.Say(11, 1, 7, 3), new Step.RestMatras(3, 4))));

  private static final Pattern BEAT = Pattern.compile("(start|eduppu) +beat (\\d+)( \\d+/\\d+|)");

  @TempDir private Path folder;

  @Test
  void everyCombinationIsObeyed() throws IOException {
    int tried = 0;
    Path score = folder.resolve("piece.loom");
    Path copy = folder.resolve("copy.loom");
    for (ExactPiece piece : PIECES) {
      Files.writeString(score, piece.text());
      for (int nadai : NADAIS) {
        for (String tala : tala()) {
          for (boolean samePlace : new boolean[] {false, true}) {
            List<String> asked = asked(score, nadai, tala, samePlace);
            if (asked.size() == 2) {
              continue;
            }
            ExactPiece wished = wished(piece, nadai, tala, samePlace);
            CommandLineRun run = CommandLineRun.of(asked.toArray(String[]::new));
            assertEquals("", run.err(), asked::toString);
            String first = firstSentence(run.out());
            assertTrue(first.endsWith(": " + wished.told()), asked + first + wished.told());
            asked.addAll(List.of("--apply", "0", "-o", copy.toString()));
            assertEquals(ExitCode.DONE, CommandLineRun.of(asked.toArray(String[]::new)).code());
            assertEquals(plain(wished.text()), plain(Files.readString(copy)), asked::toString);
            tried++;
          }
        }
      }
    }
    assertEquals(4 * (6 * 5 * 2 - 1), tried);
  }

  /** The first way that is offered lands by the same sums, in every combination. */
  @Test
  void everyFirstWayLands() throws IOException {
    int tried = 0;
    Path score = folder.resolve("piece.loom");
    Path copy = folder.resolve("copy.loom");
    for (ExactPiece piece : PIECES.subList(0, 2)) {
      Files.writeString(score, piece.text());
      for (int nadai : new int[] {0, 3, 5}) {
        for (String tala : tala()) {
          List<String> asked = asked(score, nadai, tala, tried % 2 == 0);
          ExactPiece wished = wished(piece, nadai, tala, tried % 2 == 0);
          if (asked.size() > 2 && wished.miss() != 0) {
            asked.addAll(List.of("--apply", "1", "-o", copy.toString()));
            CommandLineRun run = CommandLineRun.of(asked.toArray(String[]::new));
            assertEquals(ExitCode.DONE, run.code(), run.err());
            CommandLineRun check = CommandLineRun.of("check", copy.toString());
            assertEquals(ExitCode.DONE, check.code(), asked + check.out());
            String talaLine = "tala " + wished.talaName();
            assertTrue(Files.readString(copy).contains(talaLine), asked::toString);
          }
          tried++;
        }
      }
    }
    assertEquals(2 * 3 * 5, tried);
  }

  /** What is printed before the ways, in one line. */
  private static String firstSentence(String out) {
    return out.replaceAll("(?s)\n(What makes|--apply).*", "").replaceAll("\n +", " ").strip();
  }

  private static List<String> tala() {
    List<String> names = new ArrayList<>(List.of(""));
    names.addAll(TALAS.keySet());
    return names;
  }

  private static List<String> asked(Path score, int nadai, String tala, boolean samePlace) {
    List<String> words = new ArrayList<>(List.of("convert", score.toString()));
    if (nadai > 0) {
      words.addAll(List.of("--nadai", Integer.toString(nadai)));
    }
    if (!tala.isEmpty()) {
      words.addAll(List.of("--tala", tala));
    }
    if (samePlace) {
      words.add("--same-place");
    }
    return words;
  }

  /** A place that the other cycle has not goes to samam; the rest is as it was. */
  private static ExactPiece wished(ExactPiece piece, int nadai, String tala, boolean samePlace) {
    int cycle = tala.isEmpty() ? piece.cycle() : TALAS.get(tala);
    long eduppu = inside(piece.eduppu(), cycle);
    List<Step> steps = new ArrayList<>();
    for (Step step : piece.steps()) {
      if (step instanceof Step.Say say && nadai > 0) {
        steps.add(new Step.Say(say.matras(), say.times(), nadai, say.kalam()));
      } else if (step instanceof Step.RestMatras rest && nadai > 0) {
        steps.add(new Step.RestMatras(rest.matras(), nadai));
      } else if (step instanceof Step.Until until && until.beat() > cycle) {
        steps.add(new Step.Until(1));
      } else {
        steps.add(step);
      }
    }
    return new ExactPiece(
        tala.isEmpty() ? piece.talaName() : tala,
        cycle,
        samePlace ? eduppu : inside(piece.start(), cycle),
        eduppu,
        steps);
  }

  private static long inside(long place, int cycle) {
    return Math.abs(place) < cycle * ExactPiece.BEAT ? place : 0;
  }

  /** A score as its meaning, so that ways of writing one thing are alike. */
  private static String plain(String text) {
    return BEAT.matcher(text.replace(" samam\n", " beat 1\n"))
        .replaceAll(ConvertExactTest::fromSamam)
        .replaceAll(" x1 ", " ")
        .replaceAll(" kalam 1", "")
        .replaceAll(" +", " ");
  }

  /** A counted beat as a distance from samam. */
  private static String fromSamam(MatchResult beat) {
    int whole = Integer.parseInt(beat.group(2)) - 1;
    String part = beat.group(3).strip();
    String sum = part.isEmpty() ? Integer.toString(whole) : whole == 0 ? part : whole + " " + part;
    return beat.group(1) + " +" + sum;
  }
}
