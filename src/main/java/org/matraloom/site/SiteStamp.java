package org.matraloom.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;

/**
 * Stands for all that goes into the files of a piece, so that only what changed is made again.
 *
 * @param digest of everything: the program, the options, the texts
 * @param files the files that were made, by name
 */
public record SiteStamp(String digest, List<String> files) {

  /** The file of a stamp in the folder of its piece. */
  public static final String FILE_NAME = "made.txt";

  /** Copies the list. */
  public SiteStamp {
    files = List.copyOf(files);
  }

  /**
   * The stamp of some texts.
   *
   * @param texts everything that goes in
   * @param files the files that come out
   * @return the stamp
   */
  public static SiteStamp of(List<String> texts, List<String> files) {
    StringBuilder all = new StringBuilder(SiteHtml.resource("/org/matraloom/version.txt"));
    texts.forEach(text -> all.append(text.length()).append(':').append(text));
    return new SiteStamp(HexFormat.of().formatHex(SiteHtml.sha256(all.toString())), files);
  }

  /**
   * Whether a folder holds what this stands for.
   *
   * @param folder a folder of a piece
   * @return true if the same stamp and every file are there
   */
  public boolean isIn(Path folder) {
    try {
      return Files.readString(folder.resolve(FILE_NAME)).equals(text())
          && files.stream().allMatch(file -> Files.exists(folder.resolve(file)));
    } catch (IOException notThere) {
      return false;
    }
  }

  /**
   * The stamp as it is written.
   *
   * @return lines: the digest, then the files
   */
  public String text() {
    return digest + "\n" + String.join("\n", files) + "\n";
  }
}
