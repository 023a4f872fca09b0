package org.matraloom.pack;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.matraloom.practice.JoinDrill;
import org.matraloom.practice.LoopDrill;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Works out the tracks of a set, in an order in which their names sort. */
final class PackList {

  private static final int SECTION_LOOPS = 4;
  private static final int JOIN_LOOPS = 8;
  private static final int JOIN_BEATS = 4;
  private static final int LONGEST_SLUG = 40;

  private record Draft(String section, Ratio percent, PackMix mix, Composition composition) {}

  private PackList() {}

  static List<PackTrack> of(PackOrder order) {
    List<Draft> drafts = new ArrayList<>();
    for (Ratio percent : order.percents()) {
      Composition slowed = slowed(order.composition(), percent);
      for (PackMix mix : order.mixes()) {
        drafts.add(new Draft("whole", percent, mix, mix.arranged(slowed)));
      }
    }
    if (order.drills()) {
      drills(order, drafts);
    }
    List<PackTrack> tracks = new ArrayList<>();
    String digits = drafts.size() > 99 ? "%03d" : "%02d";
    String title = slug(order.composition().title(), "score");
    for (Draft draft : drafts) {
      int number = tracks.size() + 1;
      Ratio bpm = draft.composition.tempo().beatsPerMinute();
      String name =
          String.format(Locale.ROOT, digits, number)
              + "_"
              + title
              + "_"
              + slug(draft.section, "section")
              + "_"
              + String.format(Locale.ROOT, "%03d", Math.round(bpm.toDouble()))
              + "bpm_"
              + draft.mix.slug();
      tracks.add(
          new PackTrack(name, number, draft.section, draft.percent, draft.mix, draft.composition));
    }
    return tracks;
  }

  private static void drills(PackOrder order, List<Draft> drafts) {
    Ratio slowest = order.percents().get(0);
    Composition slowed = slowed(order.composition(), slowest);
    for (String section : sections(slowed)) {
      Composition loop = LoopDrill.of(slowed, section, SECTION_LOOPS);
      drafts.add(new Draft(section, slowest, PackMix.FULL, loop));
    }
    for (int join = 1; join <= JoinDrill.joins(slowed); join++) {
      Composition loop = JoinDrill.of(slowed, join, JOIN_BEATS, JOIN_LOOPS, Lexicon.standard());
      drafts.add(new Draft("join " + join, slowest, PackMix.FULL, loop));
    }
  }

  /** The phrases that the performed phrases name, in the order in which they are first said. */
  private static Set<String> sections(Composition composition) {
    Set<String> sections = new LinkedHashSet<>();
    for (Span.Round round : Performance.of(composition).rounds()) {
      for (Element element : composition.phrases().get(round.phrase()).elements()) {
        if (element instanceof Element.Reference reference) {
          sections.add(reference.name());
        }
      }
    }
    return sections;
  }

  /** At a part of the tempo, in whole beats a minute, as one sets them. */
  private static Composition slowed(Composition composition, Ratio percent) {
    Ratio exact = composition.tempo().beatsPerMinute().times(percent).dividedBy(100);
    Ratio whole = Ratio.of(exact.plus(Ratio.of(1, 2)).floor());
    boolean own = percent.equals(Ratio.of(100)) || !Tempo.inRange(whole);
    return composition.at(
        own ? composition.tempo().scaled(percent.dividedBy(100)) : new Tempo(whole));
  }

  /** Plain letters, digits and hyphens, which every phone and chat takes. */
  static String slug(String text, String otherwise) {
    String plain =
        Normalizer.normalize(text, Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}+", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+|-+$", "");
    if (plain.isEmpty()) {
      return otherwise;
    }
    return plain.length() > LONGEST_SLUG ? plain.substring(0, LONGEST_SLUG) : plain;
  }

  /** The nadais that a track goes through, in figures. */
  static String nadais(PackTrack track) {
    StringBuilder words = new StringBuilder();
    for (Integer nadai :
        new TreeSet<>(
            Performance.of(track.composition()).rounds().stream()
                .map(Span.Round::matrasPerBeat)
                .toList())) {
      words.append(words.isEmpty() ? "" : ", ").append(nadai);
    }
    return words.toString();
  }
}
