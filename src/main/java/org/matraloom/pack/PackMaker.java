package org.matraloom.pack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import org.matraloom.breath.BreathPlanner;
import org.matraloom.breath.BreathTimeline;
import org.matraloom.loudness.Levels;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.SpokenLeadIn;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Performance;
import org.matraloom.sound.Companion;
import org.matraloom.sound.LevelledTrack;
import org.matraloom.sound.MixPart;
import org.matraloom.sound.Passage;
import org.matraloom.sound.Renderer;
import org.matraloom.sound.SrutiDrone;
import org.matraloom.sound.Track;
import org.matraloom.voice.SolluVoice;
import org.matraloom.wav.Mp3File;
import org.matraloom.wav.PcmFormat;

/**
 * Makes a set in a folder, several tracks at a time.
 *
 * <p>A file is there only when it is whole. Made again in the same folder from the same order, a
 * set keeps what is there and makes what is missing; the result is the same to the last byte.
 */
public final class PackMaker {

  private static final PcmFormat FORMAT = PcmFormat.USUAL;

  private final PackOrder order;
  private final Path folder;
  private final Supplier<SolluVoice> voices;
  private final List<PackTrack> tracks;
  private final Optional<SrutiDrone> drone;
  private final long[] doneFrames;
  private final PackBeside beside;
  private long totalFrames;

  /**
   * Prepares a set whose tracks have no words before a start off samam.
   *
   * @param order what is wanted
   * @param folder where it goes; it must exist
   * @param voices gives each track a voice of its own, at 48000 frames a second
   */
  public PackMaker(PackOrder order, Path folder, Supplier<SolluVoice> voices) {
    this(order, folder, voices, PackBeside.NOTHING);
  }

  /**
   * Prepares a set.
   *
   * @param order what is wanted
   * @param folder where it goes; it must exist
   * @param voices gives each track a voice of its own, at 48000 frames a second
   * @param beside what is heard beside the voice
   */
  public PackMaker(PackOrder order, Path folder, Supplier<SolluVoice> voices, PackBeside beside) {
    this.beside = beside;
    this.order = order;
    this.folder = folder;
    this.voices = voices;
    this.tracks = PackList.of(order);
    this.drone = order.sruti().map(tonic -> new SrutiDrone(tonic, FORMAT.ratePerSecond()));
    this.doneFrames = new long[tracks.size()];
  }

  /**
   * The tracks of the set.
   *
   * @return in order
   */
  public List<PackTrack> tracks() {
    return List.copyOf(tracks);
  }

  /**
   * Takes the folder for this set, so that nothing is written into the folder of another.
   *
   * @throws IOException if the disk fails
   * @throws IllegalArgumentException if the folder holds another set
   */
  public void claim() throws IOException {
    new PackManifest(order, tracks, beside).claim(folder);
  }

  /**
   * Makes what is missing, then the list and the page.
   *
   * @param threads how many tracks are made at a time, at least 1
   * @param progress is told how far the set has come
   * @return how many sound files were made, those that were kept left out
   * @throws IOException if the disk fails
   * @throws IllegalArgumentException if the folder holds another set
   */
  public int make(int threads, PackProgress progress) throws IOException {
    PackManifest manifest = new PackManifest(order, tracks, beside);
    manifest.claim(folder);
    removeLeftovers();
    totalFrames = tracks.stream().mapToLong(this::lengthFrames).sum();
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Made>> jobs = new ArrayList<>();
      for (PackTrack track : tracks) {
        jobs.add(workers.submit(() -> make(track, progress)));
      }
      List<Optional<Levels>> levels = new ArrayList<>();
      int made = 0;
      for (Future<Made> job : jobs) {
        levels.add(job.get().levels);
        made += job.get().files;
      }
      manifest.write(folder, levels);
      new PackPage(order, tracks).write(folder);
      return made;
    } catch (ExecutionException failure) {
      throw rethrown(failure.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException("the set was stopped; start again to complete it", stopped);
    } finally {
      workers.shutdownNow();
    }
  }

  private record Made(Optional<Levels> levels, int files) {}

  private Made make(PackTrack track, PackProgress progress) throws IOException {
    Path mp3 = folder.resolve(track.mp3Name());
    boolean keeps = order.files().hasWave();
    boolean encodes = order.files().hasMp3() && !Files.exists(mp3);
    Path wave = folder.resolve(keeps ? track.waveName() : "." + track.name() + ".wav.part");
    int files = 0;
    if (!Files.exists(wave) && (keeps || encodes)) {
      new LevelledTrack(track(track), FORMAT, LevelledTrack.USUAL_LUFS, PackTags.info(order, track))
          .write(wave, (done, total) -> tell(track, done, progress));
      files += keeps ? 1 : 0;
    }
    tell(track, lengthFrames(track), progress);
    if (encodes) {
      Mp3File.encode(wave, mp3, PackTags.tags(order, track, tracks.size()));
      files++;
    }
    if (!keeps) {
      Files.deleteIfExists(wave);
      return new Made(Optional.empty(), files);
    }
    return new Made(Optional.of(Levels.of(wave)), files);
  }

  private Track track(PackTrack track) {
    Timeline heard = timeline(track);
    List<Companion> companions =
        beside.drum().stream().map(drum -> new Companion(MixPart.DRUM, heard, drum)).toList();
    Passage passage = new Passage(heard, track.mix().mix(), companions);
    return new Track(List.of(passage), voices.get(), drone);
  }

  private long lengthFrames(PackTrack track) {
    Timeline timeline = timeline(track);
    return Renderer.lengthFrames(timeline, timeline.clock(FORMAT.ratePerSecond()));
  }

  private Timeline timeline(PackTrack track) {
    Performance performance = Performance.of(track.composition());
    Timeline counted = ScoreTimeline.of(performance, order.countInAvartanas());
    Timeline score = SpokenLeadIn.before(counted, beside.leadIn());
    return order
        .breaths()
        .map(settings -> BreathPlanner.plan(performance, settings))
        .<Timeline>map(plan -> new BreathTimeline(score, plan))
        .orElse(score);
  }

  private synchronized void tell(PackTrack track, long frames, PackProgress progress) {
    doneFrames[track.number() - 1] = frames;
    long done = 0;
    for (long each : doneFrames) {
      done += each;
    }
    progress.made(done, totalFrames);
  }

  /** What an interrupted run has left half written. */
  private void removeLeftovers() throws IOException {
    for (PackTrack track : tracks) {
      try (DirectoryStream<Path> leftovers =
          Files.newDirectoryStream(folder, "." + track.name() + ".*part")) {
        for (Path leftover : leftovers) {
          Files.deleteIfExists(leftover);
        }
      }
    }
  }

  private static IOException rethrown(Throwable cause) {
    if (cause instanceof IOException failure) {
      return failure;
    } else if (cause instanceof UncheckedIOException failure) {
      return failure.getCause();
    } else if (cause instanceof RuntimeException fault) {
      throw fault;
    } else if (cause instanceof Error error) {
      throw error;
    }
    return new IOException(cause);
  }
}
