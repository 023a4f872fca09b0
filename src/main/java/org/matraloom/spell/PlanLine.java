package org.matraloom.spell;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.score.Step;
import org.matraloom.score.StepVisitor;
import org.matraloom.time.Ratio;

/** A line of a perform plan as it is written. */
public final class PlanLine implements StepVisitor<String> {

  /** Names what follows. */
  public static final String PART = "part";

  /** Words to students. */
  public static final String TELL = "tell";

  /** A place of the tala that must be reached here. */
  public static final String AT = "at";

  /** Whose place it is. */
  public static final String FOR = "for";

  /** Before what a second reciter says. */
  public static final String WITH = "with";

  /** Turns to another tala. */
  public static final String TALA = "tala";

  @Override
  public String say(Step.Say say) {
    List<String> parts = new ArrayList<>();
    parts.add(say.phrase());
    if (say.times() > 1) {
      parts.add("x" + say.times());
    }
    parts.add("nadai " + say.nadai());
    if (say.kalam() > 1) {
      parts.add("kalam " + say.kalam());
    }
    return String.join(" ", parts);
  }

  @Override
  public String restBeats(Step.RestBeats rest) {
    return "rest " + rest.beats().toMixed() + " beats";
  }

  @Override
  public String restMatras(Step.RestMatras rest) {
    return "rest " + rest.matras() + " matras nadai " + rest.nadai();
  }

  @Override
  public String until(Step.Until until) {
    return "until " + place(until.place());
  }

  @Override
  public String part(Step.Part part) {
    return PART + " " + part.name();
  }

  @Override
  public String tell(Step.Tell tell) {
    return TELL + " " + tell.text();
  }

  @Override
  public String stands(Step.Stands stands) {
    String whose = stands.whose().isEmpty() ? "" : " " + FOR + " " + stands.whose();
    return AT + " " + place(stands.place()) + whose;
  }

  @Override
  public String with(Step.With with) {
    return WITH + " " + with.step().told(this);
  }

  @Override
  public String toTala(Step.ToTala turn) {
    return TALA + " " + TalaText.written(turn.tala());
  }

  private static String place(Ratio place) {
    return place.signum() == 0 ? "samam" : "beat " + place.plus(Ratio.ONE).toMixed();
  }
}
