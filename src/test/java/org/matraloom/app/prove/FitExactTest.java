package org.matraloom.app.prove;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

/**
 * Questions to {@code fit} in numbers, each answered a second time by trying everything, from the
 * definitions of docs/composing.md alone: a start is a matra of the first round, a landing a matra
 * of a round or a quarter of a beat, an open nadai is 3 to 9.
 */
class FitExactTest {

  private static final long BEAT = ExactPiece.BEAT;
  private static final List<Integer> OPEN_NADAIS = List.of(3, 4, 5, 6, 7, 8, 9);

  /**
   * A round, its nadai 0 if it is open; or a wait of matras of a nadai, -1 matras if it is open.
   */
  private record Part(boolean round, int nadai, int kalam, int matras) {
    static Part round(int nadai) {
      return new Part(true, nadai, 1, 0);
    }

    static Part open(int nadai) {
      return new Part(false, nadai, 1, -1);
    }

    long matra() {
      return ExactPiece.matra(nadai, kalam);
    }

    String typed() {
      String number = nadai == 0 ? "?" : Integer.toString(nadai);
      String wait = matras < 0 ? "?" : Integer.toString(matras);
      return round ? number + (kalam == 1 ? "" : "k" + kalam) : "(" + wait + "n" + nadai + ")";
    }

    /** As an answer names it; a known wait is named in beats. */
    String named() {
      return round || matras < 0 ? typed() : "(" + ExactPiece.mixed(matras * matra()) + " beats)";
    }
  }

  private record Question(
      String tala, int cycle, List<Part> plan, int low, int high, int longestWait) {}

  private static final List<Part> OPEN_THEN_FOUR = List.of(Part.round(0), Part.round(4));
  private static final List<Part> FOUR_THEN_OPEN = List.of(Part.round(4), Part.round(0));

  private static final List<Question> QUESTIONS =
      List.of(
          new Question("adi", 8, OPEN_THEN_FOUR, 9, 13, 0),
          new Question("4+3", 7, List.of(Part.round(0), Part.round(6)), 15, 17, 0),
          new Question("rupaka", 6, FOUR_THEN_OPEN, 5, 11, 0),
          new Question("adi", 8, List.of(Part.round(4), Part.round(4), Part.round(5)), 1, 85, 0),
          new Question("khanda chapu", 5, List.of(Part.round(0), Part.round(0)), 6, 8, 0),
          new Question("adi", 8, List.of(Part.round(3)), 7, 7, 0),
          new Question(
              "misra chapu", 7, List.of(new Part(true, 4, 2, 0), Part.round(0)), 20, 24, 0),
          new Question("adi", 8, List.of(Part.round(4), Part.open(4), Part.round(5)), 7, 8, 9),
          new Question(
              "3", 3, List.of(Part.round(0), new Part(false, 5, 1, 7), Part.round(7)), 10, 12, 0));

  /** Named places: what is typed, in units after samam. */
  private static final List<String> NAMED = List.of("sam", "beat 2", "+1/2", "-1/4", "+1/3");

  private static final long[] NAMED_UNITS = {0, BEAT, BEAT / 2, -BEAT / 4, BEAT / 3};

  private static final Pattern COUNT = Pattern.compile("\"count\" : (\\d+)");

  private static final Pattern ANSWER =
      Pattern.compile(
          "\"plan\" : \"([^\"]*)\",\\s+\"matras\" : (\\d+),\\s+\"waitMatras\" : (\\d+),"
              + "\\s+\"startBeat\" : \"([^\"]*)\",\\s+\"eduppuBeat\" : \"([^\"]*)\"");

  @Test
  void everyQuestionIsAnsweredWholly() {
    int questions = 0;
    int answers = 0;
    for (Question question : QUESTIONS) {
      for (int start = -1; start < NAMED.size(); start++) {
        for (int eduppu = -1; eduppu < NAMED.size(); eduppu++) {
          Set<String> expected = tried(question, start, eduppu);
          assertEquals(expected, asked(question, start, eduppu), question + " " + start + eduppu);
          answers += expected.size();
          questions++;
        }
      }
    }
    assertEquals(9 * 6 * 6, questions);
    assertTrue(answers > 8_000, "answers were compared: " + answers);
  }

