package org.matraloom.device;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.Line;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.SourceDataLine;
import javax.sound.sampled.TargetDataLine;
import org.matraloom.wav.PcmFormat;

/** Finds and opens the sound devices of this machine. */
public final class SoundDevices {

  /** Enough in the device for a machine that is busy with other things, in milliseconds. */
  public static final int SOON_MS = 140;

  /** Enough for a machine that is very busy, where a key need not be heard at once. */
  public static final int SAFE_MS = 350;

  private static final int[] RATES = {48_000, 44_100, 96_000};

  private final List<Mixer> mixers;

  SoundDevices(List<Mixer> mixers) {
    this.mixers = mixers;
  }

  /**
   * Looks for devices; the first one that can do what is asked is the default.
   *
   * @return what there is at this moment
   */
  public static SoundDevices find() {
    return new SoundDevices(
        Arrays.stream(AudioSystem.getMixerInfo())
            .map(AudioSystem::getMixer)
            .filter(mixer -> plays(mixer) || records(mixer))
            .toList());
  }

  /**
   * The devices in the order of the system.
   *
   * @return possibly none
   */
  public List<SoundDevice> list() {
    return mixers.stream()
        .map(mixer -> new SoundDevice(name(mixer), plays(mixer), records(mixer)))
        .toList();
  }

  /**
   * Opens a device to play.
   *
   * @param device its number in the list, from 1, or a part of its name; empty for the default
   * @param format how samples are handed over
   * @param heldMs how much the device is kept filled as long as it does not run dry, in
   *     milliseconds, up to 1,500; less is sooner heard, more is safer
   * @return the open device, silent until something is written
   * @throws DeviceException if there is none, it is busy, or it cannot take the format
   */
  public AudioOut openOut(Optional<String> device, PcmFormat format, int heldMs)
      throws DeviceException {
    Mixer mixer = choose(device, SourceDataLine.class, "play");
    SourceDataLine line = open(mixer, SourceDataLine.class, format, LineOut.BUFFER_MS);
    return new LineOut(line, name(mixer), heldMs, LineOut.LONGEST_STALL_MS);
  }

  /**
   * Opens a device to record.
   *
   * @param device its number in the list, from 1, or a part of its name; empty for the default
   * @param format how samples are taken
   * @return the open device, which captures from now on
   * @throws DeviceException if there is none, it is busy, or it cannot take the format
   */
  public AudioIn openIn(Optional<String> device, PcmFormat format) throws DeviceException {
    Mixer mixer = choose(device, TargetDataLine.class, "record");
    TargetDataLine line = open(mixer, TargetDataLine.class, format, LineIn.BUFFER_MS);
    return new LineIn(line, name(mixer));
  }

  /**
   * The name of the device that would be opened to play.
   *
   * @param device as for {@link #openOut}
   * @return its name in the list
   * @throws DeviceException if there is none
   */
  public String outName(Optional<String> device) throws DeviceException {
    return name(choose(device, SourceDataLine.class, "play"));
  }

  /**
   * The name of the device that would be opened to record.
   *
   * @param device as for {@link #openIn}
   * @return its name in the list
   * @throws DeviceException if there is none
   */
  public String inName(Optional<String> device) throws DeviceException {
    return name(choose(device, TargetDataLine.class, "record"));
  }

  private Mixer choose(Optional<String> device, Class<? extends DataLine> kind, String purpose)
      throws DeviceException {
    List<Mixer> able = mixers.stream().filter(mixer -> can(mixer, kind)).toList();
    if (able.isEmpty()) {
      throw new DeviceException(
          "this machine has no sound device that can " + purpose,
          DeviceAdvice.to(DeviceAdvice.Kind.CONNECT));
    }
    if (device.isEmpty()) {
      return able.get(0);
    }
    String wanted = device.get().strip().toLowerCase(Locale.ROOT);
    for (int i = 0; i < mixers.size(); i++) {
      Mixer mixer = mixers.get(i);
      boolean named = name(mixer).toLowerCase(Locale.ROOT).contains(wanted);
      if (able.contains(mixer) && (wanted.equals(Integer.toString(i + 1)) || named)) {
        return mixer;
      }
    }
    throw new DeviceException(
        "no device that can "
            + purpose
            + " is called "
            + device.get()
            + "; there are "
            + able.stream().map(SoundDevices::name).collect(Collectors.joining(", ")));
  }

  private static <L extends DataLine> L open(
      Mixer mixer, Class<L> kind, PcmFormat format, int bufferMs) throws DeviceException {
    try {
      return tryOpen(mixer, kind, format, bufferMs);
    } catch (LineUnavailableException | IllegalArgumentException failure) {
      throw explained(mixer, kind, format, bufferMs, failure);
    }
  }

  private static <L extends DataLine> L tryOpen(
      Mixer mixer, Class<L> kind, PcmFormat format, int bufferMs) throws LineUnavailableException {
    AudioFormat wanted =
        new AudioFormat(format.ratePerSecond(), format.bits(), format.channels(), true, false);
    int bytes = (int) ((long) format.ratePerSecond() * bufferMs / 1000) * format.bytesPerFrame();
    L line = kind.cast(mixer.getLine(new DataLine.Info(kind, wanted)));
    if (line instanceof SourceDataLine out) {
      out.open(wanted, bytes);
    } else if (line instanceof TargetDataLine in) {
      in.open(wanted, bytes);
    }
    return line;
  }

  /** The system does not say why a line cannot be had; trying other formats tells. */
  private static DeviceException explained(
      Mixer mixer,
      Class<? extends DataLine> kind,
      PcmFormat format,
      int bufferMs,
      Exception failure) {
    List<Integer> offers = new ArrayList<>();
    for (int rate : RATES) {
      try {
        tryOpen(mixer, kind, new PcmFormat(rate, 16, format.channels()), bufferMs).close();
        offers.add(rate);
      } catch (LineUnavailableException | IllegalArgumentException notThisOne) {
        continue;
      }
    }
    if (offers.isEmpty()) {
      return new DeviceException(
          name(mixer) + " cannot be opened, most likely because another program is using it",
          DeviceAdvice.to(DeviceAdvice.Kind.FREE),
          failure);
    }
    return new DeviceException(
        name(mixer)
            + " does not take "
            + format.ratePerSecond()
            + " frames a second with "
            + format.bits()
            + " bits",
        new DeviceAdvice(DeviceAdvice.Kind.OTHER_RATE, offers),
        failure);
  }

  private static boolean plays(Mixer mixer) {
    return can(mixer, SourceDataLine.class);
  }

  private static boolean records(Mixer mixer) {
    return can(mixer, TargetDataLine.class);
  }

  private static boolean can(Mixer mixer, Class<? extends DataLine> kind) {
    return mixer.isLineSupported(new Line.Info(kind));
  }

  private static String name(Mixer mixer) {
    return mixer.getMixerInfo().getName();
  }
}
