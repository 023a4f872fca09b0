package org.matraloom.app.cli;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import org.matraloom.device.DeviceException;

/** Says in one sentence why the machine could not: a file, a folder, a sound device. */
final class MachineWords {

  private MachineWords() {}

  static String of(IOException problem) {
    if (problem instanceof FileSystemException file) {
      return explain(file);
    }
    if (problem instanceof CharacterCodingException) {
      return "a file that was to be read is no text in UTF-8; save it so";
    }
    return problem instanceof DeviceException device
        ? DeviceWords.of(device)
        : problem.getMessage();
  }

  private static String explain(FileSystemException problem) {
    String file = problem.getFile();
    if (problem instanceof NoSuchFileException) {
      return file + ": there is no such file or folder";
    } else if (problem instanceof AccessDeniedException) {
      return file + ": you may not read or write here; choose another folder";
    } else if (problem instanceof NotDirectoryException) {
      return file + ": this is not a folder";
    } else if (problem instanceof FileAlreadyExistsException) {
      return file + ": a file or folder with this name is in the way";
    }
    return file + ": " + (problem.getReason() == null ? "cannot be used" : problem.getReason());
  }
}
