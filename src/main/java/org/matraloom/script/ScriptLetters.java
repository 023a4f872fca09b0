package org.matraloom.script;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The letters of one script for the phones of the lexicon.
 *
 * <p>Letter for letter this is ISO 15919 read backwards; what each script does at the end of a
 * syllable is common practice: chillu letters and anusvara in Malayalam, ன in Tamil.
 *
 * @param consonants a letter for each consonant
 * @param signs a vowel sign for each vowel, "" for a
 * @param vowels a letter for each vowel that begins a syllable
 * @param killer the sign that takes the vowel away
 * @param finals letters for consonants that close a syllable, where they differ
 */
record ScriptLetters(
    Map<String, String> consonants,
    Map<String, String> signs,
    Map<String, String> vowels,
    String killer,
    Map<String, String> finals) {

  private static final List<String> CONSONANTS =
      List.of(
          "t", "th", "T", "d", "dh", "D", "k", "g", "j", "jh", "ch", "m", "n", "N", "ng", "r", "l",
          "y", "v", "p", "b", "h");

  private static final List<String> VOWELS =
      List.of("a", "aa", "i", "ii", "u", "uu", "e", "ee", "o", "oo");

  static ScriptLetters of(Script script) {
    return switch (script) {
      case TAMIL ->
          letters(
              "த த ட த த ட க க ஜ ஜ ச ம ந ண ங ர ல ய வ ப ப ஹ",
              "- ா ி ீ ு ூ ெ ே ொ ோ",
              "அ ஆ இ ஈ உ ஊ எ ஏ ஒ ஓ",
              "்",
              Map.of("n", "ன்"));
      case KANNADA ->
          letters(
              "ತ ಥ ಟ ದ ಧ ಡ ಕ ಗ ಜ ಝ ಚ ಮ ನ ಣ ಙ ರ ಲ ಯ ವ ಪ ಬ ಹ",
              "- ಾ ಿ ೀ ು ೂ ೆ ೇ ೊ ೋ",
              "ಅ ಆ ಇ ಈ ಉ ಊ ಎ ಏ ಒ ಓ",
              "್",
              Map.of("ng", "ಂ"));
      case TELUGU ->
          letters(
              "త థ ట ద ధ డ క గ జ ఝ చ మ న ణ ఙ ర ల య వ ప బ హ",
              "- ా ి ీ ు ూ ె ే ొ ో",
              "అ ఆ ఇ ఈ ఉ ఊ ఎ ఏ ఒ ఓ",
              "్",
              Map.of("ng", "ం"));
      case MALAYALAM ->
          letters(
              "ത ഥ ട ദ ധ ഡ ക ഗ ജ ഝ ച മ ന ണ ങ ര ല യ വ പ ബ ഹ",
              "- ാ ി ീ ു ൂ െ േ ൊ ോ",
              "അ ആ ഇ ഈ ഉ ഊ എ ഏ ഒ ഓ",
              "്",
              Map.of("m", "ം", "n", "ൻ", "N", "ൺ", "r", "ർ", "l", "ൽ"));
      case DEVANAGARI ->
          letters(
              "त थ ट द ध ड क ग ज झ च म न ण ङ र ल य व प ब ह",
              "- ा ि ी ु ू े े ो ो",
              "अ आ इ ई उ ऊ ए ए ओ ओ",
              "्",
              Map.of("ng", "ं"));
      case ISO15919 ->
          letters(
              "t th ṭ d dh ḍ k g j jh c m n ṇ ṅ r l y v p b h",
              "a ā i ī u ū e ē o ō",
              "a ā i ī u ū e ē o ō",
              "",
              Map.of());
      case LATIN -> throw new IllegalArgumentException("the user's own spelling has no table");
    };
  }

  private static ScriptLetters letters(
      String consonants, String signs, String vowels, String killer, Map<String, String> finals) {
    return new ScriptLetters(
        table(CONSONANTS, consonants), table(VOWELS, signs), table(VOWELS, vowels), killer, finals);
  }

  private static Map<String, String> table(List<String> phones, String letters) {
    List<String> row =
        Arrays.stream(letters.split(" ")).map(letter -> letter.equals("-") ? "" : letter).toList();
    Map<String, String> table = new HashMap<>();
    for (int index = 0; index < phones.size(); index++) {
      table.put(phones.get(index), row.get(index));
    }
    return Map.copyOf(table);
  }
}
