package org.matraloom.app.open;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.matraloom.app.cli.UserError;

/** The pieces that come with the program. */
public final class Samples {

  /** Their names, as they lie in the jar. */
  public static final List<String> NAMES =
      List.of(
          "crooked-ladder.loom",
          "culvert.loom",
          "gutter-song.loom",
          "half-step-heron.loom",
          "lantern-ferry.loom",
          "last-drop.loom",
          "leaking-boat.loom",
          "monsoon-ledger.loom",
          "reed-bed.loom",
          "slow-water.loom",
          "sluice-gate.loom",
          "tin-roof.loom",
          "weir-steps.loom");

  private Samples() {}

  /**
   * One of them.
   *
   * @param name one of {@link #NAMES}
   * @return its text
   * @throws IOException if the program's own file cannot be read
   * @throws UserError if there is no such sample
   */
  public static String text(String name) throws IOException {
    if (!NAMES.contains(name)) {
      throw new UserError("there is no sample " + name);
    }
    try (InputStream in = Samples.class.getResourceAsStream("samples/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
