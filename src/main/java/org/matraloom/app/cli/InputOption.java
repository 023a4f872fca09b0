package org.matraloom.app.cli;

import java.util.Optional;
import picocli.CommandLine.Option;

/** Where to record. */
public final class InputOption {

  @Option(
      names = "--input",
      paramLabel = "NAME",
      description = "Where to record: the number of a device in --devices, or a part of its name.")
  private String input;

  /**
   * The device that was asked for.
   *
   * @return its number or a part of its name; empty for the usual one
   */
  public Optional<String> input() {
    return Optional.ofNullable(input);
  }
}
