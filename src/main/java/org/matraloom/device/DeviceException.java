package org.matraloom.device;

import java.io.IOException;

/** A sound device cannot be used; the message says why, and the advice what helps. */
public final class DeviceException extends IOException {

  private static final long serialVersionUID = 1L;

  private final transient DeviceAdvice advice;

  /**
   * A device that failed while it was in use, and no option helps.
   *
   * @param message what went wrong
   */
  public DeviceException(String message) {
    this(message, DeviceAdvice.to(DeviceAdvice.Kind.NONE));
  }

  DeviceException(String message, DeviceAdvice advice) {
    super(message);
    this.advice = advice;
  }

  DeviceException(String message, DeviceAdvice advice, Throwable cause) {
    super(message, cause);
    this.advice = advice;
  }

  /**
   * What helps.
   *
   * @return the advice, to be put in words by the commands
   */
  public DeviceAdvice advice() {
    return advice;
  }
}
