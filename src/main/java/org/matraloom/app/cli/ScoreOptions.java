package org.matraloom.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.matraloom.notation.Problem;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The score of a command and the tempo it is taken at. */
public final class ScoreOptions {

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Parameters(paramLabel = "FILE", description = "The score, a .loom file.")
  private Path file;

  @Option(
      names = "--tempo",
      paramLabel = "BPM",
      description = "Beats a minute, in place of the score's own.")
  private ExactNumber tempo;

  @Option(
      names = "--slow",
      paramLabel = "PERCENT",
      description = "A part of the tempo, such as 75%%.")
  private ExactNumber slow;

  @Mixin private ReciterOption reciter;

  @Mixin private LexiconOptions lexicon;

  /** 0.75 is nearly always meant as 75 %, and would be a tempo that nobody can say. */
  private static void refuseShare(ExactNumber slow) {
    if (!slow.isPercent()
        && slow.value().compareTo(Ratio.of(2)) <= 0
        && slow.value().signum() > 0) {
      String meant = slow.value().times(100).toMixed();
      throw new UserError(
          "--slow is a percentage; for "
              + slow.value().toMixed()
              + " of the tempo write "
              + meant
              + "%");
    }
  }

  /**
   * The lexicon that the score is read with.
   *
   * @return the lexicon
   * @throws UserError if the user's list cannot be read or has faulty lines
   */
  public Lexicon lexicon() {
    return lexicon.lexicon();
  }

  /**
   * The score as it was given.
   *
   * @return its file
   */
  public Path file() {
    return file;
  }

  /**
   * Reads the score, prints its problems, and takes it at the tempo that was asked for.
   *
   * @return the piece at its tempo, for one reciter
   * @throws UserError if the score has errors, would be written over, or the tempo is out of range,
   *     or if it has two reciters and none was chosen
   */
  public Composition read() {
    return reciter.one(readAll());
  }

  /**
   * The same for a command that can hear or show two reciters at once.
   *
   * @return the piece at its tempo, for two reciters if it has two and none was chosen
   * @throws UserError if the score has errors, would be written over, or the tempo is out of range
   */
  public Composition readAll() {
    refuseToWriteOver();
    Composition composition = read(file, lexicon(), command.commandLine().getErr());
    return reciter.asked(composition.at(tempoOf(composition)));
  }

  /**
   * Reads a score and prints its problems.
   *
   * @param file a score
   * @param lexicon the sollus to know
   * @param err where problems go
   * @return the piece at its own tempo
   * @throws UserError if the score has errors
   */
  public static Composition read(Path file, Lexicon lexicon, PrintWriter err) {
    Reading reading = ScoreReader.read(file, lexicon);
    for (Problem problem : reading.problems()) {
      err.println(problem.format());
    }
    if (reading.composition().isEmpty()) {
      throw UserError.alreadyTold();
    }
    return reading.composition().get();
  }

  /** No option of a command that reads a score may name a file to write that is read. */
  private void refuseToWriteOver() {
    for (OptionSpec option : command.options()) {
      if (!(option.getValue() instanceof Path path)) {
        continue;
      }
      if (isSame(path, file)) {
        throw new UserError(path + " is the score itself; give the new file another name");
      }
      boolean isWritten = !option.longestName().equals(LexiconOptions.NAME);
      if (isWritten && lexicon.file().filter(list -> isSame(path, list)).isPresent()) {
        throw new UserError(path + " is the list of sollus; give the new file another name");
      }
    }
  }

  private static boolean isSame(Path path, Path other) {
    try {
      return Files.isSameFile(path, other);
    } catch (IOException notThere) {
      return false;
    }
  }

  private Tempo tempoOf(Composition composition) {
    Ratio bpm = tempo == null ? composition.tempo().beatsPerMinute() : tempo.value();
    if (slow != null) {
      refuseShare(slow);
      bpm = bpm.times(slow.isPercent() ? slow.value() : slow.value().dividedBy(100));
    }
    if (!Tempo.inRange(bpm)) {
      throw new UserError(
          "the tempo would be "
              + bpm.toMixed()
              + " beats a minute; allowed are "
              + Tempo.SLOWEST
              + " to "
              + Tempo.FASTEST);
    }
    return new Tempo(bpm);
  }
}
