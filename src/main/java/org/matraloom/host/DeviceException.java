package org.matraloom.host;

import java.io.IOException;

/** A sound device cannot be used; the message says why and what to do, in one sentence. */
public final class DeviceException extends IOException {

  private static final long serialVersionUID = 1L;

  DeviceException(String message) {
    super(message);
  }

  DeviceException(String message, Throwable cause) {
    super(message, cause);
  }
}
