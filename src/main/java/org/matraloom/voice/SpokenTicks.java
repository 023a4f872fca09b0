package org.matraloom.voice;

import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Stress;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/**
 * Subdivision words spoken under a piece in place of its ticks: takadimi in four, takatakita in
 * five.
 *
 * @param voice says them
 * @param lexicon gives the usual words for a beat of so many matras
 */
public record SpokenTicks(SolluVoice voice, Lexicon lexicon) {

  /** Whole beats of the nadais, and of four in the second kalam (common practice). */
  private static final Map<Integer, String> BEATS =
      Map.of(
          1, "ta",
          2, "taka",
          3, "takita",
          4, "takadimi",
          5, "takatakita",
          7, "takitatakadimi",
          8, "takadimitakajunu",
          9, "takadimitakatakita");

  /** Words are heard at a lower level than clicks would need, but above them. */
  public static final double LEVEL_DB = 6;

  /**
   * The ticks of a timeline as words.
   *
   * @param timeline the timeline
   * @return the words, in order
   */
  public Iterator<Event.SolluSaid> words(Timeline timeline) {
    Iterator<Event> events = timeline.iterator();
    return new Iterator<>() {
      private Optional<Event.SolluSaid> next = pull();

      private Optional<Event.SolluSaid> pull() {
        while (events.hasNext()) {
          if (events.next() instanceof Event.Tick tick) {
            return Optional.of(word(tick));
          }
        }
        return Optional.empty();
      }

      @Override
      public boolean hasNext() {
        return next.isPresent();
      }

      @Override
      public Event.SolluSaid next() {
        Event.SolluSaid word = next.orElseThrow();
        next = pull();
        return word;
      }
    };
  }

  private Event.SolluSaid word(Event.Tick tick) {
    List<Sollu> words = words(tick.matrasPerBeat());
    Sollu sollu = words.get(Math.floorMod(indexInBeat(tick), words.size()));
    Spoken word = Spoken.aside(tick.beat(), sollu, tick.matrasPerBeat(), tick.round());
    return new Event.SolluSaid(word, Stress.NONE);
  }

  /** A whole beat of so many matras; a faster kalam says the same word again. */
  private List<Sollu> words(int matras) {
    String beat = BEATS.get(matras);
    if (beat == null && matras % 2 == 0) {
      return words(matras / 2);
    }
    return Optional.ofNullable(beat)
        .flatMap(lexicon::split)
        .filter(words -> words.size() == matras)
        .orElseGet(() -> lexicon.words(Math.min(matras, Lexicon.LARGEST_GROUP)));
  }

  /** The word begins on the beat; where the matras lie off the beat, with the first matra. */
  private static int indexInBeat(Event.Tick tick) {
    Ratio inBeat = tick.beat().modulo(Ratio.ONE).times(tick.matrasPerBeat());
    long index = inBeat.den() == 1 ? inBeat.num() : tick.matra();
    return (int) Math.floorMod(index, (long) tick.matrasPerBeat());
  }
}
