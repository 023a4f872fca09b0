package org.matraloom.script;

import java.util.Map;
import java.util.Optional;
import org.matraloom.score.Kriya;

/**
 * The words of a script for nadais and kriyas, where a published source has them.
 *
 * <p>Tamil nadai names: Tamil Wikipedia, "தாள நடைகள்", 2006; தட்டு: Tamil Wikipedia, "அனுதிருதம்".
 * Kannada: Karnataka Sangita Sabda Kosa, ambuda.org, ಚತುರಶ್ರ ಗತಿ, ಏಟು, ಎಣಿಕೆ. Telugu: Telugu
 * Wikipedia, "తాళాలు". Malayalam nadai names: a metre book of 1930 at Malayalam Wikisource; kriyas:
 * a Malayalam page on the ways of putting tala, 2010. Devanagari: Sangit Visharad, Hindi
 * Wikisource. A cell without a source stays empty and the English word alone is printed.
 */
public final class ScriptTerms {

  private static final Map<Script, Map<Integer, String>> NADAIS =
      Map.of(
          Script.TAMIL,
          Map.of(
              3, "திஸ்ர நடை",
              4, "சதுஸ்ர நடை",
              5, "கண்ட நடை",
              7, "மிஸ்ர நடை",
              9, "சங்கீர்ண நடை"),
          Script.KANNADA,
          Map.of(4, "ಚತುರಶ್ರ ಗತಿ"),
          Script.TELUGU,
          Map.of(3, "త్రిశ్ర", 4, "చతురశ్ర", 5, "ఖండ", 7, "మిశ్ర", 9, "సంకీర్ణ"),
          Script.MALAYALAM,
          Map.of(3, "ത്രിശ്രം", 4, "ചതുരശ്ര", 5, "ഖണ്ഡം", 7, "മിശ്രം", 9, "സങ്കീർണ്ണം"),
          Script.DEVANAGARI,
          Map.of(3, "तिस्र", 4, "चतस्र", 5, "खंड", 7, "मिश्र", 9, "संकीर्ण"));

  private static final Map<Script, String> CLAPS =
      Map.of(Script.TAMIL, "தட்டு", Script.KANNADA, "ಏಟು", Script.MALAYALAM, "അടി");

  private static final Map<Script, String> COUNTS =
      Map.of(Script.KANNADA, "ಎಣಿಕೆ", Script.TELUGU, "వ్రేళ్ళు ఎంచుట");

  private static final Map<Script, String> WAVES = Map.of(Script.MALAYALAM, "വീശ്");

  private ScriptTerms() {}

  /**
   * The name of a nadai.
   *
   * @param script the script
   * @param nadai matras a beat in the first kalam
   * @return the name; empty if no source has it
   */
  public static Optional<String> nadai(Script script, int nadai) {
    return Optional.ofNullable(NADAIS.getOrDefault(script, Map.of()).get(nadai));
  }

  /**
   * The name of a kriya.
   *
   * @param script the script
   * @param kriya the kriya
   * @return the name; empty if no source has it
   */
  public static Optional<String> kriya(Script script, Kriya kriya) {
    if (kriya instanceof Kriya.Clap) {
      return Optional.ofNullable(CLAPS.get(script));
    } else if (kriya instanceof Kriya.Count) {
      return Optional.ofNullable(COUNTS.get(script));
    }
    return kriya instanceof Kriya.Wave ? Optional.ofNullable(WAVES.get(script)) : Optional.empty();
  }
}
