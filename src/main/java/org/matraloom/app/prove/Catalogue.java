package org.matraloom.app.prove;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Json;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.UserError;
import org.matraloom.repair.Repair;
import org.matraloom.score.Lexicon;

/**
 * The scores of a folder, one line each.
 *
 * @param entries in the order of their file names
 * @param lexicon the sollus that they were read with
 */
record Catalogue(List<CatalogueEntry> entries, Lexicon lexicon) {

  private static final String SUFFIX = ".loom";
  private static final String ROW = "%-21s %-15s %6s  %-11s %-9s %s";

  /** Reads every score of a folder, those in folders inside it too. */
  static Catalogue read(Path folder, CatalogueFilter filter, Lexicon lexicon) throws IOException {
    List<Path> files;
    try (Stream<Path> found = Files.walk(folder)) {
      files = found.filter(Catalogue::isScore).sorted().toList();
    }
    if (files.isEmpty()) {
      String name = folder.toString().isEmpty() ? "the folder you are in" : folder.toString();
      throw new UserError(name + " holds no score; their names end in " + SUFFIX);
    }
    List<CatalogueEntry> entries =
        files.parallelStream().map(file -> CatalogueEntry.read(file, lexicon)).toList();
    return new Catalogue(entries.stream().filter(filter::matches).toList(), lexicon);
  }

  private static boolean isScore(Path file) {
    return file.getFileName().toString().endsWith(SUFFIX) && Files.isRegularFile(file);
  }

  /** Prints a line for each score; exit code 1 if one of them fails its check or is not read. */
  int print(PrintWriter out, boolean withRepair, boolean json) throws IOException {
    if (json) {
      printJson(out, withRepair);
    } else {
      out.println(String.format(ROW, "score", "tala", "matras", "rounds", "yati", "landing"));
      for (CatalogueEntry entry : entries) {
        String repair = withRepair ? repair(entry) : "";
        String row =
            String.format(
                ROW,
                entry.file().getFileName(),
                entry.tala(),
                entry.matras(),
                entry.rounds(),
                entry.yati().word(),
                entry.verdict() + (repair.isEmpty() ? "" : "; " + repair));
        out.println(Paragraph.hanging(4, row));
      }
      out.println(summary());
    }
    return entries.stream().allMatch(CatalogueEntry::passes)
        ? ExitCode.DONE
        : ExitCode.CHECK_FAILED;
  }

  private String summary() {
    long landing = entries.stream().filter(Catalogue::lands).count();
    long broken = entries.stream().filter(entry -> entry.landing().isEmpty()).count();
    return entries.size()
        + (entries.size() == 1 ? " score: " : " scores: ")
        + landing
        + " land, "
        + (entries.size() - landing - broken)
        + " miss, "
        + broken
        + " cannot be read.";
  }

  private static boolean lands(CatalogueEntry entry) {
    return entry.landing().filter(known -> known.lands()).isPresent();
  }

  /** The smallest change that makes a score land. */
  private String repair(CatalogueEntry entry) {
    return entry
        .landing()
        .map(known -> known.performance().composition())
        .flatMap(piece -> RepairList.of(piece, lexicon).stream().findFirst())
        .map(Repair::words)
        .orElse("");
  }

  private void printJson(PrintWriter out, boolean withRepair) throws IOException {
    try (Json json = Json.to(out)) {
      JsonGenerator generator = json.generator();
      generator.writeStartArray();
      for (CatalogueEntry entry : entries) {
        generator.writeStartObject();
        generator.writeStringField("score", entry.file().toString());
        generator.writeStringField("title", entry.title());
        generator.writeStringField("tala", entry.tala());
        generator.writeStringField("matras", entry.matras());
        generator.writeStringField("rounds", entry.rounds());
        generator.writeStringField("yati", entry.yati().word());
        generator.writeBooleanField("lands", lands(entry));
        generator.writeStringField("landing", entry.verdict());
        if (withRepair) {
          generator.writeStringField("repair", repair(entry));
        }
        generator.writeEndObject();
      }
      generator.writeEndArray();
    }
  }
}
