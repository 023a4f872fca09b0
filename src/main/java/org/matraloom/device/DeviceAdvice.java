package org.matraloom.device;

import java.util.List;

/**
 * What helps when a sound device cannot be used.
 *
 * @param kind what is to be done
 * @param ratesPerSecond the frames a second that the device takes; empty unless another rate helps
 */
public record DeviceAdvice(Kind kind, List<Integer> ratesPerSecond) {

  /** What is to be done. */
  public enum Kind {
    /** Nothing more than the message says. */
    NONE,
    /** Connect a device. */
    CONNECT,
    /** Close the program that uses it, or choose another device. */
    FREE,
    /** Plug the output in, or choose another. */
    PLUG_IN_OUTPUT,
    /** Plug the input in, or choose another. */
    PLUG_IN_INPUT,
    /** Ask for one of the rates that the device takes. */
    OTHER_RATE
  }

  /** Copies the list. */
  public DeviceAdvice {
    ratesPerSecond = List.copyOf(ratesPerSecond);
  }

  static DeviceAdvice to(Kind kind) {
    return new DeviceAdvice(kind, List.of());
  }
}
