package org.matraloom.app.cli;

import org.matraloom.score.Lexicon;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.VoiceEffort;
import org.matraloom.voice.VoicePerson;
import org.matraloom.voice.VoicePlacement;
import org.matraloom.voice.VoiceSettings;
import picocli.CommandLine.Option;

/** Who says the sollus, and how. */
public final class VoiceOptions {

  @Option(
      names = "--voice",
      paramLabel = "WHO",
      defaultValue = "low",
      description = "Who speaks: low or high (default ${DEFAULT-VALUE}).")
  private VoicePerson person;

  @Option(names = "--half-voice", description = "Speak softer and breathier.")
  private boolean halfVoice;

  @Option(
      names = "--felt-beat",
      paramLabel = "WHERE",
      defaultValue = "vowel",
      description = {
        "What falls on the grid: vowel, consonant, or marcus, the estimate of Marcus (1981)",
        "(default ${DEFAULT-VALUE})."
      })
  private VoicePlacement placement;

  @Option(
      names = "--accents",
      paramLabel = "N",
      defaultValue = "1",
      description =
          "How far rounds, samam and phrases stand out, 0 to 3 (default ${DEFAULT-VALUE}).")
  private double accents;

  @Option(
      names = "--spoken-ticks",
      description = "Speak takadimi, takatakita and so on, softly, in place of ticks.")
  private boolean spokenTicks;

  /**
   * The voice that was asked for.
   *
   * @param ratePerSecond frames a second
   * @param lexicon how sollus are said
   * @return the voice
   * @throws UserError if a setting is out of its range
   */
  public FormantVoice voice(int ratePerSecond, Lexicon lexicon) {
    return spokenTicks
        ? FormantVoice.withSpokenTicks(ratePerSecond, lexicon, settings())
        : new FormantVoice(ratePerSecond, lexicon, settings());
  }

  /**
   * The voice of a second reciter: the other person, so that the two can be told apart.
   *
   * @param ratePerSecond frames a second
   * @param lexicon how sollus are said
   * @return the voice, without spoken ticks
   * @throws UserError if a setting is out of its range
   */
  public FormantVoice second(int ratePerSecond, Lexicon lexicon) {
    VoicePerson other = person == VoicePerson.LOW ? VoicePerson.HIGH : VoicePerson.LOW;
    return new FormantVoice(ratePerSecond, lexicon, settings(other));
  }

  VoiceSettings settings() {
    return settings(person);
  }

  private VoiceSettings settings(VoicePerson who) {
    try {
      return VoiceSettings.USUAL
          .with(who)
          .with(halfVoice ? VoiceEffort.HALF : VoiceEffort.FULL)
          .with(placement)
          .withAccents(accents);
    } catch (IllegalArgumentException outOfRange) {
      throw new UserError(outOfRange.getMessage());
    }
  }
}
