package org.matraloom.sollus;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the built-in list {@code sollus.txt} says, in a form that need not be read: at every start
 * that takes as long as all else that a check does. Drawn from the list by scripts/draw-sollus; a
 * sollu is changed there.
 */
public final class StandardSollus {

  private StandardSollus() {}

  /**
   * The sounds.
   *
   * @return in the order of the list
   */
  public static List<SolluRow> sounds() {
    List<SolluRow> all = new ArrayList<>();
    add(all, "ta", List.of("ta", "tha", "tah", "thah"), List.of("t", "a"));
    add(all, "taa", List.of("taa", "thaa", "taah", "thaah"), List.of("t", "aa"));
    add(all, "ti", List.of("ti", "thi"), List.of("t", "i"));
    add(all, "tii", List.of("tii", "thii"), List.of("t", "ii"));
    add(all, "tu", List.of("tu", "thu"), List.of("t", "u"));
    add(all, "te", List.of("te", "the"), List.of("t", "e"));
    add(all, "to", List.of("to", "tho"), List.of("t", "o"));
    add(all, "tei", List.of("tei", "thei", "tai", "thai", "tey", "they"), List.of("t", "ee"));
    add(all, "ṭa", List.of("ṭa", "tta", "ṭha", "ṭṭa"), List.of("T", "a"));
    add(all, "ṭi", List.of("ṭi", "tti", "ṭhi"), List.of("T", "i"));
    add(all, "ṭu", List.of("ṭu", "ttu"), List.of("T", "u"));
    add(all, "ḍa", List.of("ḍa", "dda"), List.of("D", "a"));
    add(all, "ḍi", List.of("ḍi", "ddi"), List.of("D", "i"));
    add(all, "ḍu", List.of("ḍu", "ddu"), List.of("D", "u"));
    add(all, "ṇa", List.of("ṇa", "nna"), List.of("N", "a"));
    add(all, "ṇi", List.of("ṇi", "nni"), List.of("N", "i"));
    add(all, "ṇu", List.of("ṇu", "nnu"), List.of("N", "u"));
    add(all, "da", List.of("da", "dah"), List.of("d", "a"));
    add(all, "daa", List.of("daa"), List.of("d", "aa"));
    add(all, "di", List.of("di"), List.of("d", "i"));
    add(all, "dii", List.of("dii"), List.of("d", "ii"));
    add(all, "du", List.of("du"), List.of("d", "u"));
    add(all, "dha", List.of("dha", "dhah"), List.of("dh", "a"));
    add(all, "dhaa", List.of("dhaa"), List.of("dh", "aa"));
    add(all, "dhi", List.of("dhi", "ddhi"), List.of("dh", "i"));
    add(all, "dhii", List.of("dhii"), List.of("dh", "ii"));
    add(all, "dhu", List.of("dhu"), List.of("dh", "u"));
    add(all, "ka", List.of("ka", "kka", "kah"), List.of("k", "a"));
    add(all, "kaa", List.of("kaa"), List.of("k", "aa"));
    add(all, "ki", List.of("ki", "kki"), List.of("k", "i"));
    add(all, "kii", List.of("kii"), List.of("k", "ii"));
    add(all, "ku", List.of("ku", "kku"), List.of("k", "u"));
    add(all, "ke", List.of("ke"), List.of("k", "e"));
    add(all, "ga", List.of("ga", "gha", "gga"), List.of("g", "a"));
    add(all, "gaa", List.of("gaa"), List.of("g", "aa"));
    add(all, "gi", List.of("gi", "ghi", "ggi"), List.of("g", "i"));
    add(all, "gu", List.of("gu", "ghu", "ggu"), List.of("g", "u"));
    add(all, "ge", List.of("ge"), List.of("g", "e"));
    add(all, "ja", List.of("ja", "jja"), List.of("j", "a"));
    add(all, "ji", List.of("ji", "jji"), List.of("j", "i"));
    add(all, "ju", List.of("ju", "jju", "juu"), List.of("j", "u"));
    add(all, "jo", List.of("jo", "jjo", "joo"), List.of("j", "o"));
    add(all, "je", List.of("je"), List.of("j", "e"));
    add(all, "jha", List.of("jha"), List.of("jh", "a"));
    add(all, "jhi", List.of("jhi"), List.of("jh", "i"));
    add(all, "jhu", List.of("jhu"), List.of("jh", "u"));
    add(all, "jho", List.of("jho"), List.of("jh", "o"));
    add(all, "jhe", List.of("jhe"), List.of("jh", "e"));
    add(all, "na", List.of("na", "nah"), List.of("n", "a"));
    add(all, "naa", List.of("naa"), List.of("n", "aa"));
    add(all, "ni", List.of("ni"), List.of("n", "i"));
    add(all, "nu", List.of("nu", "no"), List.of("n", "u"));
    add(all, "ma", List.of("ma", "mma"), List.of("m", "a"));
    add(all, "mi", List.of("mi", "mii", "mmi"), List.of("m", "i"));
    add(all, "mu", List.of("mu"), List.of("m", "u"));
    add(all, "ri", List.of("ri", "rri"), List.of("r", "i"));
    add(all, "ra", List.of("ra"), List.of("r", "a"));
    add(all, "ru", List.of("ru", "rru"), List.of("r", "u"));
    add(all, "la", List.of("la"), List.of("l", "a"));
    add(all, "li", List.of("li"), List.of("l", "i"));
    add(all, "lu", List.of("lu"), List.of("l", "u"));
    add(all, "ya", List.of("ya"), List.of("y", "a"));
    add(all, "va", List.of("va"), List.of("v", "a"));
    add(all, "ha", List.of("ha"), List.of("h", "a"));
    add(all, "tam", List.of("tam", "tham", "taam", "thaam"), List.of("t", "a", "m"));
    add(all, "tan", List.of("tan", "than", "taan", "thaan"), List.of("t", "a", "n"));
    add(all, "tang", List.of("tang", "thang"), List.of("t", "a", "ng"));
    add(all, "tat", List.of("tat", "that", "tath", "thath"), List.of("t", "a", "t"));
    add(all, "tak", List.of("tak", "thak"), List.of("t", "a", "k"));
    add(all, "tim", List.of("tim", "thim", "tiim", "thiim"), List.of("t", "i", "m"));
    add(all, "tin", List.of("tin", "thin", "tiin", "thiin"), List.of("t", "i", "n"));
    add(all, "tit", List.of("tit", "thit", "tith", "thith"), List.of("t", "i", "t"));
    add(
        all,
        "tom",
        List.of("tom", "thom", "toom", "thoom", "tomm", "thomm"),
        List.of("t", "o", "m"));
    add(all, "ton", List.of("ton", "thon"), List.of("t", "o", "n"));
    add(all, "tum", List.of("tum", "thum", "tuum", "thuum"), List.of("t", "u", "m"));
    add(all, "tun", List.of("tun", "thun"), List.of("t", "u", "n"));
    add(all, "dam", List.of("dam", "daam"), List.of("d", "a", "m"));
    add(all, "dan", List.of("dan"), List.of("d", "a", "n"));
    add(all, "dim", List.of("dim", "diim"), List.of("d", "i", "m"));
    add(all, "din", List.of("din", "diin"), List.of("d", "i", "n"));
    add(all, "ding", List.of("ding"), List.of("d", "i", "ng"));
    add(all, "dit", List.of("dit", "dith"), List.of("d", "i", "t"));
    add(all, "dom", List.of("dom", "doom"), List.of("d", "o", "m"));
    add(all, "dum", List.of("dum", "duum"), List.of("d", "u", "m"));
    add(all, "dham", List.of("dham", "dhaam"), List.of("dh", "a", "m"));
    add(all, "dhan", List.of("dhan", "dhaan"), List.of("dh", "a", "n"));
    add(all, "dhim", List.of("dhim", "dhiim"), List.of("dh", "i", "m"));
    add(all, "dhin", List.of("dhin", "dhiin"), List.of("dh", "i", "n"));
    add(all, "dhing", List.of("dhing"), List.of("dh", "i", "ng"));
    add(all, "dhit", List.of("dhit", "dhith"), List.of("dh", "i", "t"));
    add(all, "dhom", List.of("dhom", "dhoom"), List.of("dh", "o", "m"));
    add(all, "dhum", List.of("dhum", "dhuum"), List.of("dh", "u", "m"));
    add(all, "kam", List.of("kam", "kaam"), List.of("k", "a", "m"));
    add(all, "kim", List.of("kim"), List.of("k", "i", "m"));
    add(all, "kum", List.of("kum"), List.of("k", "u", "m"));
    add(all, "kun", List.of("kun"), List.of("k", "u", "n"));
    add(all, "gam", List.of("gam"), List.of("g", "a", "m"));
    add(all, "gum", List.of("gum"), List.of("g", "u", "m"));
    add(all, "gun", List.of("gun"), List.of("g", "u", "n"));
    add(all, "jam", List.of("jam", "jaam"), List.of("j", "a", "m"));
    add(all, "jem", List.of("jem"), List.of("j", "e", "m"));
    add(all, "jim", List.of("jim"), List.of("j", "i", "m"));
    add(all, "jum", List.of("jum"), List.of("j", "u", "m"));
    add(all, "jham", List.of("jham", "jhaam", "jjham"), List.of("jh", "a", "m"));
    add(all, "jhem", List.of("jhem"), List.of("jh", "e", "m"));
    add(all, "jhum", List.of("jhum"), List.of("jh", "u", "m"));
    add(all, "nam", List.of("nam", "naam"), List.of("n", "a", "m"));
    add(all, "nan", List.of("nan"), List.of("n", "a", "n"));
    add(all, "nom", List.of("nom"), List.of("n", "o", "m"));
    add(all, "num", List.of("num"), List.of("n", "u", "m"));
    add(all, "ran", List.of("ran"), List.of("r", "a", "n"));
    add(all, "rum", List.of("rum"), List.of("r", "u", "m"));
    add(all, "lan", List.of("lan", "laan"), List.of("l", "a", "n"));
    add(all, "lam", List.of("lam", "laam"), List.of("l", "a", "m"));
    add(all, "lang", List.of("lang"), List.of("l", "a", "ng"));
    add(all, "yum", List.of("yum"), List.of("y", "u", "m"));
    return all;
  }

