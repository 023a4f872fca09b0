package org.matraloom.pack;

import java.util.LinkedHashMap;
import java.util.Map;

/** What a track of a set says of itself. */
final class PackTags {

  private PackTags() {}

  /** The frames of an MP3 file (ID3v2.3). */
  static Map<String, String> tags(PackOrder order, PackTrack track, int tracks) {
    Map<String, String> tags = new LinkedHashMap<>();
    tags.put("TIT2", track.title());
    tags.put("TALB", order.composition().title());
    tags.put("TRCK", track.number() + "/" + tracks);
    tags.put("TBPM", Long.toString(Math.round(bpm(track))));
    tags.put("TXXX:tempo", track.composition().tempo().beatsPerMinute().toMixed());
    tags.put("TXXX:tala", track.composition().avartana().tala().name());
    tags.put("TXXX:nadai", PackList.nadais(track));
    return tags;
  }

  /** The chunks of a WAVE file (RIFF INFO). */
  static Map<String, String> info(PackOrder order, PackTrack track) {
    Map<String, String> info = new LinkedHashMap<>();
    info.put("INAM", track.title());
    info.put("IPRD", order.composition().title());
    info.put(
        "ICMT",
        "tempo "
            + track.composition().tempo().beatsPerMinute().toMixed()
            + ", tala "
            + track.composition().avartana().tala().name()
            + ", nadai "
            + PackList.nadais(track));
    return info;
  }

  private static double bpm(PackTrack track) {
    return track.composition().tempo().beatsPerMinute().toDouble();
  }
}
