package org.matraloom.app.hear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.app.cli.ShellWord;
import org.matraloom.verdict.PracticeAdvice;

/**
 * A drill as it is typed.
 *
 * @param score the score as it was given
 * @param lexicon the user's list of sollus as it was given
 * @param tala the tala of the score, for drills of plain words
 */
record TypedDrill(String score, Optional<String> lexicon, String tala)
    implements PracticeAdvice.Cases<List<String>> {

  /** The whole command, words quoted where a shell needs it. */
  String of(PracticeAdvice practice) {
    List<String> words = new ArrayList<>(List.of("matraloom"));
    words.addAll(words(practice));
    return String.join(" ", words.stream().map(ShellWord::quoted).toList());
  }

  /** The words of the command after the name of the program. */
  List<String> words(PracticeAdvice practice) {
    return practice.told(this);
  }

  @Override
  public List<String> join(PracticeAdvice.Join join) {
    return ofScore(
        "join", "--join", "" + join.number(), "--tempo", "" + join.beatsPerMinute(), "-o");
  }

  @Override
  public List<String> switching(PracticeAdvice.Switch words) {
    return List.of(
        "drill",
        "switch",
        "" + words.from(),
        "" + words.to(),
        "--tala",
        tala,
        "--tempo",
        "" + words.beatsPerMinute(),
        "-o",
        "switch.wav");
  }

  @Override
  public List<String> loop(PracticeAdvice.Loop loop) {
    return ofScore("loop", "--phrase", loop.phrase(), "--tempo", "" + loop.beatsPerMinute(), "-o");
  }

  @Override
  public List<String> clicks(PracticeAdvice.Clicks clicks) {
    return ofScore(
        "clicks",
        "--heard",
        "" + clicks.heard(),
        "--silent",
        "" + clicks.silent(),
        "--tempo",
        "" + clicks.beatsPerMinute(),
        "-o");
  }

  @Override
  public List<String> ladder(PracticeAdvice.Ladder ladder) {
    return ofScore(
        "ladder",
        "--from",
        "" + ladder.from(),
        "--by",
        "" + ladder.by(),
        "--to",
        "" + ladder.to(),
        "-o");
  }

  /** The file it writes is called as the drill is. */
  private List<String> ofScore(String drill, String... options) {
    List<String> words = new ArrayList<>(List.of("drill", drill, score));
    lexicon.ifPresent(list -> words.addAll(List.of("--lexicon", list)));
    words.addAll(List.of(options));
    words.add(drill + ".wav");
    return words;
  }
}
