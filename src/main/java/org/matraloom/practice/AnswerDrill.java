package org.matraloom.practice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Length;
import org.matraloom.score.Sequence;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/**
 * Call and answer: each section is said from samam, then the hand alone leaves the learner the same
 * time, in whole avartanas, to say it back.
 *
 * <p>A gap that is as long as the call is how lessons are recorded (carnaticstudent.org, four
 * talas).
 */
public final class AnswerDrill {

  private static final int MOST_TIMES = 50;
  private static final String OWN_WORDS = "Part";

  private AnswerDrill() {}

  /**
   * Makes calls and gaps of the sections of every phrase that is performed.
   *
   * <p>A section is a phrase that the performed phrase names; what it says in words of its own
   * becomes a section as well. A performed phrase that names no other is one section.
   *
   * @param composition the score
   * @param times how often each section is called, 1 to 50
   * @return the drill, from samam to samam
   * @throws IllegalArgumentException if the number is out of range
   */
  public static Composition of(Composition composition, int times) {
    Drill.requireRange("the number of calls", times, 1, MOST_TIMES);
    Map<String, Sequence> phrases = new LinkedHashMap<>(composition.phrases());
    List<Step> plan = new ArrayList<>();
    List<Step.Say> heard = new ArrayList<>();
    for (Step step : composition.plan()) {
      if (step instanceof Step.Say say) {
        Step.Say once = new Step.Say(say.phrase(), 1, say.nadai(), say.kalam());
        if (!heard.contains(once)) {
          heard.add(once);
          for (String section : sections(once.phrase(), phrases)) {
            call(section, once, composition, phrases, times, plan);
          }
        }
      }
    }
    String title =
        "Call and answer" + (composition.title().isEmpty() ? "" : ": " + composition.title());
    return Drill.of(title, composition.avartana(), composition.tempo(), Ratio.ZERO, phrases, plan);
  }

  private static void call(
      String section,
      Step.Say say,
      Composition composition,
      Map<String, Sequence> phrases,
      int times,
      List<Step> plan) {
    Length length = Length.of(phrases.get(section), phrases);
    if (length.isNothing()) {
      return;
    }
    Ratio beats = length.beats(say.nadai(), say.kalam());
    long avartanas = beats.dividedBy(composition.avartana().beats()).ceil();
    for (int time = 0; time < times; time++) {
      plan.add(new Step.Say(section, 1, say.nadai(), say.kalam()));
      plan.add(new Step.Until(Ratio.ZERO));
      plan.add(new Step.RestBeats(Ratio.of(avartanas * composition.avartana().beats())));
    }
  }

  private static List<String> sections(String phrase, Map<String, Sequence> phrases) {
    List<Element> elements = phrases.get(phrase).elements();
    if (elements.stream().noneMatch(Element.Reference.class::isInstance)) {
      return List.of(phrase);
    }
    List<String> sections = new ArrayList<>();
    List<Element> own = new ArrayList<>();
    for (Element element : elements) {
      if (element instanceof Element.Reference reference) {
        endOwn(own, sections, phrases);
        sections.add(reference.name());
      } else {
        own.add(element);
      }
    }
    endOwn(own, sections, phrases);
    return sections.stream().distinct().toList();
  }

  /** Words between the named phrases become a phrase; a mere karvai or silence is left out. */
  private static void endOwn(
      List<Element> own, List<String> sections, Map<String, Sequence> phrases) {
    Sequence sequence = new Sequence(own);
    own.clear();
    if (Length.of(sequence, phrases).sollus() == 0) {
      return;
    }
    int number = 1;
    while (phrases.containsKey(OWN_WORDS + number)
        && !phrases.get(OWN_WORDS + number).equals(sequence)) {
      number++;
    }
    phrases.put(OWN_WORDS + number, sequence);
    sections.add(OWN_WORDS + number);
  }
}
