package org.matraloom.app.voices;

import java.io.IOException;
import java.nio.file.Path;
import org.matraloom.app.cli.UserError;
import org.matraloom.device.UserFolders;
import org.matraloom.mouth.Kit;
import org.matraloom.mouth.KitException;
import org.matraloom.mouth.KitHead;
import org.matraloom.mouth.KitShelf;
import picocli.CommandLine.Option;

/** Where voices are kept. */
final class ShelfOptions {

  @Option(
      names = "--shelf",
      paramLabel = "FOLDER",
      description = "Where voices are kept (in your own data folder if not given).")
  private Path folder;

  KitShelf shelf() {
    return new KitShelf(folder());
  }

  private Path folder() {
    return folder == null ? UserFolders.voices() : folder;
  }

  /** Where the rows of a voice are kept that is recorded here. */
  Path rows(String name) {
    return folder().resolve(name + ".rows");
  }

  /** What is typed after --voice to speak with a voice of this shelf. */
  String typed(String name) {
    return folder == null ? name : folder.resolve(name).toString();
  }

  /** The voice of a name that is here. */
  Kit open(String name) throws IOException {
    requireName(name);
    try {
      return shelf().open(name);
    } catch (KitException wrong) {
      throw new UserError(wrong.getMessage());
    }
  }

  static void requireName(String name) {
    try {
      KitHead.requireName(name);
    } catch (IllegalArgumentException refused) {
      throw new UserError(refused.getMessage());
    }
  }
}
