package org.matraloom.spell;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.matraloom.score.Jati;
import org.matraloom.score.Tala;

/** The names of talas in their many romanisations; the usual jatis are common practice. */
final class TalaNames {

  private static final String TALA = "tala";
  private static final Set<String> TITLES = Set.of(TALA, "tal", "jati");
  private static final Set<String> CHAPU = Set.of("capu", "sapu");
  private static final Set<String> ADI = Set.of("adi", "ati");

  private static final Map<String, TalaFamily> FAMILIES =
      Map.ofEntries(
          Map.entry("druva", TalaFamily.DHRUVA),
          Map.entry("matya", TalaFamily.MATYA),
          Map.entry("madya", TalaFamily.MATYA),
          Map.entry("rupaka", TalaFamily.RUPAKA),
          Map.entry("jampa", TalaFamily.JHAMPA),
          Map.entry("jampai", TalaFamily.JHAMPA),
          Map.entry("triputa", TalaFamily.TRIPUTA),
          Map.entry("tripuda", TalaFamily.TRIPUTA),
          Map.entry("tirupuda", TalaFamily.TRIPUTA),
          Map.entry("ata", TalaFamily.ATA),
          Map.entry("ada", TalaFamily.ATA),
          Map.entry("eka", TalaFamily.EKA));

  /** All names that can be listed, each with its tala: the 35, adi, the chapu talas. */
  static final Map<String, Tala> ALL = Collections.unmodifiableMap(all());

  private TalaNames() {}

  private static Map<String, Tala> all() {
    Map<String, Tala> names = new LinkedHashMap<>();
    for (TalaFamily family : TalaFamily.values()) {
      for (Jati jati : Jati.values()) {
        Tala tala = family.tala(jati);
        names.put(tala.name(), tala);
      }
    }
    names.put("adi", adi());
    for (ChapuTala chapu : ChapuTala.values()) {
      names.put(chapu.tala().name(), chapu.tala());
    }
    return names;
  }

  /** Chatusra triputa under the name by which everybody knows it. */
  static Tala adi() {
    return new Tala("adi", TalaFamily.TRIPUTA.tala(Jati.CHATUSRA).angas());
  }

  /** The tala of a name. */
  static Optional<Tala> tala(String name) {
    for (int at = 0; at < name.length(); at += Character.charCount(name.codePointAt(at))) {
      if (Character.isDigit(name.codePointAt(at))) {
        return Optional.empty();
      }
    }
    List<String> words = words(name);
    if (words.size() == 1) {
      return single(words.get(0));
    } else if (words.size() == 2) {
      Optional<Tala> jatiFirst = pair(words.get(0), words.get(1));
      return jatiFirst.isPresent() ? jatiFirst : pair(words.get(1), words.get(0));
    }
    return Optional.empty();
  }

  /** Advice for a name that means nothing. */
  static String suggestion(String name) {
    if (words(name).stream().anyMatch(CHAPU::contains)) {
      return "chapu talas are tisra, khanda, misra and sankirna chapu";
    }
    List<String> known = new ArrayList<>(ALL.keySet());
    for (TalaFamily family : TalaFamily.values()) {
      known.add(family.word());
    }
    known.add("chapu");
    Optional<String> nearest = MeantWord.of(name, known);
    if (nearest.isPresent()) {
      return "the nearest is " + nearest.get();
    }
    return words(name).stream()
        .map(JatiNames::jatiOfFolded)
        .flatMap(Optional::stream)
        .findFirst()
        .map(jati -> "name the family too, as in " + jati.word() + " triputa")
        .orElse("write a name such as adi or khanda ata, a formula such as I4 O O, or 3+2+2");
  }

  private static List<String> words(String name) {
    List<String> words = new ArrayList<>();
    int at = 0;
    while (at < name.length()) {
      int end = wordEnd(name, at);
      String folded = JatiNames.fold(name.substring(at, end));
      if (end > at && !TITLES.contains(folded)) {
        words.add(folded);
      }
      at = end == at ? at + Character.charCount(name.codePointAt(at)) : end;
    }
    return words;
  }

  /** Where the letters and marks end that begin at an index; the index itself if none do. */
  private static int wordEnd(String name, int start) {
    int end = start;
    while (end < name.length() && isOfWord(name.codePointAt(end))) {
      end += Character.charCount(name.codePointAt(end));
    }
    return end;
  }

  private static boolean isOfWord(int letter) {
    int type = Character.getType(letter);
    return Character.isLetter(letter)
        || type == Character.NON_SPACING_MARK
        || type == Character.COMBINING_SPACING_MARK
        || type == Character.ENCLOSING_MARK;
  }

  private static Optional<Tala> pair(String jatiWord, String familyWord) {
    Optional<Jati> jati = JatiNames.jatiOfFolded(jatiWord);
    if (jati.isPresent() && CHAPU.contains(familyWord)) {
      return chapu(jati.get());
    }
    TalaFamily family = FAMILIES.get(familyWord);
    return jati.isPresent() && family != null
        ? Optional.of(family.tala(jati.get()))
        : Optional.empty();
  }

  /** A name in one word; run together, tisra and ata share a letter once they are folded. */
  private static Optional<Tala> single(String word) {
    String bare = word.endsWith(TALA) ? word.substring(0, word.length() - TALA.length()) : word;
    if (ADI.contains(bare)) {
      return Optional.of(adi());
    } else if (CHAPU.contains(bare)) {
      return Optional.of(ChapuTala.MISRA.tala());
    } else if (FAMILIES.containsKey(bare)) {
      TalaFamily family = FAMILIES.get(bare);
      return Optional.of(family.tala(usualJati(family)));
    }
    for (int cut = 1; cut < bare.length(); cut++) {
      String jati = bare.substring(0, cut);
      Optional<Tala> tala = pair(jati, bare.substring(cut));
      Optional<Tala> sharing = pair(jati, bare.substring(cut - 1));
      if (tala.isPresent() || sharing.isPresent()) {
        return tala.isPresent() ? tala : sharing;
      }
    }
    return Optional.empty();
  }

  private static Jati usualJati(TalaFamily family) {
    return switch (family) {
      case DHRUVA, MATYA, RUPAKA, EKA -> Jati.CHATUSRA;
      case JHAMPA -> Jati.MISRA;
      case TRIPUTA -> Jati.TISRA;
      case ATA -> Jati.KHANDA;
    };
  }

  private static Optional<Tala> chapu(Jati jati) {
    return switch (jati) {
      case TISRA -> Optional.of(ChapuTala.TISRA.tala());
      case KHANDA -> Optional.of(ChapuTala.KHANDA.tala());
      case MISRA -> Optional.of(ChapuTala.MISRA.tala());
      case SANKIRNA -> Optional.of(ChapuTala.SANKIRNA.tala());
      case CHATUSRA -> Optional.empty();
    };
  }
}
