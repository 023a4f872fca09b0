package org.matraloom.script;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.score.SolluSound;

/**
 * Writes sollus in a script, one syllable at a time.
 *
 * <p>The sound decides, not the spelling, so tha and ta come out alike; two things depend on the
 * neighbours. A nasal that closes a syllable is written in the class of the consonant after it, and
 * a doubled first consonant, as in takkiṭṭa, stays doubled after a vowel. A sollu that the lexicon
 * does not know keeps its roman spelling.
 */
public final class SolluWriting {

  private static final Map<String, String> NASAL_BEFORE =
      Map.ofEntries(
          Map.entry("k", "ng"),
          Map.entry("g", "ng"),
          Map.entry("t", "n"),
          Map.entry("th", "n"),
          Map.entry("d", "n"),
          Map.entry("dh", "n"),
          Map.entry("T", "N"),
          Map.entry("D", "N"),
          Map.entry("p", "m"),
          Map.entry("b", "m"));

  private final Script script;
  private final Lexicon lexicon;
  private final Optional<ScriptLetters> letters;
  private final Optional<Function<Sollu, String>> names;

  /**
   * Prepares a writing.
   *
   * @param script the script
   * @param lexicon knows how each sollu sounds
   */
  public SolluWriting(Script script, Lexicon lexicon) {
    this(script, lexicon, Optional.empty());
  }

  private SolluWriting(Script script, Lexicon lexicon, Optional<Function<Sollu, String>> names) {
    this.script = script;
    this.lexicon = lexicon;
    this.names = names;
    this.letters =
        script == Script.LATIN ? Optional.empty() : Optional.of(ScriptLetters.of(script));
  }

  /**
   * A writing in which something else stands for each sollu, such as the strokes of a drum.
   *
   * @param lexicon knows how each sollu sounds
   * @param names what stands for a sollu
   * @return the writing, in Roman letters
   */
  public static SolluWriting named(Lexicon lexicon, Function<Sollu, String> names) {
    return new SolluWriting(Script.LATIN, lexicon, Optional.of(names));
  }

  /**
   * Whether sollus are written as the user spells them.
   *
   * @return false for another script, or where something else stands for them
   */
  public boolean isAsSpelt() {
    return script == Script.LATIN && names.isEmpty();
  }

  /**
   * The script that is written.
   *
   * @return the script
   */
  public Script script() {
    return script;
  }

  /**
   * Writes one sollu.
   *
   * @param before the sollu said right before it, with nothing between
   * @param sollu what to write
   * @param after the sollu said right after it, with nothing between
   * @return the sollu in the script
   */
  public String write(Optional<Sollu> before, Sollu sollu, Optional<Sollu> after) {
    if (names.isPresent()) {
      return names.get().apply(sollu);
    }
    Optional<SolluSound> sound = lexicon.sound(sollu);
    if (letters.isEmpty() || sound.isEmpty()) {
      return sollu.spelling();
    }
    List<String> phones = sound.get().phones();
    boolean doubled =
        isDoubled(sollu) && before.flatMap(lexicon::sound).filter(this::open).isPresent();
    return syllable(
        letters.get(), phones, sound.get().vowelIndex(), doubled, after.flatMap(this::onset));
  }

  /**
   * Writes one sollu without neighbours.
   *
   * @param sollu what to write
   * @return the sollu in the script
   */
  public String alone(Sollu sollu) {
    return write(Optional.empty(), sollu, Optional.empty());
  }

  /**
   * Writes sollus that are said as one word.
   *
   * @param sollus in order
   * @return the word in the script
   */
  public String word(List<Sollu> sollus) {
    StringBuilder word = new StringBuilder();
    for (int index = 0; index < sollus.size(); index++) {
      Optional<Sollu> before = index == 0 ? Optional.empty() : Optional.of(sollus.get(index - 1));
      Optional<Sollu> after =
          index + 1 == sollus.size() ? Optional.empty() : Optional.of(sollus.get(index + 1));
      word.append(write(before, sollus.get(index), after));
    }
    return word.toString();
  }

  private static String syllable(
      ScriptLetters letters,
      List<String> phones,
      int vowelIndex,
      boolean doubled,
      Optional<String> next) {
    StringBuilder text = new StringBuilder();
    String vowel = phones.get(vowelIndex);
    if (vowelIndex == 0) {
      text.append(letters.vowels().get(vowel));
    } else {
      if (doubled) {
        text.append(letters.consonants().get(withoutBreath(phones.get(0))));
        text.append(letters.killer());
      }
      for (int index = 0; index < vowelIndex; index++) {
        text.append(letters.consonants().get(phones.get(index)));
        text.append(index + 1 < vowelIndex ? letters.killer() : "");
      }
      text.append(letters.signs().get(vowel));
    }
    for (int index = vowelIndex + 1; index < phones.size(); index++) {
      boolean last = index == phones.size() - 1;
      text.append(closing(letters, phones.get(index), last ? next : Optional.empty()));
    }
    return text.toString();
  }

  /** A doubled aspirate is written with its plain consonant first. */
  private static String withoutBreath(String phone) {
    return phone.length() == 2 && phone.endsWith("h") && !phone.equals("ch")
        ? phone.substring(0, 1)
        : phone;
  }

  private static String closing(ScriptLetters letters, String phone, Optional<String> next) {
    boolean nasal = phone.equals("n") || phone.equals("ng");
    Optional<String> assimilated = nasal ? next.map(NASAL_BEFORE::get) : Optional.empty();
    String plain = letters.consonants().get(assimilated.orElse(phone)) + letters.killer();
    return assimilated.isPresent() && !assimilated.get().equals("ng")
        ? plain
        : letters.finals().getOrDefault(assimilated.orElse(phone), plain);
  }

  private boolean open(SolluSound sound) {
    return sound.vowelIndex() == sound.phones().size() - 1;
  }

  private Optional<String> onset(Sollu sollu) {
    return lexicon
        .sound(sollu)
        .filter(sound -> sound.vowelIndex() > 0)
        .map(sound -> sound.phones().get(0));
  }

  private static boolean isDoubled(Sollu sollu) {
    String spelling = sollu.spelling();
    return spelling.length() > 1 && spelling.charAt(0) == spelling.charAt(1);
  }
}
