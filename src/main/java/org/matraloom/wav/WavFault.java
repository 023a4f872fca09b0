package org.matraloom.wav;

import java.io.IOException;

/** What is wrong with a WAVE file, as a sentence without its subject. */
public final class WavFault extends IOException {

  private static final long serialVersionUID = 1;

  WavFault(String fault) {
    super(fault);
  }
}
