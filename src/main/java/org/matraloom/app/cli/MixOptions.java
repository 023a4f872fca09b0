package org.matraloom.app.cli;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;
import picocli.CommandLine.Option;

/** Which parts of a track sound, how loud, and on which side. */
public final class MixOptions {

  /** How far two reciters stand from the middle. */
  private static final double ASIDE = 0.8;

  private enum Balance {
    LESSON,
    PRACTICE
  }

  @Option(
      names = "--mix",
      paramLabel = "BALANCE",
      defaultValue = "lesson",
      description = "lesson: the voice leads; practice: it steps back (default ${DEFAULT-VALUE}).")
  private Balance balance;

  @Option(
      names = "--only",
      split = ",",
      paramLabel = "PART",
      description = "Let only these parts sound, such as claps,counts,waves.")
  private List<MixPart> only;

  @Option(
      names = "--without",
      split = ",",
      paramLabel = "PART",
      description = "Silence these parts, such as ticks,voice.")
  private List<MixPart> without;

  @Option(
      names = "--level",
      split = ",",
      paramLabel = "PART=DB",
      description = "Levels against the clap, such as voice=-6,ticks=-12; from -60 to 24.")
  private Map<MixPart, Double> levels = new LinkedHashMap<>();

  @Option(
      names = "--pan",
      split = ",",
      paramLabel = "PART=SIDE",
      description = "Sides from -1 (left) to 1 (right), such as claps=-1,voice=1.")
  private Map<MixPart, Double> pans = new LinkedHashMap<>();

  /**
   * The mix that was asked for.
   *
   * @return the mix
   * @throws UserError if a part or a level is none
   */
  public Mix mix() {
    return mix(balance());
  }

  /**
   * The same for two reciters, who stand left and right unless their sides were given.
   *
   * @return the mix
   * @throws UserError if a part or a level is none
   */
  public Mix mixOfTwo() {
    return mix(balance().withPan(MixPart.VOICE, -ASIDE).withPan(MixPart.SECOND, ASIDE));
  }

  private Mix balance() {
    return balance == Balance.LESSON ? Mix.lesson() : Mix.practice();
  }

  private Mix mix(Mix usual) {
    Mix mix = usual;
    try {
      for (Map.Entry<MixPart, Double> level : levels.entrySet()) {
        mix = mix.withLevel(level.getKey(), level.getValue());
      }
      for (Map.Entry<MixPart, Double> pan : pans.entrySet()) {
        mix = mix.withPan(pan.getKey(), pan.getValue());
      }
    } catch (IllegalArgumentException outOfRange) {
      throw new UserError(outOfRange.getMessage());
    }
    if (only != null) {
      mix = mix.only(set(only));
    }
    return without == null ? mix : mix.without(set(without));
  }

  private static Set<MixPart> set(List<MixPart> parts) {
    Set<MixPart> set = EnumSet.noneOf(MixPart.class);
    set.addAll(parts);
    return set;
  }
}
