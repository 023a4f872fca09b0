package org.matraloom.drum;

import java.util.List;
import org.matraloom.score.DrumStroke;

/**
 * The modes that a stroke lets ring.
 *
 * <p>The right head is loaded in its middle, and its modes fall on five harmonics (C. V. Raman,
 * "The Indian musical drums", Proc. Indian Acad. Sci. A1, 1934; from memory). A finger that rests
 * on it takes away the modes that move there: the rim stroke with the ring finger down loses the
 * first harmonic. The left head is held to be an even membrane, whose modes stand as 1, 1.594,
 * 2.136 and 2.296 (Rayleigh, The Theory of Sound, from memory). Levels and decays are choices by
 * ear.
 */
enum StrokeModes {
  /** Right head, rim, the ring finger resting: the harmonics from the second on. */
  NAM(
      0.25,
      List.of(
          new DrumMode(2, 1, 0.45),
          new DrumMode(3, 0.8, 0.35),
          new DrumMode(4, 0.35, 0.25),
          new DrumMode(5, 0.2, 0.18))),
  /** Right head, open: the first harmonic above all. */
  DIN(
      0.15,
      List.of(
          new DrumMode(1, 1, 0.55),
          new DrumMode(2, 0.35, 0.4),
          new DrumMode(3, 0.15, 0.25),
          new DrumMode(4, 0.05, 0.15))),
  /** Right head, at the edge of the load: all harmonics for a short while. */
  CHAPU(
      0.35,
      List.of(
          new DrumMode(1, 0.5, 0.2),
          new DrumMode(2, 1, 0.25),
          new DrumMode(3, 0.7, 0.2),
          new DrumMode(4, 0.5, 0.15),
          new DrumMode(5, 0.4, 0.1))),
  /** Right head, flat fingers that stay: a slap without pitch. */
  TA(1, List.of(new DrumMode(3.3, 0.6, 0.02), new DrumMode(5.4, 0.5, 0.012))),
  /** Right head, two fingers in the middle that stay: duller than ta. */
  KI(0.6, List.of(new DrumMode(2.4, 0.8, 0.022), new DrumMode(3.9, 0.4, 0.014))),
  /** Left head, open: the low sound that rings. */
  THOM(
      0.1,
      List.of(
          new DrumMode(1, 1, 0.35),
          new DrumMode(1.594, 0.35, 0.16),
          new DrumMode(2.136, 0.15, 0.1),
          new DrumMode(2.296, 0.1, 0.08))),
  /** Left head, the flat hand that stays. */
  THA(0.5, List.of(new DrumMode(1, 0.8, 0.03), new DrumMode(2.136, 0.5, 0.02)));

  private final double contact;
  private final List<DrumMode> modes;

  StrokeModes(double contact, List<DrumMode> modes) {
    this.contact = contact;
    this.modes = modes;
  }

  /** The modes of a stroke. */
  static StrokeModes of(DrumStroke stroke) {
    return valueOf(stroke.name());
  }

  /** How loud the skin itself is heard when it is struck. */
  double contact() {
    return contact;
  }

  List<DrumMode> modes() {
    return modes;
  }
}
