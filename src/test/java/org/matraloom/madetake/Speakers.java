package org.matraloom.madetake;

import java.nio.file.Path;
import org.matraloom.voice.VoicePerson;

/** Finds the speaker of a made take by name; a voice of ours is new for each take. */
public record Speakers(Path folder) {

  public static final String LOW = "low";
  static final String HIGH = "high";

  public SolluSpeaker named(String name) {
    return switch (name) {
      case LOW -> new OwnSpeaker(VoicePerson.LOW);
      case HIGH -> new OwnSpeaker(VoicePerson.HIGH);
      default -> new StrangeSpeaker(folder.resolve(name));
    };
  }

  public static boolean isOwn(String name) {
    return name.equals(LOW) || name.equals(HIGH);
  }
}
