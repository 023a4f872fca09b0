package org.matraloom.repair;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.score.Step;

/** Cuts into a perform plan between rounds, leaving the other steps as they are written. */
final class PlanSurgery {

  private PlanSurgery() {}

  /** The plan with something put in before one round, counted from 1. */
  static List<Step> before(List<Step> plan, int round, Step inserted) {
    List<Step> changed = new ArrayList<>();
    int said = 0;
    for (Step step : plan) {
      int times = step instanceof Step.Say say ? say.times() : 0;
      int cut = round - 1 - said;
      if (step instanceof Step.Say say && cut >= 0 && cut < times) {
        if (cut > 0) {
          changed.add(times(say, cut));
        }
        changed.add(inserted);
        changed.add(times(say, times - cut));
      } else {
        changed.add(step);
      }
      said += times;
    }
    return changed;
  }

  /** The plan with its last round replaced. */
  static List<Step> withLastRound(List<Step> plan, int nadai, int kalam) {
    int last = lastSay(plan);
    Step.Say say = (Step.Say) plan.get(last);
    List<Step> changed = new ArrayList<>(plan);
    changed.set(last, new Step.Say(say.phrase(), 1, nadai, kalam));
    if (say.times() > 1) {
      changed.add(last, times(say, say.times() - 1));
    }
    return changed;
  }

  /** The plan with every round, and every silence counted in matras, in one nadai. */
  static List<Step> inNadai(List<Step> plan, int nadai) {
    List<Step> changed = new ArrayList<>();
    for (Step step : plan) {
      if (step instanceof Step.Say say) {
        changed.add(new Step.Say(say.phrase(), say.times(), nadai, say.kalam()));
      } else if (step instanceof Step.RestMatras rest) {
        changed.add(new Step.RestMatras(rest.matras(), nadai));
      } else {
        changed.add(step);
      }
    }
    return changed;
  }

  /** The last round by itself. */
  static List<Step> lastRound(List<Step> plan) {
    return List.of(times((Step.Say) plan.get(lastSay(plan)), 1));
  }

  /** The plan with a silence of so many matras, in the nadai just said, between all rounds. */
  static List<Step> withKarvaiBetween(List<Step> plan, int matras) {
    List<Step> changed = new ArrayList<>();
    int last = lastSay(plan);
    for (int i = 0; i < plan.size(); i++) {
      if (plan.get(i) instanceof Step.Say say) {
        for (int time = 1; time <= say.times(); time++) {
          changed.add(times(say, 1));
          if (i < last || time < say.times()) {
            changed.add(new Step.RestMatras(matras, say.nadai()));
          }
        }
      } else {
        changed.add(plan.get(i));
      }
    }
    return changed;
  }

  /** The first step that says something, for its phrase and nadai. */
  static Step.Say firstSay(List<Step> plan) {
    return plan.stream()
        .filter(Step.Say.class::isInstance)
        .map(Step.Say.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private static int lastSay(List<Step> plan) {
    int last = plan.size() - 1;
    while (!(plan.get(last) instanceof Step.Say)) {
      last--;
    }
    return last;
  }

  private static Step.Say times(Step.Say say, int times) {
    return new Step.Say(say.phrase(), times, say.nadai(), say.kalam());
  }
}
