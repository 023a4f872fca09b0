package org.matraloom.retell;

import java.io.IOException;
import org.matraloom.recording.Recording;
import org.matraloom.recording.SoundWindow;

/**
 * A recording made slower, its pitch unchanged: waveform similarity overlap-add.
 *
 * <p>Pieces of the recording are laid over one another with a Hann window, each taken from where
 * the map says, give or take a few milliseconds, so that it goes on as the piece before it would
 * have gone on. Source: W. Verhelst and M. Roelands, "An overlap-add technique based on waveform
 * similarity (WSOLA) for high quality time-scale modification of speech", Proc. IEEE ICASSP 1993,
 * vol. 2, pp. 554-557. Sounds that the map keeps are copied whole.
 */
final class SlowSound implements Recording {

  private static final double HOP_SECONDS = 0.012;

  /** Half a period of the lowest voice, 60 Hz, to either side. */
  private static final double SEEK_SECONDS = 0.0085;

  private static final double SEEK_AT_ENTRY_SECONDS = 0.001;

  /** Similarity is looked for at about this rate first, then exactly. */
  private static final int COARSE_RATE = 12_000;

  private static final double SILENCE = 1e-9;

  private final Recording source;
  private final SoundWindow sound;
  private final SlowMap map;
  private final long lengthFrames;
  private final int hop;
  private final int coarse;
  private final float[] fade;
  private final float[] going;
  private final float[] piece;
  private final float[] ready;

  private long piecesLaid;
  private long centre;
  private int lastKept = -1;
  private int readyFrom;
  private long given;

  /**
   * Prepares a slowed recording; nothing is read yet.
   *
   * @param source the recording from its beginning; closed with this one
   * @param map which moment is heard when
   * @param lengthFrames how long the slowed recording is
   */
  SlowSound(Recording source, SlowMap map, long lengthFrames) {
    int rate = source.ratePerSecond();
    this.source = source;
    this.sound = new SoundWindow(source);
    this.map = map;
    this.lengthFrames = lengthFrames;
    this.hop = (int) Math.round(HOP_SECONDS * rate);
    this.coarse = Math.max(1, rate / COARSE_RATE);
    this.fade = new float[hop];
    for (int i = 0; i < hop; i++) {
      fade[i] = (float) (0.5 - 0.5 * StrictMath.cos(StrictMath.PI * (i + 0.5) / hop));
    }
    this.going = new float[2 * hop];
    this.piece = new float[2 * hop];
    this.ready = new float[hop];
    this.readyFrom = hop;
  }

  @Override
  public int ratePerSecond() {
    return source.ratePerSecond();
  }

  @Override
  public int read(float[] block) throws IOException {
    int count = (int) Math.min(block.length, lengthFrames - given);
    for (int i = 0; i < count; i++) {
      if (readyFrom == hop) {
        layPiece();
        readyFrom = 0;
      }
      block[i] = ready[readyFrom++];
    }
    given += count;
    return count;
  }

  /** Lays the next piece over the end of the one before; a hop of sound is ready then. */
  private void layPiece() throws IOException {
    if (piecesLaid == 0) {
      sound.copy(-hop, piece);
    }
    System.arraycopy(piece, hop, ready, 0, hop);
    piecesLaid++;
    centre = nextCentre();
    sound.copy(centre - hop, piece);
    for (int i = 0; i < hop; i++) {
      ready[i] = ready[i] * (1 - fade[i]) + piece[i] * fade[i];
    }
  }

  private long nextCentre() throws IOException {
    double outSeconds = (double) piecesLaid * hop / ratePerSecond();
    int kept = map.keptAt(outSeconds);
    boolean goesOn = kept >= 0 && kept == lastKept;
    lastKept = kept;
    if (goesOn) {
      return centre + hop;
    }
    long wanted = Math.round(map.inputAt(outSeconds) * ratePerSecond());
    return wanted + shift(wanted, kept >= 0 ? SEEK_AT_ENTRY_SECONDS : SEEK_SECONDS);
  }

  /** How far from where it is wanted the piece is found that continues best. */
  private int shift(long wanted, double seekSeconds) throws IOException {
    int seek = (int) Math.round(seekSeconds * ratePerSecond());
    sound.copy(centre, going);
    float[] around = new float[2 * hop + 2 * seek];
    sound.copy(wanted - hop - seek, around);
    int best = best(around, seek, 0, 2 * seek, coarse);
    return best(around, best, best - coarse, best + coarse, 1) - seek;
  }

  private int best(float[] around, int usual, int from, int to, int step) {
    int best = usual;
    double highest = similarity(around, usual, step);
    for (int at = Math.max(0, from); at <= Math.min(to, around.length - going.length); at += step) {
      double similarity = similarity(around, at, step);
      if (similarity > highest) {
        highest = similarity;
        best = at;
      }
    }
    return best;
  }

  private double similarity(float[] around, int at, int step) {
    double product = 0;
    double energy = SILENCE;
    for (int i = 0; i < going.length; i += step) {
      product += going[i] * around[at + i];
      energy += around[at + i] * around[at + i];
    }
    return product / Math.sqrt(energy);
  }

  @Override
  public void close() throws IOException {
    source.close();
  }
}
