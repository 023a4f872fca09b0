package org.matraloom.app;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.matraloom.host.SoundDevice;
import org.matraloom.host.SoundDevices;
import picocli.CommandLine.Option;

/** On which sound device to play. */
final class DeviceOptions {

  @Option(
      names = "--device",
      paramLabel = "NAME",
      description = "Where to play: the number of a device in --devices, or a part of its name.")
  private String device;

  @Option(names = "--devices", help = true, description = "List the sound devices and end.")
  private boolean list;

  Optional<String> device() {
    return Optional.ofNullable(device);
  }

  boolean isListAskedFor() {
    return list;
  }

  static void print(PrintWriter out) {
    List<SoundDevice> devices = SoundDevices.find().list();
    if (devices.isEmpty()) {
      out.println("no sound devices were found");
    }
    for (int i = 0; i < devices.size(); i++) {
      SoundDevice device = devices.get(i);
      String uses =
          device.plays() && device.records()
              ? "plays and records"
              : device.plays() ? "plays" : "records";
      out.println((i + 1) + "  " + device.name() + "  " + uses);
    }
  }
}
