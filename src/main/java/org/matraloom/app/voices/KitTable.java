package org.matraloom.app.voices;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.mouth.Kit;
import org.matraloom.mouth.KitSample;

/** What is told of a voice. */
final class KitTable {

  private final Kit kit;

  KitTable(Kit kit) {
    this.kit = kit;
  }

  /** What is told of a voice that was just made. */
  void printMade(List<String> missing, ShelfOptions shelf, PrintWriter out) {
    String name = kit.head().name();
    out.println(shelf.shelf().folderOf(name));
    printSum(out);
    printDoubts(out);
    if (!missing.isEmpty()) {
      out.println(Paragraph.folded("Not found: " + String.join("; ", missing) + "."));
    }
    out.println("Hear it: matraloom voice hear " + name);
    out.println("Use it: --voice " + shelf.typed(name));
  }

  /** How much there is, and whose it is. */
  void printSum(PrintWriter out) {
    long doubted = kit.samples().stream().filter(each -> !each.doubts().isEmpty()).count();
    out.printf(
        Locale.ROOT,
        "%s: %d samples of %d sollus, %d doubtful, pitch about %.0f Hz%n",
        kit.head().name(),
        kit.samples().size(),
        kit.sollus().size(),
        doubted,
        kit.pitchHz());
    if (!kit.head().owner().isEmpty()) {
      out.println(Paragraph.folded("Spoken by " + kit.head().owner() + "."));
    }
    if (!kit.head().terms().isEmpty()) {
      out.println(Paragraph.folded("Terms: " + kit.head().terms()));
    }
  }

  /** A line for each sample that is doubted. */
  void printDoubts(PrintWriter out) {
    for (KitSample sample : kit.samples()) {
      if (!sample.doubts().isEmpty()) {
        String what = "Doubtful: " + sample.file() + ": " + String.join(", ", sample.doubts());
        out.println(Paragraph.folded(what + "."));
      }
    }
  }

  /** A line for each sollu. */
  void printSollus(PrintWriter out) {
    out.println("sollu   samples  doubtful  vowel ms  pitch Hz  after");
    for (String sollu : kit.sollus()) {
      List<KitSample> all = kit.of(sollu);
      double vowelMs =
          all.stream()
              .mapToInt(each -> each.places().steadyEnd() - each.places().vowel())
              .average()
              .orElse(0);
      String after =
          all.stream().map(each -> each.after().orElse("-")).distinct().toList().toString();
      out.printf(
          Locale.ROOT,
          "%-8s%7d%10d%10.0f%10.0f  %s%n",
          sollu,
          all.size(),
          all.stream().filter(each -> !each.doubts().isEmpty()).count(),
          vowelMs * 1000 / Kit.RATE,
          all.stream().mapToDouble(KitSample::pitchHz).average().orElse(0),
          shortened(after.substring(1, after.length() - 1)));
    }
  }

  private static String shortened(String list) {
    return list.length() > 34 ? list.substring(0, 31) + "..." : list;
  }
}
