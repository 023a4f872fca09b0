package org.matraloom.app.practise;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.UserError;

/** A command that makes a drill: it writes it, or hands it on to be played. */
interface DrillMaker extends Callable<Integer> {

  /**
   * Makes the drill.
   *
   * @return the drill
   * @throws IOException if a file cannot be read
   * @throws UserError if it cannot be made so
   */
  MadeDrill drill() throws IOException;

  /**
   * Where the drill goes.
   *
   * @return the files that are named
   */
  DrillOutput output();

  @Override
  default Integer call() throws IOException {
    return output().write(drill());
  }
}
