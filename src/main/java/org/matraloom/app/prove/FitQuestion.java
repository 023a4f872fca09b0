package org.matraloom.app.prove;

import java.util.List;
import org.matraloom.app.cli.UserError;
import org.matraloom.fit.FitProblem;
import org.matraloom.fit.RoundPlan;
import org.matraloom.fit.RoundPlanReader;
import org.matraloom.fit.WholeRange;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.time.Ratio;

/** A question in numbers, as typed. */
final class FitQuestion {

  private static final WholeRange USUAL_MATRAS = new WholeRange(3, 200);
  private static final int EDUPPU_PARTS = 4;

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
    RoundPlan.Part.Round first = plans.get(0).rounds().get(0);
    int density = first.nadai() * Composition.density(first.kalam());
    Composition places = setting.read(density);
    Avartana avartana = places.avartana();
    List<Ratio> starts =
        setting.startIsOpen()
            ? FitProblem.everyPlace(avartana, density)
            : List.of(places.startBeat());
    List<Ratio> eduppus =
        setting.eduppuIsOpen()
            ? FitProblem.everyPlace(avartana, EDUPPU_PARTS)
            : List.of(places.eduppuBeat());
    try {
      return new FitProblem(avartana, plans, matras, waits, starts, eduppus);
    } catch (IllegalArgumentException refused) {
      throw new UserError(refused.getMessage());
    }
  }

  static List<RoundPlan> plans(String rounds) {
    if (rounds == null) {
      throw new UserError("name a score, or say the rounds, such as --rounds 4-4-5");
    }
    try {
      return RoundPlanReader.read(rounds);
    } catch (IllegalArgumentException notAPlan) {
      throw new UserError("--rounds " + rounds + ": " + notAPlan.getMessage());
    }
  }
}
