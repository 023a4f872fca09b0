package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.matraloom.madetake.Speakers;
import org.matraloom.madetake.TakeCase;
import org.matraloom.madetake.TakeCases;

/**
 * Takes made in our own voices are measured, a few of each kind; {@code scripts/crosscheck-takes}
 * does it with all of them and with voices that are not ours.
 */
class MadeTakesTest {

  @Test
  void whatIsWrongWithATakeIsFound() {
    Set<String> kinds = new HashSet<>();
    List<TakeCase> cases =
        TakeCases.with(List.of(), 1).stream()
            .filter(made -> made.sample().equals(sample(made.group())))
            .filter(made -> kinds.add(made.group() + "" + made.room() + made.flaws().khanda))
            .toList();
    assertTrue(cases.size() >= 12, "takes of all kinds: " + kinds);
    Speakers ours = new Speakers(Path.of("."));
    TakeTally tally =
        new TakeTally(cases.parallelStream().map(made -> TakeKit.judge(made, ours)).toList());
    List<String> lines = tally.lines();
    assertTrue(tally.isGood(), String.join("\n", lines));
    assertEquals(12, lines.stream().filter(line -> line.startsWith("ok - ")).count());
  }

  /** The shortest sample that will do: with a round at five, or long enough to tell a drift. */
  private static String sample(TakeCase.Group group) {
    boolean any = !group.isExact() && group != TakeCase.Group.HABIT;
    return any ? "crooked-ladder" : "culvert";
  }
}
