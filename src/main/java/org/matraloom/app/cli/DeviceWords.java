package org.matraloom.app.cli;

import java.util.stream.Collectors;
import org.matraloom.device.DeviceAdvice;
import org.matraloom.device.DeviceException;

/** Says in one sentence why a sound device cannot be used, and which option helps. */
final class DeviceWords {

  private DeviceWords() {}

  static String of(DeviceException problem) {
    return problem.getMessage() + advice(problem.advice());
  }

  static String advice(DeviceAdvice advice) {
    return switch (advice.kind()) {
      case NONE -> "";
      case CONNECT -> "; connect one and try again (play --devices lists what is found)";
      case FREE -> "; close that program, or choose another device with --device";
      case PLUG_IN_OUTPUT -> pluggedInOr("--device");
      case PLUG_IN_INPUT -> pluggedInOr("--input");
      case OTHER_RATE ->
          advice.ratesPerSecond().stream()
              .map(rate -> "--rate " + rate)
              .collect(Collectors.joining(" or ", "; it takes 16 bits with ", ""));
    };
  }

  private static String pluggedInOr(String option) {
    return "; plug it in or choose another device with " + option + ", and start again";
  }
}