  /**
   * What is said so after another one.
   *
   * @return the sound that is heard, by both names with a space between
   */
  public static Map<String, String> company() {
    Map<String, String> all = new HashMap<>();
    all.put("ki ta", "ṭa");
    all.put("ki da", "ṭa");
    all.put("gi na", "ṇa");
    all.put("ki na", "ṇa");
    all.put("jo nu", "ṇu");
    all.put("ju nu", "ṇu");
    all.put("ja nu", "ṇu");
    all.put("jha nu", "ṇu");
    return all;
  }

  /**
   * The words for groups, those with karvai too.
   *
   * @return by their size, in the order of the list
   */
  public static Map<Integer, List<List<String>>> words() {
    Map<Integer, List<List<String>>> all = new HashMap<>();
    all.put(
        1,
        List.of(
            List.of("ta"),
            List.of("di"),
            List.of("tom"),
            List.of("nam"),
            List.of("jem"),
            List.of("tam")));
    all.put(2, List.of(List.of("ta", "ka"), List.of("di", "mi"), List.of("jo", "nu")));
    all.put(3, List.of(List.of("ta", "ki", "ta"), List.of("ta", "lan", "gu")));
    all.put(
        4,
        List.of(
            List.of("ta", "ka", "di", "mi"),
            List.of("ta", "ka", "jo", "nu"),
            List.of("ta", "ka", "di", "ku"),
            List.of("ta", "ri", "ki", "ta"),
            List.of("ki", "ta", "ta", "ka")));
    all.put(
        5,
        List.of(
            List.of("ta", "di", "gi", "na", "tom"),
            List.of("ta", "ka", "ta", "ki", "ta"),
            List.of("ta", "di", "ki", "ta", "tom"),
            List.of("ta", "din", "gi", "na", "tom")));
    all.put(
        6,
        List.of(
            List.of("ta", "ka", "di", "mi", "ta", "ka"),
            List.of("ta", "ki", "ta", "ta", "ki", "ta"),
            List.of("ta", ",", "di", "gi", "na", "tom"),
            List.of("ta", "di", ",", "gi", "na", "tom")));
    all.put(
        7,
        List.of(
            List.of("ta", "ka", "di", "mi", "ta", "ki", "ta"),
            List.of("ta", "ki", "ta", "ta", "ka", "di", "mi"),
            List.of("ta", "ka", "ta", "di", "ki", "ta", "tom"),
            List.of("ta", "ka", "ta", "din", "gi", "na", "tom"),
            List.of("ta", ",", "di", ",", "gi", "na", "tom"),
            List.of("ta", "di", ",", "gi", ",", "na", "tom")));
    all.put(
        8,
        List.of(
            List.of("ta", "ka", "di", "mi", "ta", "ka", "jo", "nu"),
            List.of("ta", "ki", "ta", "ta", "di", "ki", "ta", "tom"),
            List.of("ta", "ki", "ta", "ta", "din", "gi", "na", "tom"),
            List.of("ta", "di", ",", "gi", ",", "na", ",", "tom"),
            List.of("ta", ",", "di", ",", "gi", ",", "na", "tom")));
    all.put(
        9,
        List.of(
            List.of("ta", "ka", "di", "mi", "ta", "ka", "ta", "ki", "ta"),
            List.of("ta", "ka", "di", "ku", "ta", "di", "ki", "ta", "tom"),
            List.of("ta", "ka", "di", "ku", "ta", "din", "gi", "na", "tom"),
            List.of("ta", ",", "di", ",", "gi", ",", "na", ",", "tom"),
            List.of("ta", ";", "di", ";", "gi", "na", "tom")));
    return all;
  }

  private static void add(
      List<SolluRow> all, String name, List<String> spellings, List<String> phones) {
    all.add(new SolluRow(name, spellings, phones));
  }
}
