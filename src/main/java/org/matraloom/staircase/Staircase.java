package org.matraloom.staircase;

import java.util.Optional;

/**
 * Decides after each pass what to play next: two clean passes in a row lead up, one miss leads
 * down, and each turn halves the steps. Such a rule settles where a pass is clean with probability
 * 0.707, whose square is one half (H. Levitt, J. Acoust. Soc. Am. 49 (1971) 467-477, transformed
 * up-down methods).
 *
 * <p>Tempo comes first. At the top, which is the goal or the limit of the mouth, help is taken away
 * one kind at a time, and given back one at a time on a miss. A fault at one place in two passes
 * running is looped until it is clean twice in a row; the staircase then goes on where it stood.
 */
public final class Staircase {

  private static final int CLEAN_IN_A_ROW = 2;
  private static final int FAULTS_IN_A_ROW = 2;

  private final StairSettings settings;
  private final Turns turns;

  private int tempo;
  private Help help = Help.ALL;
  private int cleanInARow;
  private Optional<Spot> fault = Optional.empty();
  private int faultsInARow;
  private Optional<Spot> looped = Optional.empty();

  /**
   * Begins.
   *
   * @param settings between what it moves
   */
  public Staircase(StairSettings settings) {
    this.settings = settings;
    this.turns = new Turns(settings.firstStep(), settings.leastStep());
    this.tempo = settings.start();
  }

  /**
   * The first pass.
   *
   * @return what to play
   */
  public StairStep first() {
    return step(StairStep.Move.SAME, "Begin at " + tempo + ", " + help.words() + ".");
  }

  /**
   * The pass after one that was heard.
   *
   * @param heard how the last one went
   * @return what to play
   */
  public StairStep after(PassHeard heard) {
    cleanInARow = heard.clean() ? cleanInARow + 1 : 0;
    if (looped.isPresent()) {
      return inLoop(looped.get(), heard.clean());
    }
    return heard.clean() ? afterClean() : afterMiss(heard.fault());
  }

  /**
   * The tempo at which about seven passes of ten are clean, as far as it can be told.
   *
   * @return the mean of the turns after the first; before there are two of these, the tempo now
   */
  public double settledTempo() {
    return turns.mean().orElse(tempo);
  }

  private StairStep inLoop(Spot place, boolean isClean) {
    if (isClean && cleanInARow >= CLEAN_IN_A_ROW) {
      looped = Optional.empty();
      forget();
      return step(
          StairStep.Move.UP,
          capital(place.words()) + " was clean twice in a row: back to the whole.");
    }
    if (isClean) {
      return step(StairStep.Move.SAME, "Clean once in the loop: once more.");
    }
    int slower = Math.max(settings.slowest(), tempo - turns.size());
    boolean isSlower = slower < tempo;
    tempo = slower;
    return step(
        isSlower ? StairStep.Move.DOWN : StairStep.Move.SAME,
        "Missed in the loop: "
            + (isSlower ? "slower, at " + tempo : "again, as nothing slower is asked for")
            + ".");
  }

  private StairStep afterClean() {
    fault = Optional.empty();
    faultsInARow = 0;
    if (cleanInARow < CLEAN_IN_A_ROW) {
      return step(StairStep.Move.SAME, "Clean once at " + tempo + ": once more, and it goes on.");
    }
    cleanInARow = 0;
    if (tempo < settings.top()) {
      turns.moved(tempo, true);
      tempo = Math.min(settings.top(), tempo + turns.size());
      String why = tempo == settings.mouthLimit() ? ", the limit of the mouth" : "";
      return step(StairStep.Move.UP, "Clean twice in a row: up to " + tempo + why + ".");
    }
    if (!help.isLeast()) {
      help = help.less();
      return step(StairStep.Move.UP, "Clean twice at " + tempo + ": now " + help.words() + ".");
    }
    String top = settings.goal() <= settings.mouthLimit() ? "the goal" : "the limit of the mouth";
    return new StairStep(
        tempo,
        help,
        looped,
        StairStep.Move.UP,
        "Clean twice at " + tempo + ", " + top + ", without help: done.",
        true);
  }

  private StairStep afterMiss(Optional<Spot> where) {
    faultsInARow = where.isPresent() && where.equals(fault) ? faultsInARow + 1 : 1;
    fault = where;
    String easier = easier();
    if (where.isPresent() && faultsInARow >= FAULTS_IN_A_ROW) {
      looped = where;
      return step(
          StairStep.Move.DOWN,
          "A fault at "
              + where.get().words()
              + " twice running: that place alone, at "
              + tempo
              + ", until it is clean twice.");
    }
    StairStep.Move move = easier.isEmpty() ? StairStep.Move.SAME : StairStep.Move.DOWN;
    return step(
        move,
        easier.isEmpty() ? "Missed: again, as nothing slower is asked for." : "Missed: " + easier);
  }

  /** Makes the next pass easier; in words, or empty if nothing is easier. */
  private String easier() {
    if (help != Help.ALL) {
      help = help.more();
      return "some help again, " + help.words() + ".";
    }
    if (tempo == settings.slowest()) {
      return "";
    }
    turns.moved(tempo, false);
    tempo = Math.max(settings.slowest(), tempo - turns.size());
    return "down to " + tempo + ".";
  }

  private void forget() {
    cleanInARow = 0;
    faultsInARow = 0;
    fault = Optional.empty();
  }

  private StairStep step(StairStep.Move move, String reason) {
    return new StairStep(tempo, help, looped, move, reason, false);
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
