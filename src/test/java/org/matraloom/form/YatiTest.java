package org.matraloom.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.time.Ratio;

class YatiTest {

  /**
   * Published: 28 21 14 7 (yogeswaran.in, lesson 000013-2); 14 17 20 (rasikas.org, p=380684); 5 4 7
   * 9 3 4 and the equal lines (mridangams.com, chapter 5). The four middle rows are from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "28 21 14 7, GOPUCCHA, equal steps of 7",
    "14 17 20, SROTOVAHA, equal steps of 3",
    "5 4 7 9 3 4, VISHAMA, 'steps -1, +3, +2, -6, +1'",
    "8 8 8 8, SAMA, no step",
    "8 8 8, SAMA, no step",
    "1 2 3 4 5 6 7, SROTOVAHA, equal steps of 1",
    "7 6 5 4 3 2 1, GOPUCCHA, equal steps of 1",
    "3 5 7 5 3, MRIDANGA, equal steps of 2",
    "7 5 3 5 7, DAMARU, equal steps of 2",
    "9 7 4, GOPUCCHA, 'steps -2, -3'",
    "8 8 6 6 4 4, GOPUCCHA, equal steps of 2",
    "3 7 5, MRIDANGA, 'steps +4, -2'",
    "7 5, NONE, equal steps of 2",
    "7, NONE, no step",
    "8 8 4, NONE, equal steps of 4",
    "3 5 4 6, VISHAMA, 'steps +2, -1, +2'"
  })
  void namesShapesAndSteps(String lengths, Yati shape, String steps) {
    List<Ratio> lines =
        Arrays.stream(lengths.split(" ")).map(n -> Ratio.of(Long.parseLong(n))).toList();
    assertEquals(shape, Yati.of(lines));
    assertEquals(steps, YatiSteps.of(lines).inWords());
  }

  @Test
  void noLinesHaveNoShape() {
    assertEquals(Yati.NONE, Yati.of(List.of()));
    assertTrue(YatiSteps.of(List.of()).areEqual());
  }

  @Test
  void generatedListsAreNamedRightly() {
    Random random = new Random(67);
    int seen = 0;
    for (int i = 0; i < 400; i++) {
      Yati shape = Yati.values()[i % 6];
      List<Integer> lines = generated(shape, random);
      assertEquals(shape, Yati.ofMatras(lines), lines::toString);
      List<Integer> turned = new ArrayList<>(lines);
      Collections.reverse(turned);
      Yati backwards =
          switch (shape) {
            case GOPUCCHA -> Yati.SROTOVAHA;
            case SROTOVAHA -> Yati.GOPUCCHA;
            default -> shape;
          };
      assertEquals(backwards, Yati.ofMatras(turned), turned::toString);
      seen++;
    }
    assertEquals(400, seen);
  }

  private static List<Integer> generated(Yati shape, Random random) {
    int down = 2 + random.nextInt(4);
    List<Integer> falling = new ArrayList<>(List.of(60 + random.nextInt(20)));
    for (int i = 0; i < down; i++) {
      falling.add(falling.get(i) - 1 - random.nextInt(9));
    }
    List<Integer> rising = new ArrayList<>(falling);
    Collections.reverse(rising);
    return switch (shape) {
      case SAMA -> Collections.nCopies(3 + random.nextInt(5), 1 + random.nextInt(30));
      case GOPUCCHA -> falling;
      case SROTOVAHA -> rising;
      case MRIDANGA -> joined(rising, falling.subList(1, 2 + random.nextInt(down)));
      case DAMARU -> joined(falling, rising.subList(1, 2 + random.nextInt(down)));
      default -> joined(falling, falling);
    };
  }

  private static List<Integer> joined(List<Integer> first, List<Integer> second) {
    List<Integer> both = new ArrayList<>(first);
    both.addAll(second);
    return both;
  }

  @Test
  void proposalsHaveTheShapeAndTheTotal() {
    int seen = 0;
    for (Yati shape : Yati.values()) {
      for (int lines = 3; lines <= 7; lines++) {
        for (int total = 10; total <= 90; total++) {
          for (List<Integer> proposal : YatiProposals.lines(shape, total, lines, 30)) {
            assertEquals(lines, proposal.size());
            assertEquals(total, proposal.stream().mapToInt(Integer::intValue).sum());
            assertEquals(shape, Yati.ofMatras(proposal), proposal::toString);
            assertTrue(proposal.stream().allMatch(line -> line >= 1));
            seen++;
          }
        }
      }
    }
    assertTrue(seen > 500, "proposals were made: " + seen);
  }

  /**
   * By trying every list of lines: none that only grows, only shrinks, or turns once is left out.
   */
  @ParameterizedTest
  @CsvSource({"3, 27", "4, 22", "5, 20", "6, 21"})
  void noStrictShapeIsLeftOut(int lines, int most) {
    int seen = 0;
    for (int total = lines; total <= most; total++) {
      Map<Yati, Set<List<Integer>>> strict = new EnumMap<>(Yati.class);
      everyList(lines, total, new ArrayList<>(), strict);
      for (Yati shape : List.of(Yati.GOPUCCHA, Yati.SROTOVAHA, Yati.MRIDANGA, Yati.DAMARU)) {
        List<List<Integer>> proposed = YatiProposals.lines(shape, total, lines, 100_000);
        Set<List<Integer>> left = new HashSet<>(strict.getOrDefault(shape, Set.of()));
        proposed.forEach(left::remove);
        assertEquals(Set.of(), left, shape + " of " + total);
        assertEquals(new HashSet<>(proposed).size(), proposed.size(), "none twice");
        List<Boolean> equal =
            proposed.stream()
                .map(list -> YatiSteps.of(list.stream().map(Ratio::of).toList()).areEqual())
                .toList();
        boolean oneWay = shape == Yati.GOPUCCHA || shape == Yati.SROTOVAHA;
        assertTrue(
            !oneWay || !equal.contains(false) || equal.lastIndexOf(true) < equal.indexOf(false));
        for (List<Integer> list : proposed) {
          assertEquals(shape, Yati.ofMatras(list));
          assertEquals(total, list.stream().mapToInt(Integer::intValue).sum());
        }
        seen += proposed.size();
      }
    }
    assertTrue(seen > 100, "proposals: " + seen);
  }

