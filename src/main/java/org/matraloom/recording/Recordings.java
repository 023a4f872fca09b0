package org.matraloom.recording;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Opens a recording by what its first bytes say it is, never by its name. */
public final class Recordings {

  private static final int LONGEST_MARK = 64;

  private Recordings() {}

  /**
   * Opens a recording: WAVE, AIFF, FLAC, MP3, Ogg Vorbis, Ogg Opus, or AAC in an MP4 file.
   *
   * @param file the file
   * @return its sound from the beginning; the caller closes it
   * @throws RecordingException if it is empty, damaged or of a kind that is not read here
   * @throws IOException if it cannot be read
   */
  public static Recording open(Path file) throws IOException {
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new RecordingException(file, "is no file; give a recording");
    }
    byte[] head = head(file);
    if (head.length == 0) {
      throw new RecordingException(file, "is empty");
    }
    String mark = new String(head, StandardCharsets.ISO_8859_1);
    if (mark.startsWith("RIFF") || mark.startsWith("RF64")) {
      return new WavRecording(file);
    } else if (mark.startsWith("FORM")) {
      return new AiffRecording(file);
    } else if (mark.startsWith("fLaC")) {
      return new FlacRecording(file);
    } else if (mark.startsWith("OggS")) {
      return ogg(file, mark);
    } else if (mark.startsWith("ftyp", 4)) {
      return new AacRecording(file);
    } else if (mark.startsWith("ID3") || isMpegAudio(head)) {
      return new Mp3Recording(file);
    }
    throw new RecordingException(file, otherKind(mark));
  }

  private static Recording ogg(Path file, String mark) throws IOException {
    if (mark.contains("OpusHead")) {
      return new OpusRecording(file);
    } else if (mark.contains("\u0001vorbis")) {
      return new VorbisRecording(file);
    }
    String codec = mark.contains("Speex") ? "Speex" : mark.contains("FLAC") ? "FLAC" : "an unknown";
    throw new RecordingException(
        file, "is an Ogg file of " + codec + " codec; here Ogg may hold Opus or Vorbis");
  }

  /** An MPEG-1, 2 or 2.5 layer III frame begins: eleven bits set, no reserved value. */
  private static boolean isMpegAudio(byte[] head) {
    return head.length >= 4
        && (head[0] & 0xFF) == 0xFF
        && (head[1] & 0xE0) == 0xE0
        && (head[1] & 0x18) != 0x08
        && (head[1] & 0x06) == 0x02
        && (head[2] & 0xF0) != 0xF0
        && (head[2] & 0x0C) != 0x0C;
  }

  private static String otherKind(String mark) {
    String advice = "; save it as WAV or FLAC";
    if (mark.startsWith("caff")) {
      return "is a Core Audio file (caf), which is not read here" + advice;
    } else if (mark.startsWith("#!AMR")) {
      return "holds AMR speech, which is not read here" + advice;
    } else if (mark.startsWith("\u001aE\u00df\u00a3")) {
      return "is a Matroska or WebM file, which is not read here" + advice;
    } else if (mark.startsWith("0&\u00b2u")) {
      return "is a Windows Media file (wma), which is not read here" + advice;
    } else if (mark.startsWith("\u00ff\u00f1") || mark.startsWith("\u00ff\u00f9")) {
      return "is bare AAC (ADTS), which is not read here; save it as M4A, WAV or FLAC";
    }
    return "is not a sound file that is read here: WAVE, AIFF, FLAC, MP3, Ogg Opus, Ogg Vorbis, "
        + "M4A with AAC";
  }

  private static byte[] head(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(LONGEST_MARK);
    }
  }
}
