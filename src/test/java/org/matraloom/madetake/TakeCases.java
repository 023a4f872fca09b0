package org.matraloom.madetake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.BiConsumer;

/** All takes that are made, over all samples and voices. */
public final class TakeCases {

  public static final List<String> SAMPLES =
      List.of(
          "crooked-ladder",
          "culvert",
          "gutter-song",
          "half-step-heron",
          "lantern-ferry",
          "leaking-boat",
          "monsoon-ledger",
          "reed-bed",
          "slow-water",
          "sluice-gate",
          "weir-steps");

  /** Rounds at four a beat, then one at five. */
  private static final List<String> KHANDA =
      List.of(
          "culvert",
          "gutter-song",
          "lantern-ferry",
          "leaking-boat",
          "monsoon-ledger",
          "slow-water");

  private static final RoomKind[] ROOMS = {
    RoomKind.ECHO,
    RoomKind.PUMPING,
    RoomKind.SECOND_VOICE,
    RoomKind.CLIPPED,
    RoomKind.TELEPHONE,
    RoomKind.DELAYED,
    RoomKind.CLOCK
  };

  private final List<String> strangers;
  private final List<TakeCase> cases = new ArrayList<>();
  private long nextSeed;

  private TakeCases(List<String> strangers, long firstSeed) {
    this.strangers = strangers;
    this.nextSeed = firstSeed;
  }

  /**
   * The takes in a fixed order.
   *
   * @param strangers the voices that are not ours; none for takes in our own voices only
   * @param firstSeed the seed of the first; each next take has the next
   */
  public static List<TakeCase> with(List<String> strangers, long firstSeed) {
    TakeCases made = new TakeCases(strangers, firstSeed);
    made.plain();
    made.loud();
    made.wrongKhanda();
    return made.cases;
  }

  private void plain() {
    all(TakeCase.Group.CLEAN, 3, (flaws, i) -> flaws.jitterSeconds = 0.002 + 0.001 * (i % 5));
    all(
        TakeCase.Group.DRIFT,
        2,
        (flaws, i) -> flaws.driftPercent = (i % 2 == 0 ? 1 : -1) * (0.5 + 3.5 * (i % 7) / 6.0));
    all(
        TakeCase.Group.LANDING,
        2,
        (flaws, i) -> {
          flaws.landingSeconds = (i % 2 == 0 ? 1 : -1) * (0.020 + 0.010 * (i % 6));
          flaws.landingSollus = i % 3 == 0 ? 1 : 3;
        });
    all(
        TakeCase.Group.SOLLUS,
        2,
        (flaws, i) -> {
          flaws.missedShare = 0.04;
          flaws.doubled = 2;
          flaws.added = 2;
        });
    all(TakeCase.Group.RESTART, 1, (flaws, i) -> flaws.restarts = true);
  }

  private void loud() {
    all(TakeCase.Group.NOISE, 2, (flaws, i) -> {}, i -> RoomKind.NOISE);
    all(
        TakeCase.Group.BLEED,
        2,
        (flaws, i) -> {},
        i -> i % 2 == 0 ? RoomKind.CLAPS : RoomKind.CLICKS);
    all(TakeCase.Group.ROOM, 3, (flaws, i) -> {}, i -> ROOMS[i % ROOMS.length]);
    all(
        TakeCase.Group.LEAD,
        1,
        (flaws, i) -> flaws.leadSeconds = (i % 2 == 0 ? 1 : -1) * (0.02 + 0.01 * (i % 4)),
        i -> RoomKind.CLAPS);
  }

  private void wrongKhanda() {
    for (KhandaFault fault : KhandaFault.values()) {
      for (int i = 0; i < 3 * KHANDA.size(); i++) {
        Flaws flaws = flaws(0.8, 1.15);
        flaws.khanda = Optional.of(fault);
        flaws.jitterSeconds = 0.005;
        String sample = KHANDA.get(i % KHANDA.size());
        add(TakeCase.Group.HABIT, sample, i / KHANDA.size(), i, flaws, RoomKind.QUIET);
      }
    }
  }

  private interface RoomOf {
    RoomKind of(int number);
  }

  private void all(TakeCase.Group group, int voices, BiConsumer<Flaws, Integer> change) {
    all(group, voices, change, i -> RoomKind.QUIET);
  }

  private void all(
      TakeCase.Group group, int voices, BiConsumer<Flaws, Integer> change, RoomOf room) {
    int number = 0;
    for (String sample : SAMPLES) {
      for (int voice = 0; voice < voices; voice++) {
        Flaws flaws = flaws(0.75, 1.25);
        change.accept(flaws, number);
        add(group, sample, voices == 1 ? number % 3 : voice, number, flaws, room.of(number));
        number++;
      }
    }
  }

  private Flaws flaws(double slowest, double fastest) {
    Flaws flaws = new Flaws(nextSeed++);
    Random random = new Random(flaws.seed);
    flaws.tempoFactor = slowest + (fastest - slowest) * random.nextDouble();
    flaws.startSeconds = 0.3 + 5.7 * Math.pow(random.nextDouble(), 3);
    flaws.breathes = random.nextBoolean();
    return flaws;
  }

  /** Voice 2, and each second voice 1, is a stranger's, if there is one. */
  private void add(
      TakeCase.Group group, String sample, int voice, int number, Flaws flaws, RoomKind room) {
    boolean strange = voice == 2 || (voice == 1 && !isThreefold(group));
    String name = (voice + number) % 2 == 0 ? Speakers.LOW : Speakers.HIGH;
    if (strange && !strangers.isEmpty()) {
      name = strangers.get((number / 2) % strangers.size());
    }
    cases.add(new TakeCase(group, sample, name, flaws, room));
  }

  private static boolean isThreefold(TakeCase.Group group) {
    return group == TakeCase.Group.CLEAN
        || group == TakeCase.Group.ROOM
        || group == TakeCase.Group.HABIT;
  }
}
