package org.matraloom.app.voices;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.matraloom.device.DeviceException;
import org.matraloom.prompt.AskedRow;
import org.matraloom.prompt.Asking;
import org.matraloom.prompt.RowFolder;
import org.matraloom.prompt.RowList;
import org.matraloom.prompt.RowSheet;
import org.matraloom.prompt.RowTake;
import org.matraloom.prompt.SayJudge;
import org.matraloom.prompt.SayVerdict;
import org.matraloom.session.GuideHeard;
import org.matraloom.session.RowDesk;
import org.matraloom.session.RowKey;
import org.matraloom.session.RowPass;

/** Asks for row after row, tells what was heard of each, and keeps what was good. */
final class RowSession {

  /** Plays a row once and records what is said after it, so many times, into a new file. */
  @FunctionalInterface
  interface Recorder {
    /**
     * Records.
     *
     * @throws IOException if a device, the disk or the terminal has gone; what was recorded is kept
     */
    RowPass.End record(AskedRow row, int says, Path target) throws IOException;
  }

  /** A recording that was killed before its header was written has nothing in it. */
  private static final int LEAST_BYTES = 100;

  private static final int LOOK_MS = 1_200;
  private static final int LONGEST_PAUSE_MS = 3_600_000;

  private final RowFolder folder;
  private final List<AskedRow> rows;
  private final Recorder recorder;
  private final RowDesk desk;
  private final Asking asking;
  private OptionalDouble usualDb = OptionalDouble.empty();
  private boolean isTroubled;

  /** Goes on with what is kept in a folder. */
  RowSession(RowFolder folder, Recorder recorder, RowDesk desk) throws IOException {
    this.folder = folder;
    this.rows = folder.rows();
    this.recorder = recorder;
    this.desk = desk;
    this.asking = asking();
  }

  /** What was left without a verdict when the program was killed is judged now. */
  private Asking asking() throws IOException {
    int[] good = new int[rows.size()];
    for (int row = 0; row < good.length; row++) {
      for (Path recording : folder.recordings(row)) {
        if (Files.size(recording) < LEAST_BYTES) {
          RowSheet.drop(recording);
          continue;
        }
        if (!Files.exists(RowSheet.of(recording))) {
          judge(row, recording, Asking.TAKES, false);
        }
        good[row] += RowSheet.good(recording);
      }
    }
    return new Asking(good);
  }

  /** Asks until there is nothing left to ask for; false if it was ended before. */
  boolean run() throws IOException {
    Optional<Asking.Ask> ask = asking.next();
    while (ask.isPresent()) {
      if (ask.get().isAfterRest() && isEnd(rest())) {
        return false;
      }
      if (isEnd(ask(ask.get()))) {
        return false;
      }
      ask = asking.next();
    }
    return true;
  }

  private static boolean isEnd(Optional<RowKey> key) {
    return key.equals(Optional.of(RowKey.END));
  }

  private Optional<RowKey> rest() throws IOException {
    asking.rested();
    return desk.rest(
        String.format(
            Locale.ROOT,
            "Rest your voice for %.0f s: drink some water, let the shoulders fall. Any key goes on;"
                + " stop for today if it hurts or you are hoarse.",
            RowList.restSeconds()),
        Math.round(1000 * RowList.restSeconds()));
  }

  private Optional<RowKey> ask(Asking.Ask ask) throws IOException {
    AskedRow row = rows.get(ask.row());
    desk.row(heading(ask), row.words(), ask.says());
    Path target = folder.next(ask.row());
    RowPass.End end;
    try {
      end = recorder.record(row, ask.says(), target);
      isTroubled = false;
    } catch (DeviceException trouble) {
      // A busy machine may keep a device waiting once; one that has gone will not open again.
      if (isTroubled || !Files.exists(target)) {
        throw trouble;
      }
      isTroubled = true;
      asking.heard(judge(ask.row(), target, ask.says(), false));
      asking.pause(ask.row());
      return Optional.empty();
    }
    if (end.key().equals(Optional.of(RowKey.AGAIN))) {
      RowSheet.drop(target);
      return Optional.empty();
    }
    int good = judge(ask.row(), target, ask.says(), end.lost() > 0);
    asking.heard(good);
    return done(ask, target, good, end.key().isPresent() ? end.key() : desk.key(LOOK_MS));
  }

  private Optional<RowKey> done(Asking.Ask ask, Path target, int good, Optional<RowKey> key)
      throws IOException {
    if (key.equals(Optional.of(RowKey.AGAIN))) {
      RowSheet.drop(target);
      asking.again(ask.row(), good);
    } else if (key.equals(Optional.of(RowKey.SKIP))) {
      asking.skip(ask.row());
    } else if (key.equals(Optional.of(RowKey.PAUSE))) {
      asking.pause(ask.row());
      return desk.rest("Paused; any key goes on.", LONGEST_PAUSE_MS);
    }
    return key;
  }

  private String heading(Asking.Ask ask) {
    return String.format(
        Locale.ROOT,
        "row %d of %d%s, about %d min left",
        ask.row() + 1,
        rows.size(),
        ask.isAgain() ? " again" : "",
        RowList.minutes(asking.left(), asking.wanted()));
  }

  /** Hears a recording, notes what is good in it, tells what is not, and counts the former. */
  private int judge(int number, Path recording, int most, boolean isBroken) throws IOException {
    AskedRow row = rows.get(number);
    Optional<RowTake> take = RowTake.read(recording);
    OptionalDouble claps = GuideHeard.peakDbfs(recording, AskedRow.tempo());
    if (take.isEmpty() || isBroken) {
      RowSheet.note(recording, row, List.of());
      desk.tell("The sound broke off; once more.");
      return 0;
    }
    SayJudge.Heard heard = take.get().judge(row).judge(most, claps, usualDb);
    RowSheet.note(recording, row, heard.says());
    usualDb = heard.usualDb().isPresent() ? heard.usualDb() : usualDb;
    int good = (int) heard.says().stream().filter(SayVerdict::isGood).count();
    desk.tell(words(heard, good));
    return good;
  }

  private static String words(SayJudge.Heard heard, int good) {
    if (heard.says().isEmpty()) {
      return "It was broken off before it was said.";
    }
    StringBuilder text = new StringBuilder();
    text.append(good).append(" of ").append(heard.says().size()).append(" are good");
    for (int say = 0; say < heard.says().size(); say++) {
      int number = say + 1;
      heard
          .says()
          .get(say)
          .fault()
          .ifPresent(fault -> text.append("; number ").append(number).append(": ").append(fault));
    }
    text.append('.');
    heard.roomWords().ifPresent(words -> text.append(' ').append(words));
    return text.toString();
  }

  /** The words of the rows that were not said well once. */
  List<String> missing() {
    return asking.missing().stream().map(row -> rows.get(row).words()).toList();
  }

  /** How many sayings are kept. */
  int kept() {
    return asking.kept();
  }
}