  private static Set<String> asked(Question question, int start, int eduppu) {
    String plan = String.join("-", question.plan().stream().map(Part::typed).toList());
    CommandLineRun run =
        CommandLineRun.of(
            "fit",
            "--tala",
            question.tala(),
            "--as",
            plan,
            "--matras",
            question.low() + ".." + question.high(),
            "--wait",
            "0.." + question.longestWait(),
            "--start",
            start < 0 ? "?" : NAMED.get(start),
            "--eduppu",
            eduppu < 0 ? "?" : NAMED.get(eduppu),
            "--all",
            "--json");
    assertEquals("", run.err());
    Matcher counted = COUNT.matcher(run.out());
    assertTrue(counted.find(), run.out());
    int count = Integer.parseInt(counted.group(1));
    assertEquals(count > 0 ? ExitCode.DONE : ExitCode.CHECK_FAILED, run.code());
    assertEquals(count > 0, run.out().contains("\"reasons\" : [ ]"), run.out());
    Set<String> keys = new TreeSet<>();
    Matcher answers = ANSWER.matcher(run.out());
    while (answers.find()) {
      String places = units(answers.group(4)) + " " + units(answers.group(5));
      keys.add(answers.group(1) + " " + answers.group(2) + " " + answers.group(3) + " " + places);
    }
    assertEquals(count, keys.size(), "no answer twice and none left out");
    return keys;
  }

  private static Set<String> tried(Question question, int start, int eduppu) {
    Set<String> found = new TreeSet<>();
    for (List<Part> plan : plans(question.plan())) {
      List<Long> starts = start < 0 ? starts(plan, question) : List.of(NAMED_UNITS[start]);
      List<Long> eduppus = eduppu < 0 ? landings(plan, question) : List.of(NAMED_UNITS[eduppu]);
      String named = String.join("-", plan.stream().map(Part::named).toList());
      for (int matras = question.low(); matras <= question.high(); matras++) {
        for (int wait = 0; wait <= question.longestWait(); wait++) {
          for (long from : starts) {
            long end = from;
            for (Part part : plan) {
              int many = part.round() ? matras : part.matras() < 0 ? wait : part.matras();
              end += many * part.matra();
            }
            for (long to : eduppus) {
              if ((end - to) % (question.cycle() * BEAT) == 0) {
                found.add(named + " " + matras + " " + wait + " " + from + " " + to);
              }
            }
          }
        }
      }
    }
    return found;
  }

  private static List<List<Part>> plans(List<Part> plan) {
    List<List<Part>> plans = new ArrayList<>(List.of(List.of()));
    for (Part part : plan) {
      List<List<Part>> longer = new ArrayList<>();
      for (List<Part> before : plans) {
        for (int nadai : part.nadai() == 0 ? OPEN_NADAIS : List.of(part.nadai())) {
          List<Part> more = new ArrayList<>(before);
          more.add(new Part(part.round(), nadai, part.kalam(), part.matras()));
          longer.add(more);
        }
      }
      plans = longer;
    }
    return plans;
  }

  private static List<Long> starts(List<Part> plan, Question question) {
    List<Long> places = new ArrayList<>();
    for (long at = 0; at < question.cycle() * BEAT; at += plan.get(0).matra()) {
      places.add(at);
    }
    return places;
  }

  private static List<Long> landings(List<Part> plan, Question question) {
    Set<Long> places = new TreeSet<>();
    for (long at = 0; at < question.cycle() * BEAT; at += BEAT / 4) {
      places.add(at);
    }
    for (Part part : plan) {
      for (long at = 0; part.round() && at < question.cycle() * BEAT; at += part.matra()) {
        places.add(at);
      }
    }
    return List.copyOf(places);
  }

  private static long units(String beats) {
    String[] parts = beats.split("/");
    return Long.parseLong(parts[0]) * BEAT / (parts.length == 1 ? 1 : Long.parseLong(parts[1]));
  }
}
