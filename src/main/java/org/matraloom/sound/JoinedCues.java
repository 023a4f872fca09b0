package org.matraloom.sound;

import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import org.matraloom.wav.CuePoint;

/** Named places of one passage after another. */
record JoinedCues(List<Iterable<CuePoint>> parts) implements Iterable<CuePoint> {

  @Override
  public Iterator<CuePoint> iterator() {
    Iterator<Iterable<CuePoint>> rest = parts.iterator();
    return new Iterator<>() {
      private Iterator<CuePoint> current = List.<CuePoint>of().iterator();

      @Override
      public boolean hasNext() {
        while (!current.hasNext() && rest.hasNext()) {
          current = rest.next().iterator();
        }
        return current.hasNext();
      }

      @Override
      public CuePoint next() {
        if (!hasNext()) {
          throw new NoSuchElementException("no more cue points");
        }
        return current.next();
      }
    };
  }
}
