package org.matraloom.score;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Queue;
import org.matraloom.time.Ratio;

/**
 * Says a phrase one utterance at a time, without ever holding the whole of it.
 *
 * <p>Memory is bounded by the nesting of the score, not by its length. Positions are exact, so
 * adding them up loses nothing.
 */
final class Recitation implements Iterator<Utterance> {

  private static final class Frame {
    private final List<Element> elements;
    private final int nadai;
    private final Ratio speed;
    private final int depth;
    private final Optional<String> phrase;
    private int next;
    private int timesLeft;

    Frame(Sequence sequence, int nadai, Ratio speed, int depth, int times) {
      this(sequence, nadai, speed, depth, times, Optional.empty());
    }

    Frame(
        Sequence sequence, int nadai, Ratio speed, int depth, int times, Optional<String> phrase) {
      this.elements = sequence.elements();
      this.phrase = phrase;
      this.nadai = nadai;
      this.speed = speed;
      this.depth = depth;
      this.timesLeft = times;
    }

    Ratio matra() {
      return Ratio.ONE.dividedBy(speed.times(nadai));
    }
  }

  private final Map<String, Sequence> phrases;
  private final int kalamDensity;
  private final Deque<Frame> stack = new ArrayDeque<>();
  private final Queue<Utterance> ready = new ArrayDeque<>();
  private final Sayer sayer = new Sayer();
  private Ratio now = Ratio.ZERO;

  private Recitation(Map<String, Sequence> phrases, int kalamDensity) {
    this.phrases = phrases;
    this.kalamDensity = kalamDensity;
  }

  /**
   * Begins to say a phrase.
   *
   * @param phrase its name
   * @param phrases all phrases of the composition
   * @param nadai matras a beat in the first kalam
   * @param kalam 1, 2 or 3
   * @return the utterances, from beat 0 of the round
   */
  static Recitation of(String phrase, Map<String, Sequence> phrases, int nadai, int kalam) {
    Recitation recitation = new Recitation(phrases, Composition.density(kalam));
    Ratio speed = Ratio.of(recitation.kalamDensity);
    recitation.stack.push(new Frame(phrases.get(phrase), nadai, speed, 0, 1));
    return recitation;
  }

  /**
   * Begins to say the phrase of a round.
   *
   * @param round which round
   * @param composition the composition it belongs to
   * @return the utterances, from beat 0 of the round
   */
  static Recitation of(Span.Round round, Composition composition) {
    return of(round.phrase(), composition.phrases(), round.nadai(), round.kalam());
  }

  @Override
  public boolean hasNext() {
    while (ready.isEmpty() && !stack.isEmpty()) {
      advance();
    }
    return !ready.isEmpty();
  }

  @Override
  public Utterance next() {
    if (!hasNext()) {
      throw new NoSuchElementException("the phrase has been said");
    }
    return ready.remove();
  }

  private void advance() {
    Frame frame = stack.peek();
    if (frame.next == frame.elements.size()) {
      frame.next = 0;
      frame.timesLeft--;
      if (frame.timesLeft <= 0) {
        stack.pop();
        leave(frame);
      }
      return;
    }
    sayer.frame = frame;
    frame.elements.get(frame.next++).told(sayer);
  }

  private void leave(Frame left) {
    if (left.phrase.isPresent()) {
      ready.add(new Utterance.Leave(now, left.phrase.get(), left.depth));
    }
    if (!stack.isEmpty()) {
      changeDensity(left.nadai, stack.peek().nadai);
    }
  }

  private void changeDensity(int fromNadai, int toNadai) {
    if (fromNadai != toNadai) {
      ready.add(new Utterance.Density(now, toNadai * kalamDensity));
    }
  }

  /** Says an element; false for one that lasts no time by itself. */
  private final class Sayer implements ElementVisitor<Boolean> {
    private Frame frame;

    @Override
    public Boolean word(Element.Word word) {
      for (Sollu sollu : word.sollus()) {
        sound(sollu, frame.matra());
      }
      return true;
    }

    @Override
    public Boolean karvai(Element.Karvai karvai) {
      ring(frame.matra().times(karvai.matras()));
      return true;
    }

    @Override
    public Boolean silence(Element.Silence silence) {
      ready.add(new Utterance.Quiet(now, frame.matra()));
      now = now.plus(frame.matra());
      return true;
    }

    @Override
    public Boolean group(Element.Group group) {
      GroupWords words = group.words();
      Ratio beats = frame.matra().times(group.hold() * words.size());
      ready.add(new Utterance.GroupHead(now, group.size(), group.hold(), beats));
      for (int index = 0; index < words.sollus().size(); index++) {
        int held = group.hold() * words.matras().get(index) - 1;
        sound(words.sollus().get(index), frame.matra());
        if (held > 0) {
          ring(frame.matra().times(held));
        }
      }
      if (group.karvai() > 0) {
        ring(frame.matra().times(group.karvai()));
      }
      return true;
    }

    @Override
    public Boolean faster(Element.Faster faster) {
      Ratio speed = frame.speed.times(faster.factor());
      stack.push(new Frame(faster.body(), frame.nadai, speed, frame.depth, 1));
      return false;
    }

    @Override
    public Boolean repeat(Element.Repeat repeat) {
      stack.push(new Frame(repeat.body(), frame.nadai, frame.speed, frame.depth, repeat.times()));
      return false;
    }

    @Override
    public Boolean innerNadai(Element.InnerNadai inner) {
      stack.push(new Frame(inner.body(), inner.nadai(), frame.speed, frame.depth, 1));
      changeDensity(frame.nadai, inner.nadai());
      return false;
    }

    @Override
    public Boolean reference(Element.Reference reference) {
      int depth = frame.depth + 1;
      ready.add(new Utterance.Entry(now, reference.name(), depth));
      Sequence body = phrases.get(reference.name());
      Optional<String> name = Optional.of(reference.name());
      stack.push(new Frame(body, frame.nadai, frame.speed, depth, 1, name));
      return false;
    }

    @Override
    public Boolean bar(Element.Bar bar) {
      ready.add(new Utterance.Claim(now, bar));
      return false;
    }

    @Override
    public Boolean breathWish(Element.BreathWish wish) {
      ready.add(new Utterance.Wish(now, wish));
      return false;
    }
  }

  private void sound(Sollu sollu, Ratio beats) {
    ready.add(new Utterance.Sound(now, beats, sollu));
    now = now.plus(beats);
  }

  private void ring(Ratio beats) {
    ready.add(new Utterance.Ring(now, beats));
    now = now.plus(beats);
  }
}
