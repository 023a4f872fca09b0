package org.matraloom.mouth;

import org.matraloom.voice.PhoneManner;
import org.matraloom.voice.PhoneSyllable;

/**
 * Finds where a vowel begins.
 *
 * <p>It is where a band has climbed half of the way, as in the beat detector of F. Cummins and R.
 * Port, J. Phonetics 26 (1998) 145-171: the band of the voice and the first formant after a
 * closure, the bands above it where a murmur opens.
 */
final class VowelFinder {

  private static final int MS = Kit.RATE / 1000;
  private static final int RISE_REACH = 150 * MS;
  private static final int TAP_REACH = 70 * MS;
  private static final int BEFORE = 12 * MS;
  private static final int AROUND = 14 * MS;
  private static final int MOST_SETTLING = 12;
  private static final int FAR = 40 * MS;
  private static final int LONGEST_CLOSED = 350 * MS;
  private static final int MOST_STRIKES = 6;
  private static final double AS_STEEP = 0.7;
  private static final double STRUCK = 0.4;
  private static final double PLATEAU = 0.7;
  private static final double CLEAR = 2;

  private final int from;
  private final int to;
  private final BandLevel voice;
  private final BandLevel open;

  /**
   * Prepares to look in a part of a sound.
   *
   * @param voice the level of the voice and the first formant there
   * @param open the level of the bands above
   */
  VowelFinder(int from, int to, BandLevel voice, BandLevel open) {
    this.from = from;
    this.to = to;
    this.voice = voice;
    this.open = open;
  }

  /** The frame at which the vowel begins, not before the release. */
  int find(int release, PhoneSyllable syllable) {
    if (OnsetBand.opensBy(syllable, PhoneManner.TAP)) {
      return afterTap(release);
    }
    BandLevel band = band(syllable);
    int first = Math.max(from, release - BEFORE);
    int highest = band.top(release, Math.min(to, release + RISE_REACH));
    int plateau = release;
    while (plateau < highest && band.at(plateau) < PLATEAU * band.at(highest)) {
      plateau++;
    }
    int top = band.top(plateau, Math.min(highest + 1, plateau + BEFORE));
    int vowel = Math.max(settled(band, halfWay(band, band.bottom(first, top), top)), release);
    int opening = opening(release);
    return band == open && opening - vowel > FAR ? settled(band, opening) : vowel;
  }

  /**
   * Where the mouth opens: the first of the steepest rises of the bands above the voice. A voice
   * that sets in behind closed lips or teeth rises much less there, however long it goes on.
   */
  int opening(int release) {
    int end = Math.min(to, release + LONGEST_CLOSED);
    double steepest = 0;
    for (int at = release; at < end; at++) {
      steepest = Math.max(steepest, rise(at));
    }
    int at = release;
    while (at < end && rise(at) < AS_STEEP * steepest) {
      at++;
    }
    return Math.min(at + AROUND / 2, Math.max(release, end - 1));
  }

  private double rise(int at) {
    return open.at(Math.min(to - 1, at + AROUND)) - open.at(Math.max(from, at - AROUND));
  }

  /** Whether the band rises by 6 dB or more where the vowel begins. */
  boolean isClear(int vowel, PhoneSyllable syllable) {
    BandLevel band = band(syllable);
    int top = band.top(vowel, Math.min(to, vowel + AROUND));
    int bottom = band.bottom(Math.max(from, vowel - AROUND), vowel + 1);
    return band.at(top) >= CLEAR * band.at(bottom);
  }

  private BandLevel band(PhoneSyllable syllable) {
    return OnsetBand.of(syllable) == OnsetBand.OPEN ? open : voice;
  }

  /** The voice dips while the tongue strikes, once or, in a trill, again and again. */
  private int afterTap(int release) {
    int dip = voice.bottom(release, Math.min(to, release + TAP_REACH));
    int top = voice.top(dip, Math.min(to, dip + TAP_REACH));
    for (int strike = 1; strike < MOST_STRIKES; strike++) {
      int next = voice.bottom(top, Math.min(to, top + TAP_REACH));
      int nextTop = voice.top(next, Math.min(to, next + TAP_REACH));
      boolean strikes =
          voice.at(next) < STRUCK * Math.min(voice.at(top), voice.at(nextTop))
              && voice.at(nextTop) > PLATEAU * voice.at(top);
      if (!strikes) {
        break;
      }
      dip = next;
      top = nextTop;
    }
    int low = lowBefore(top, dip);
    return settled(voice, halfWay(voice, voice.bottom(Math.max(dip, low - AROUND), low + 1), top));
  }

  /** The last place at which the voice is struck down before a top; the dip itself if none is. */
  private int lowBefore(int top, int dip) {
    int at = top;
    while (at > dip && voice.at(at) >= STRUCK * voice.at(top)) {
      at--;
    }
    return at;
  }

  /**
   * Half of the way in the time around a place, again and again until it stays: a rise that goes on
   * for long is taken where it is steep.
   */
  private int settled(BandLevel band, int place) {
    int at = place;
    for (int time = 0; time < MOST_SETTLING; time++) {
      int top = band.top(Math.max(from, at - AROUND), Math.min(to, at + AROUND));
      int next = halfWay(band, band.bottom(Math.max(from, at - AROUND), top), top);
      if (next == at) {
        break;
      }
      at = next;
    }
    return Math.abs(at - place) > FAR ? place : at;
  }

  private static int halfWay(BandLevel band, int bottom, int top) {
    double middle = (band.at(top) + band.at(bottom)) / 2;
    int at = bottom;
    while (at < top && band.at(at) < middle) {
      at++;
    }
    return at;
  }
}
