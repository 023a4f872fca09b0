package org.matraloom.app.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.matraloom.device.SoundDevice;
import org.matraloom.device.SoundDevices;
import picocli.CommandLine.Option;

/** On which sound device to play. */
public final class DeviceOptions {

  @Option(
      names = "--device",
      paramLabel = "NAME",
      description = "Where to play: the number of a device in --devices, or a part of its name.")
  private String device;

  @Option(names = "--devices", help = true, description = "List the sound devices and end.")
  private boolean list;

  /**
   * The name of the device.
   *
   * @return a part of its name as it was given; empty for the usual one
   */
  public Optional<String> device() {
    return Optional.ofNullable(device);
  }

  /**
   * Whether the devices are to be listed and nothing is to be played.
   *
   * @return whether that option was given
   */
  public boolean isListAskedFor() {
    return list;
  }

  /**
   * Lists the sound devices of this machine.
   *
   * @param out where they are listed
   */
  public static void print(PrintWriter out) {
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
