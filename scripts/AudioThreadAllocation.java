import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.matraloom.breath.BreathSettings;
import org.matraloom.live.LivePiece;
import org.matraloom.live.LivePlayer;
import org.matraloom.device.SoundDevices;
import org.matraloom.notation.ScoreReader;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.device.AudioOut;
import org.matraloom.voice.FormantVoice;
import org.matraloom.sound.Mix;
import org.matraloom.wav.PcmFormat;
import org.matraloom.voice.VoiceSettings;

/**
 * Plays on the default device and tells what the audio thread allocates in steady state.
 *
 * <p>Where compiled code reaches a call for the first time, the virtual machine makes a few strings
 * while it links it, on a slow machine later than 12 s after the start; hence the long warm-up.
 */
final class AudioThreadAllocation {

  private static final int WARM_UP_MS = 30_000;
  private static final int MEASURED_MS = 10_000;

  private AudioThreadAllocation() {}

  public static void main(String[] arguments) throws Exception {
    Path score = Path.of("samples-synth", "gutter-song.loom");
    Composition piece = ScoreReader.read(score, Lexicon.standard()).composition().orElseThrow();
    PcmFormat format = PcmFormat.USUAL;
    LivePiece live =
        new LivePiece(
            List.of(ScoreTimeline.of(Performance.of(piece), 1)),
            1,
            new FormantVoice(
                format.ratePerSecond(), Lexicon.standard(), VoiceSettings.USUAL),
            Optional.empty(),
            format,
            BreathSettings.study());
    AudioOut out = SoundDevices.find().openOut(Optional.empty(), format, SoundDevices.SAFE_MS);
    try (LivePlayer player = new LivePlayer(live, Optional.empty(), out)) {
      player.open();
      player.startFromTheBeginning(Mix.lesson());
      ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
      Thread.sleep(WARM_UP_MS);
      long thread = audioThread(threads);
      long before = threads.getThreadAllocatedBytes(thread);
      long from = out.playedFrames();
      Thread.sleep(MEASURED_MS);
      long bytes = threads.getThreadAllocatedBytes(thread) - before;
      long blocks = (out.playedFrames() - from) * 100 / format.ratePerSecond();
      System.out.println("bytes=" + bytes + " seconds=" + MEASURED_MS / 1000 + " blocks=" + blocks);
    }
  }

  private static long audioThread(ThreadMXBean threads) {
    for (ThreadInfo info : threads.getThreadInfo(threads.getAllThreadIds())) {
      if (info != null && info.getThreadName().equals("matraloom-audio")) {
        return info.getThreadId();
      }
    }
    throw new IllegalStateException("no audio thread");
  }
}
