package org.matraloom.site;

import java.util.List;

/**
 * What the list of a class says of a piece.
 *
 * @param level how hard it is, in the teacher's words; empty if nothing is said
 * @param tags words by which it is found
 */
public record ClassEntry(String level, List<String> tags) {

  /** A piece of which nothing is said. */
  public static final ClassEntry NONE = new ClassEntry("", List.of());

  /** Copies the list. */
  public ClassEntry {
    tags = List.copyOf(tags);
  }
}
