package org.matraloom.pack;

/** What lies in a set beside its tracks. */
public enum PackPaper {
  /** The written page. */
  SHEET("sheet.pdf", "the sheet"),
  /** The page for a phone. */
  PHONE("phone.html", "the page for a phone"),
  /** The breath plan. */
  BREATHS("breaths.txt", "where to breathe");

  private final String fileName;
  private final String words;

  PackPaper(String fileName, String words) {
    this.fileName = fileName;
    this.words = words;
  }

  /**
   * Its file.
   *
   * @return a name in the folder of the set
   */
  public String fileName() {
    return fileName;
  }

  /**
   * What it is.
   *
   * @return a few words
   */
  public String words() {
    return words;
  }
}
