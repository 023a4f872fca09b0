package org.matraloom.app.cli;

import java.util.Optional;
import org.matraloom.sound.Sruti;
import picocli.CommandLine.Option;

/** Whether a drone lies under a track, and on which tonic. */
public final class DroneOptions {

  @Option(
      names = "--drone",
      paramLabel = "TONIC",
      description = "A sruti drone: a note such as C# or G3-10 (cents), or a frequency in Hz.")
  private String tonic;

  /**
   * The tonic of the drone.
   *
   * @return the tonic; empty if there is no drone
   * @throws UserError if it is no tonic
   */
  public Optional<Sruti> sruti() {
    try {
      return Optional.ofNullable(tonic).map(Sruti::parse);
    } catch (IllegalArgumentException wrong) {
      throw new UserError(wrong.getMessage());
    }
  }
}
