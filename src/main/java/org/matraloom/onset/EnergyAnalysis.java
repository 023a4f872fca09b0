package org.matraloom.onset;

import be.tarsos.dsp.AudioDispatcher;
import be.tarsos.dsp.AudioEvent;
import be.tarsos.dsp.AudioProcessor;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.matraloom.recording.Recording;

/** Finds the energies of a whole recording at once, on all processors. */
final class EnergyAnalysis implements AudioProcessor {

  /** So many windows are gathered before all processors share them. */
  private static final int GATHERED_STEPS = 512;

  private final BandEnergies energies;
  private final int windowFrames;
  private final float[] gathered;
  private final float[] found = new float[GATHERED_STEPS * BandEnergies.BANDS];
  private final List<WindowAnalysis> workers;
  private int waiting;

  /**
   * Prepares the transforms.
   *
   * @param energies where they go
   */
  EnergyAnalysis(BandEnergies energies) {
    this.energies = energies;
    windowFrames = energies.hearing().windowFrames();
    gathered = new float[GATHERED_STEPS * windowFrames];
    workers =
        Stream.generate(energies.hearing()::analysis)
            .limit(Runtime.getRuntime().availableProcessors())
            .toList();
  }

  /**
   * Runs a whole recording through the dispatcher.
   *
   * @return how many frames it has
   * @throws IOException if it cannot be read to its end
   */
  long run(Recording recording) throws IOException {
    RecordingStream stream = new RecordingStream(recording, windowFrames);
    AudioDispatcher dispatcher =
        new AudioDispatcher(stream, windowFrames, windowFrames - energies.hearing().stepFrames());
    dispatcher.setZeroPadFirstBuffer(true);
    dispatcher.addAudioProcessor(this);
    dispatcher.run();
    if (stream.failure().isPresent()) {
      throw stream.failure().get();
    }
    return stream.frames();
  }

  @Override
  public boolean process(AudioEvent event) {
    float[] buffer = event.getFloatBuffer();
    energies.loudness(buffer);
    System.arraycopy(buffer, 0, gathered, waiting * windowFrames, windowFrames);
    waiting++;
    if (waiting == GATHERED_STEPS) {
      analyse();
    }
    return true;
  }

  @Override
  public void processingFinished() {
    analyse();
  }

  /** Every window for itself, so it does not matter which processor takes which. */
  private void analyse() {
    int share = (waiting + workers.size() - 1) / workers.size();
    IntStream.range(0, workers.size())
        .parallel()
        .forEach(
            worker -> {
              int end = Math.min(waiting, (worker + 1) * share);
              for (int step = worker * share; step < end; step++) {
                workers
                    .get(worker)
                    .put(gathered, step * windowFrames, found, step * BandEnergies.BANDS);
              }
            });
    for (int step = 0; step < waiting; step++) {
      energies.add(found, step * BandEnergies.BANDS);
    }
    waiting = 0;
  }
}
