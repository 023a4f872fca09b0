package org.matraloom.app.hear;

import java.nio.file.Path;
import java.util.Optional;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.onset.KnownSounds;
import org.matraloom.score.Lexicon;

/**
 * Whose mouth the ear knows beforehand.
 *
 * @param sounds what it knows of it
 * @param told what is to be said of it, in a sentence; empty where the voice was named in the
 *     command, or none is used
 */
public record UsualMouth(KnownSounds sounds, Optional<String> told) {

  /** What is named where no voice is wanted. */
  public static final String NONE = "none";

  /**
   * A voice that was named in the command.
   *
   * @param voice its name or its folder, or {@link #NONE}
   * @param lexicon how sollus are said
   * @return what is known of it
   * @throws UserError if there is no such voice
   */
  public static UsualMouth named(String voice, Lexicon lexicon) {
    KnownSounds sounds = voice.equals(NONE) ? KnownSounds.NONE : VoiceOptions.mouth(voice, lexicon);
    return new UsualMouth(sounds, Optional.empty());
  }

  /**
   * The usual voice of a practice log; one that is not there any more is done without.
   *
   * @param voice as the log names it; empty if it names none
   * @param lexicon how sollus are said
   * @param leaveOut how it is left out, for the end of a sentence
   * @return what is known of it, and the sentence
   */
  public static UsualMouth ofLog(Optional<String> voice, Lexicon lexicon, String leaveOut) {
    if (voice.filter(name -> !name.equals(NONE)).isEmpty()) {
      return new UsualMouth(KnownSounds.NONE, Optional.empty());
    }
    try {
      return new UsualMouth(
          VoiceOptions.mouth(voice.get(), lexicon),
          Optional.of(
              "Measured with the recorded voice "
                  + voice.get()
                  + ", the usual one of the practice log ("
                  + leaveOut
                  + " leaves it out)."));
    } catch (UserError gone) {
      return new UsualMouth(
          KnownSounds.NONE,
          Optional.of(
              "Measured without the usual voice of the practice log, "
                  + voice.get()
                  + ", as it cannot be read any more ("
                  + leaveOut
                  + " forgets it)."));
    }
  }

  /**
   * The same with a sentence.
   *
   * @param words the sentence
   * @return what is known of the mouth, and that
   */
  UsualMouth saying(String words) {
    return new UsualMouth(sounds, Optional.of(words));
  }

  /**
   * How a voice is noted: by its name, or by its whole folder, so that it is found from anywhere.
   *
   * @param voice as it was typed
   * @return as it is noted
   */
  static String noted(String voice) {
    return Path.of(voice).getNameCount() == 1 && !Path.of(voice).isAbsolute()
        ? voice
        : Path.of(voice).toAbsolutePath().normalize().toString();
  }
}
