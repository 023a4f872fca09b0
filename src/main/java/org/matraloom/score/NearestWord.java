package org.matraloom.score;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the run of known sollus that takes the fewest edits to become a given word.
 *
 * <p>The spellings stand in a letter tree, and so do the usual words for groups, which are likelier
 * than a chance run of sollus. A state is a place in the word and a node of the tree; reaching the
 * end of a spelling leads back to the root, so that the cheapest way through all states is the
 * cheapest run.
 */
final class NearestWord {

  private static final int LONGEST_WORD = 40;
  private static final int SHORT_WORD = 5;

  private static final int REPLACE = 10_000;
  private static final int INSERT_OR_DROP = 11_000;
  private static final int WORD = 20;
  private static final int SOLLU = 21;
  private static final int RARE_SOLLU = 50;
  private static final int VARIANT = 20;
  private static final int FAR = Integer.MAX_VALUE;

  private static final class Node {
    private final char letter;
    private final List<Node> children = new ArrayList<>();
    private final int index;
    private String spelling = "";
    private int price;

    Node(char letter, int index) {
      this.letter = letter;
      this.index = index;
    }
  }

  private final List<Node> nodes = new ArrayList<>();

  NearestWord(LexiconText contents) {
    nodes.add(new Node(' ', 0));
    Set<String> usual = new HashSet<>();
    for (int size = 1; size <= LexiconText.LARGEST_OWN_GROUP; size++) {
      for (List<String> words : contents.words(size)) {
        usual.addAll(words);
        plant(Spelling.normal(String.join("", words)), WORD);
      }
    }
    for (SolluSound sound : contents.sounds()) {
      for (String spelling : sound.spellings()) {
        int price =
            SOLLU
                + (usual.contains(sound.name()) ? 0 : RARE_SOLLU)
                + (spelling.equals(sound.name()) ? 0 : VARIANT);
        plant(spelling, price);
      }
    }
  }

  /** The nearest run of spellings, or nothing if every one is too far away. */
  Optional<String> to(String word) {
    if (word.length() < 2 || word.length() > LONGEST_WORD) {
      return Optional.empty();
    }
    int width = nodes.size();
    int limit = (word.length() > SHORT_WORD ? 2 : 1) * INSERT_OR_DROP + REPLACE / 2;
    int[] cost = new int[(word.length() + 1) * width];
    int[] from = new int[cost.length];
    Arrays.fill(cost, FAR);
    cost[0] = 0;
    for (int at = 0; at <= word.length(); at++) {
      int row = at * width;
      while (closeRow(row, cost, from, limit)) {}
      if (at < word.length()) {
        takeLetter(word.charAt(at), row, cost, from, limit);
      }
    }
    int last = word.length() * width;
    return cost[last] == FAR ? Optional.empty() : Optional.of(spell(last, from));
  }

  /** Adds letters that the word lacks and ends sollus; true if a sollu ended more cheaply. */
  private boolean closeRow(int row, int[] cost, int[] from, int limit) {
    int before = cost[row];
    for (Node node : nodes) {
      int here = cost[row + node.index];
      if (here == FAR) {
        continue;
      }
      for (Node child : node.children) {
        relax(row + node.index, row + child.index, here + INSERT_OR_DROP, cost, from, limit);
      }
      if (!node.spelling.isEmpty()) {
        relax(row + node.index, row, here + node.price, cost, from, limit);
      }
    }
    return cost[row] < before;
  }

  private void takeLetter(char letter, int row, int[] cost, int[] from, int limit) {
    int nextRow = row + nodes.size();
    for (Node node : nodes) {
      int here = cost[row + node.index];
      if (here == FAR) {
        continue;
      }
      relax(row + node.index, nextRow + node.index, here + INSERT_OR_DROP, cost, from, limit);
      for (Node child : node.children) {
        int price = child.letter == letter ? 0 : REPLACE;
        relax(row + node.index, nextRow + child.index, here + price, cost, from, limit);
      }
    }
  }

  private static void relax(int state, int next, int price, int[] cost, int[] from, int limit) {
    if (price < cost[next] && price <= limit) {
      cost[next] = price;
      from[next] = state;
    }
  }

  private String spell(int last, int[] from) {
    int width = nodes.size();
    Deque<String> sollus = new ArrayDeque<>();
    for (int state = last; state != 0; state = from[state]) {
      boolean ended = state % width == 0 && from[state] / width == state / width;
      if (ended) {
        sollus.push(nodes.get(from[state] % width).spelling);
      }
    }
    return String.join("", sollus);
  }

  private void plant(String spelling, int price) {
    Node node = nodes.get(0);
    for (char letter : spelling.toCharArray()) {
      Node next =
          node.children.stream().filter(child -> child.letter == letter).findFirst().orElse(null);
      if (next == null) {
        next = new Node(letter, nodes.size());
        nodes.add(next);
        node.children.add(next);
      }
      node = next;
    }
    if (node.spelling.isEmpty() || price < node.price) {
      node.spelling = spelling;
      node.price = price;
    }
  }
}
