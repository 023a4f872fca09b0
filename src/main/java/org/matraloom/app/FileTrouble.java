package org.matraloom.app;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** Says in one sentence what is wrong with a file or folder. */
final class FileTrouble {

  private FileTrouble() {}

  static String explain(FileSystemException problem) {
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
