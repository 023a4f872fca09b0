package org.matraloom.app.prove;

import java.util.List;
import org.matraloom.app.cli.UserError;
import org.matraloom.fit.AskedPlaces;
import org.matraloom.fit.FitProblem;
import org.matraloom.fit.RoundPlan;
import org.matraloom.fit.RoundPlanReader;
import org.matraloom.fit.WholeRange;
import org.matraloom.score.Composition;

/** A question in numbers, as typed. */
final class FitQuestion {

  private static final WholeRange USUAL_MATRAS = new WholeRange(3, 200);

  private final SettingOptions setting;
  private final String rounds;
  private final WholeRange matras;
  private final WholeRange waits;

  FitQuestion(SettingOptions setting, String rounds, WholeRange matras, WholeRange waits) {
    this.setting = setting;
    this.rounds = rounds;
    this.matras = matras == null ? USUAL_MATRAS : matras;
    this.waits = waits;
  }

  FitProblem problem() {
    List<RoundPlan> plans = plans(rounds);
    List<Composition> settings =
        plans.stream()
            .mapToInt(plan -> plan.rounds().get(0).matrasPerBeat())
            .distinct()
            .mapToObj(setting::read)
            .toList();
    Composition places = settings.get(0);
    if (settings.stream().anyMatch(other -> !samePlaces(other, places))) {
      throw new UserError(
          "a start or eduppu in matras needs a first round with a nadai; give the place in beats");
    }
    AskedPlaces start =
        setting.startIsOpen() ? new AskedPlaces.AnyStart() : AskedPlaces.at(places.startBeat());
    AskedPlaces eduppu =
        setting.eduppuIsOpen() ? new AskedPlaces.AnyLanding() : AskedPlaces.at(places.eduppuBeat());
    try {
      return new FitProblem(places.avartana(), plans, matras, waits, start, eduppu);
    } catch (IllegalArgumentException refused) {
      throw new UserError(refused.getMessage());
    }
  }

  private static boolean samePlaces(Composition a, Composition b) {
    return a.startBeat().equals(b.startBeat()) && a.eduppuBeat().equals(b.eduppuBeat());
  }

  static List<RoundPlan> plans(String rounds) {
    if (rounds == null) {
      throw new UserError("name a score, or say the rounds, such as --as 4-4-5");
    }
    try {
      return RoundPlanReader.read(rounds);
    } catch (IllegalArgumentException notAPlan) {
      throw new UserError("--as " + rounds + ": " + notAPlan.getMessage());
    }
  }
}
