package org.matraloom.app.practise;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.DeviceOptions;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.InputOption;
import org.matraloom.app.cli.UserError;
import org.matraloom.device.AudioIn;
import org.matraloom.device.AudioOut;
import org.matraloom.device.Calibrator;
import org.matraloom.device.RoundTrip;
import org.matraloom.device.RoundTrips;
import org.matraloom.device.SoundDevices;
import org.matraloom.wav.PcmFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Measures the delay from output to input. */
@Command(
    name = "calibrate",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Measure how long it takes from what is played to what is recorded, and keep it for takes.",
      "Connect the output with the input by a cable, or hold the microphone to the speaker or the",
      "headphones. Take the headphones off: 20 clicks are played in 14 seconds."
    },
    footer = {"", "Example: matraloom calibrate"})
public final class CalibrateCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Mixin private DeviceOptions device;

  @Mixin private InputOption input;

  @Option(
      names = "--rate",
      paramLabel = "HZ",
      defaultValue = "48000",
      description = "Frames a second: 44100, 48000 or 96000 (default ${DEFAULT-VALUE}).")
  private int rate;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    if (device.isListAskedFor()) {
      DeviceOptions.print(out);
      return ExitCode.DONE;
    }
    RoundTrip trip = measure(format());
    RoundTrips store = RoundTrips.ofUser();
    store.keep(trip);
    out.printf(
        Locale.ROOT,
        "from %s to %s at %d frames a second: %.2f ms, spread %.2f ms over %d clicks%n",
        trip.output(),
        trip.input(),
        trip.ratePerSecond(),
        trip.ms(),
        trip.spreadMs(),
        Calibrator.clicks());
    out.println("kept in " + store.file());
    return ExitCode.DONE;
  }

  private RoundTrip measure(PcmFormat format) throws IOException {
    SoundDevices devices = SoundDevices.find();
    Optional<String> from = device.device();
    Optional<String> to = input.input();
    try (AudioOut played = devices.openOut(from, format, SoundDevices.SAFE_MS);
        AudioIn heard = devices.openIn(to, format)) {
      return new Calibrator(format)
          .measure(played, heard, devices.outName(from), devices.inName(to));
    }
  }

  private PcmFormat format() {
    try {
      return new PcmFormat(rate, 16, 1);
    } catch (IllegalArgumentException notOffered) {
      throw new UserError(notOffered.getMessage());
    }
  }
}