  /** By the words of the definition: only shorter, only longer, longer then shorter, and back. */
  private static Optional<Yati> shape(List<Integer> lines) {
    String way =
        IntStream.range(1, lines.size())
            .mapToObj(i -> Integer.toString(Integer.signum(lines.get(i) - lines.get(i - 1))))
            .map(sign -> sign.equals("1") ? "+" : sign.substring(0, 1))
            .collect(Collectors.joining());
    Map<String, Yati> shapes =
        Map.of(
            "-+", Yati.GOPUCCHA,
            "\\++", Yati.SROTOVAHA,
            "\\++-+", Yati.MRIDANGA,
            "-+\\++", Yati.DAMARU);
    return shapes.entrySet().stream()
        .filter(shape -> way.matches(shape.getKey()))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  private static void everyList(
      int lines, int left, List<Integer> begun, Map<Yati, Set<List<Integer>>> strict) {
    if (lines == 0) {
      if (left == 0) {
        shape(begun)
            .ifPresent(
                shape ->
                    strict.computeIfAbsent(shape, key -> new HashSet<>()).add(List.copyOf(begun)));
      }
      return;
    }
    for (int line = 1; line <= left - lines + 1; line++) {
      begun.add(line);
      everyList(lines - 1, left - line, begun, strict);
      begun.remove(begun.size() - 1);
    }
  }

  /** 70 = 28 + 21 + 14 + 7 (yogeswaran.in, lesson 000013-2). */
  @Test
  void proposesThePublishedCowsTail() {
    assertTrue(YatiProposals.lines(Yati.GOPUCCHA, 70, 4, 100).contains(List.of(28, 21, 14, 7)));
    assertTrue(YatiProposals.lines(Yati.SROTOVAHA, 51, 3, 100).contains(List.of(14, 17, 20)));
    assertTrue(YatiProposals.lines(Yati.MRIDANGA, 23, 5, 100).contains(List.of(3, 5, 7, 5, 3)));
    assertTrue(YatiProposals.lines(Yati.DAMARU, 27, 5, 100).contains(List.of(7, 5, 3, 5, 7)));
    assertEquals(List.of(List.of(8, 8, 8, 8)), YatiProposals.lines(Yati.SAMA, 32, 4, 100));
    assertFalse(YatiProposals.lines(Yati.VISHAMA, 40, 5, 100).isEmpty());
    assertThrows(IllegalArgumentException.class, () -> YatiProposals.lines(Yati.SAMA, 32, 2, 100));
  }
}
