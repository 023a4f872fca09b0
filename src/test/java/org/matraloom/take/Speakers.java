package org.matraloom.take;

import java.nio.file.Path;
import org.matraloom.sound.VoicePerson;

/** Finds the speaker of a made take by name; a voice of ours is new for each take. */
record Speakers(Path folder) {

  static final String LOW = "low";
  static final String HIGH = "high";

  SolluSpeaker named(String name) {
    return switch (name) {
      case LOW -> new OwnSpeaker(VoicePerson.LOW);
      case HIGH -> new OwnSpeaker(VoicePerson.HIGH);
      default -> new StrangeSpeaker(folder.resolve(name));
    };
  }

  static boolean isOwn(String name) {
    return name.equals(LOW) || name.equals(HIGH);
  }
}
