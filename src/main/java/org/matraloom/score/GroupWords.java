package org.matraloom.score;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The words that a group is spoken with: its sollus, and how many matras each of them takes.
 *
 * @param sollus what is said, at least one
 * @param matras how long each is, at least 1; as many as there are sollus
 */
public record GroupWords(List<Sollu> sollus, List<Integer> matras) {

  private static final int COMMA = 1;
  private static final int SEMICOLON = 2;

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if they are not of one length
   */
  public GroupWords {
    sollus = List.copyOf(sollus);
    matras = List.copyOf(matras);
    if (sollus.size() != matras.size()) {
      throw new IllegalArgumentException(
          sollus.size() + " sollus need as many lengths, given " + matras.size());
    }
  }

  /**
   * Words without karvai.
   *
   * @param sollus one a matra
   * @return the words
   */
  public static GroupWords plain(List<Sollu> sollus) {
    return new GroupWords(sollus, Collections.nCopies(sollus.size(), 1));
  }

  /**
   * How long they are together.
   *
   * @return matras
   */
  public int size() {
    return matras.stream().mapToInt(Integer::intValue).sum();
  }

  /**
   * Whether every sollu takes one matra.
   *
   * @return true for words without karvai
   */
  public boolean isPlain() {
    return size() == sollus.size();
  }

  /**
   * How they are written in a score or a list.
   *
   * @return for example "ta , di , gi na tom"
   */
  public String written() {
    List<String> signs = new ArrayList<>();
    for (int index = 0; index < sollus.size(); index++) {
      signs.add(sollus.get(index).spelling());
      int karvai = matras.get(index) - 1;
      signs.addAll(Collections.nCopies(karvai / SEMICOLON, ";"));
      signs.addAll(Collections.nCopies(karvai % SEMICOLON / COMMA, ","));
    }
    return String.join(" ", signs);
  }
}
