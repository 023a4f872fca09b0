package org.matraloom.recording;

import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.file.Path;
import org.matraloom.wav.WavFault;
import org.matraloom.wav.WavLayout;

/** A WAVE file of any kind that {@link WavLayout} reads. */
final class WavRecording extends PcmRecording {

  WavRecording(Path file) throws IOException {
    super(file, ByteOrder.LITTLE_ENDIAN);
  }

  @Override
  void readHeader() throws IOException {
    try {
      WavLayout layout = WavLayout.of(channel());
      format(layout.kind(), ByteOrder.LITTLE_ENDIAN, layout.channels(), layout.ratePerSecond());
      data(layout.dataStart(), layout.dataBytes());
    } catch (WavFault wrong) {
      throw fault(wrong.getMessage());
    }
  }
}
