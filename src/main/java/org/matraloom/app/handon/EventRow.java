package org.matraloom.app.handon;

import java.util.Optional;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.EventVisitor;
import org.matraloom.score.Kriya;
import org.matraloom.score.Nadai;
import org.matraloom.spell.ScorePrinter;
import org.matraloom.time.Ratio;

/**
 * An event in the words of the printed timeline.
 *
 * @param kind one of part, tell, at, count-in, round, nadai, section, clap, count, wave, hold,
 *     tick, sollu, silence, breath, landing
 * @param round the round that is going on, 0 before the first
 * @param text what happens
 * @param beats how long it lasts, for a sollu, a silence or a breath
 */
record EventRow(String kind, int round, String text, Optional<Ratio> beats) {

  /** The row of an event; marks that belong to no round of their own take the one going on. */
  static EventRow of(Event event, int roundGoingOn) {
    return event.told(new Rows(roundGoingOn));
  }

  private record Rows(int roundGoingOn) implements EventVisitor<EventRow> {
    @Override
    public EventRow countIn(Event.CountIn countIn) {
      String avartanas = countIn.avartanas() == 1 ? " avartana" : " avartanas";
      return mark("count-in", 0, countIn.avartanas() + avartanas);
    }

    @Override
    public EventRow roundStart(Event.RoundStart start) {
      return mark("round", start.number(), start.phrase() + ", " + Nadai.inWords(start.nadai()));
    }

    @Override
    public EventRow sectionStart(Event.SectionStart section) {
      return mark("section", section.round(), section.phrase());
    }

    @Override
    public EventRow nadaiChange(Event.NadaiChange change) {
      return mark("nadai", roundGoingOn, change.from() + " to " + change.to());
    }

    @Override
    public EventRow handBeat(Event.HandBeat hand) {
      return mark(kindOf(hand.kriya()), hand.round(), words(hand));
    }

    @Override
    public EventRow tick(Event.Tick tick) {
      return mark("tick", tick.round(), Long.toString(tick.matra()));
    }

    @Override
    public EventRow solluSaid(Event.SolluSaid said) {
      String spelling = said.sollu().spelling() + (said.spoken().isRinging() ? " (rings)" : "");
      return new EventRow("sollu", said.round(), spelling, Optional.of(said.beats()));
    }

    @Override
    public EventRow silence(Event.Silence silence) {
      return new EventRow("silence", silence.round(), "", Optional.of(silence.matras().beats()));
    }

    @Override
    public EventRow inhale(Event.Inhale inhale) {
      String kind = inhale.full() ? "full breath" : "catch breath";
      return new EventRow("breath", inhale.round(), kind, Optional.of(inhale.beats()));
    }

    @Override
    public EventRow landing(Event.LandingPoint landing) {
      return mark("landing", roundGoingOn, "the last matra has ended");
    }

    @Override
    public EventRow noticePut(Event.NoticePut put) {
      String line = ScorePrinter.print(put.notice().step());
      int word = line.indexOf(' ');
      return mark(line.substring(0, word), roundGoingOn, line.substring(word + 1));
    }
  }

  private static EventRow mark(String kind, int round, String text) {
    return new EventRow(kind, round, text, Optional.empty());
  }

  private static String kindOf(Kriya kriya) {
    if (kriya instanceof Kriya.Clap) {
      return "clap";
    } else if (kriya instanceof Kriya.Count) {
      return "count";
    }
    return kriya instanceof Kriya.Wave ? "wave" : "hold";
  }

  private static String words(Event.HandBeat hand) {
    String again = hand.again() ? ", again" : "";
    return hand.kriya().words() + (hand.samam() ? ", samam" : "") + again;
  }
}
