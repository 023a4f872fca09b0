import be.tarsos.dsp.AudioDispatcher;
import be.tarsos.dsp.AudioEvent;
import be.tarsos.dsp.AudioProcessor;
import be.tarsos.dsp.io.jvm.AudioDispatcherFactory;
import be.tarsos.dsp.onsets.ComplexOnsetDetector;
import be.tarsos.dsp.onsets.OnsetHandler;
import be.tarsos.dsp.onsets.PercussionOnsetDetector;
import java.io.File;
import java.util.Locale;

/**
 * Prints what TarsosDSP's own onset detectors find, for the crosscheck: one line for a file and a
 * setting, "NAME|FILE|SECONDS SECONDS ...". Run with the libraries of the build on the class path.
 */
class TarsosOnsets {

  private static final int SIZE = 512;

  public static void main(String[] files) throws Exception {
    for (String file : files) {
      for (double threshold : new double[] {0.1, 0.2, 0.3, 0.5, 0.8, 1.2}) {
        for (double interval : new double[] {0.004, 0.08}) {
          StringBuilder found = new StringBuilder();
          OnsetHandler add = (time, salience) -> found.append(String.format(Locale.ROOT, " %.4f", time));
          AudioDispatcher dispatcher =
              AudioDispatcherFactory.fromFile(new File(file), SIZE, SIZE / 2);
          ComplexOnsetDetector detector = new ComplexOnsetDetector(SIZE, threshold, interval, -70);
          detector.setHandler(add);
          run(dispatcher, detector, "complex t=" + threshold + " M=" + interval, file, found);
        }
      }
      for (double sensitivity : new double[] {20, 40, 60, 80}) {
        for (double threshold : new double[] {4, 8}) {
          StringBuilder found = new StringBuilder();
          OnsetHandler add = (time, salience) -> found.append(String.format(Locale.ROOT, " %.4f", time));
          AudioDispatcher dispatcher = AudioDispatcherFactory.fromFile(new File(file), SIZE, 0);
          PercussionOnsetDetector detector =
              new PercussionOnsetDetector(
                  dispatcher.getFormat().getSampleRate(), SIZE, add, sensitivity, threshold);
          run(dispatcher, detector, "percussion s=" + sensitivity + " t=" + threshold, file, found);
        }
      }
    }
  }

  private static void run(
      AudioDispatcher dispatcher,
      AudioProcessor detector,
      String name,
      String file,
      StringBuilder found) {
    dispatcher.addAudioProcessor(detector);
    dispatcher.run();
    System.out.println("TarsosDSP " + name + "|" + file + "|" + found);
  }
}
