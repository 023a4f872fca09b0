import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.nio.file.Path;
import java.util.Locale;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.matraloom.loudness.LoudnessMeter;
import org.matraloom.loudness.TruePeak;

/** Prints the integrated loudness and the true peak of WAV files by the program's own meters. */
final class LoudnessOf {

  private LoudnessOf() {}

  public static void main(String[] files) throws Exception {
    for (String file : files) {
      try (AudioInputStream in = AudioSystem.getAudioInputStream(Path.of(file).toFile())) {
        print(in);
      }
    }
  }

  private static void print(AudioInputStream in) throws Exception {
    AudioFormat format = in.getFormat();
    int channels = format.getChannels();
    int bytes = format.getSampleSizeInBits() / 8;
    LoudnessMeter loudness = LoudnessMeter.of((int) format.getSampleRate(), channels);
    TruePeak peak = new TruePeak(channels);
    float[][] block = new float[channels][1];
    byte[] frame = new byte[bytes * channels];
    DataInputStream data = new DataInputStream(new BufferedInputStream(in, 1 << 16));
    while (true) {
      try {
        data.readFully(frame);
      } catch (EOFException end) {
        break;
      }
      for (int channel = 0; channel < channels; channel++) {
        int value = frame[channel * bytes + bytes - 1];
        for (int at = bytes - 2; at >= 0; at--) {
          value = value << 8 | frame[channel * bytes + at] & 0xff;
        }
        block[channel][0] = value / (float) (1L << 8 * bytes - 1);
      }
      loudness.add(block, 0, 1);
      peak.add(block, 0, 1);
    }
    System.out.printf(Locale.ROOT, "%.3f %.3f%n", loudness.integratedLufs(), peak.dbtp());
  }
}
