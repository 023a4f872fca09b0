package org.matraloom.app.open;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.matraloom.app.cli.ReciterOption;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.hear.UsualMouth;
import org.matraloom.app.lesson.Lesson;
import org.matraloom.app.lesson.LessonOrder;
import org.matraloom.app.lesson.LessonPass;
import org.matraloom.door.DoorReply;
import org.matraloom.door.DoorRequest;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.script.Script;
import org.matraloom.session.DecisionSound;
import org.matraloom.session.FedEar;
import org.matraloom.shelf.ScoreName;
import org.matraloom.staircase.StairStep;
import org.matraloom.wav.PcmFormat;

/** A practice session on the page: the same as that of {@code practise}, one at a time. */
final class SessionAnswers {

  private static final PcmFormat GUIDE = PcmFormat.USUAL;
  private static final PcmFormat TAKEN = new PcmFormat(GUIDE.ratePerSecond(), 16, 1);
  private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss");
  private static final int USUAL_MINUTES = 15;
  private static final int MOST_MINUTES = 240;

  private final OpenDesk desk;
  private final HandOnAnswers files;
  private final PlayAnswers plays;
  private Optional<PageSession> session = Optional.empty();

  SessionAnswers(OpenDesk desk, HandOnAnswers files, PlayAnswers plays) {
    this.desk = desk;
    this.files = files;
    this.plays = plays;
  }

  /** Begins a session with a saved score; one that goes on elsewhere ends. */
  synchronized DoorReply begin(DoorRequest request) throws IOException {
    JsonFields sent = JsonFields.of(request);
    ScoreName name = new ScoreName(sent.text("name"));
    int minutes = whole(sent, "minutes").orElse(USUAL_MINUTES);
    if (minutes < 1 || minutes > MOST_MINUTES) {
      throw new UserError("minutes takes 1 to " + MOST_MINUTES + ", given " + minutes);
    }
    LessonOrder order =
        new LessonOrder(
            composition(name),
            desk.lexicon(),
            new LessonOrder.Tempi(whole(sent, "goal"), whole(sent, "from"), Optional.empty()),
            sent.isSet("onlyTheWhole"),
            true,
            folder(name),
            Optional.of(desk.log()),
            Optional.empty());
    PageSession begun = new PageSession();
    UsualMouth mouth =
        UsualMouth.ofLog(
            desk.log().read().usualVoice(), desk.lexicon(), "matraloom take --voice none");
    Lesson lesson = order.lesson(begun, mouth.sounds());
    session.ifPresent(PageSession::end);
    session = Optional.of(begun);
    Thread thread =
        new Thread(
            () -> begun.over(lesson.run(TimeUnit.MINUTES.toSeconds(minutes), System::nanoTime)),
            "matraloom-session");
    thread.setDaemon(true);
    thread.start();
    return JsonReply.of(
        json -> {
          json.writeStringField("folder", order.folder().getFileName().toString());
          json.writeStringField("mouth", mouth.told().orElse(""));
        });
  }

  private Composition composition(ScoreName name) throws IOException {
    return ReciterOption.requireOne(
        ScoreReader.read(desk.scores().read(name).text(), name.file(), desk.lexicon())
            .composition()
            .orElseThrow(() -> new UserError("the score has errors; mend them first")),
        "a practice session");
  }

  private Path folder(ScoreName name) throws IOException {
    Path folder = files.folder(name).resolve("session-" + LocalDateTime.now().format(STAMP));
    if (Files.exists(folder)) {
      throw new UserError("a session was begun this very second; begin again");
    }
    return folder;
  }

  private static Optional<Integer> whole(JsonFields sent, String name) {
    return sent.find(name).filter(given -> !given.isBlank()).map(given -> sent.number(name));
  }

  private synchronized PageSession session() {
    return session.orElseThrow(() -> new UserError("no session has begun"));
  }

  /** What there is to be done now; a pass comes with its sheet if it is new to the page. */
  DoorReply look(DoorRequest request) throws IOException {
    JsonFields sent = JsonFields.of(request);
    Script script = sent.find("script").map(Scripts::of).orElse(Script.LATIN);
    return JsonReply.of(json -> session().write(sent.number("seen"), script, desk.lexicon(), json));
  }

  /** Begins to play the guide of the pass. */
  DoorReply play(DoorRequest request) throws IOException {
    LessonPass pass =
        session().playing().orElseThrow(() -> new UserError("no pass is to be played now"));
    return plays.begin(
        PlayedPiece.straight(
            pass.piece(PlayedPieces.voice(desk.voice(), desk.lexicon()), Optional.empty(), GUIDE),
            pass.composition().tempo(),
            pass.mix()));
  }

  /** Takes the next block of a pass that is being said, and tells what was heard of it. */
  DoorReply heard(DoorRequest request) throws IOException {
    Map<String, String> query = request.query();
    int number = Math.toIntExact(GuidedTake.whole(query, "number"));
    PageSession now = session();
    Optional<LessonPass> pass = now.playing(number);
    FedEar.Heard heard =
        pass.isEmpty()
            ? new FedEar.Heard(List.of(), Optional.empty())
            : now.ear()
                .hear(
                    number,
                    pass.get(),
                    desk.lexicon(),
                    request.body(),
                    TAKEN,
                    frames(query, "guideFrame"),
                    query.containsKey("tripFrames"));
    return JsonReply.of(json -> PageEar.write(heard, json));
  }

  /** Keeps the take of a pass; it is measured next. */
  DoorReply take(DoorRequest request) throws IOException {
    Map<String, String> query = request.query();
    byte[] wave = request.body();
    session()
        .keep(
            Math.toIntExact(GuidedTake.whole(query, "number")),
            Arrays.copyOfRange(wave, Math.min(GuidedTake.HEAD_BYTES, wave.length), wave.length),
            TAKEN,
            frames(query, "guideFrame"),
            frames(query, "tripFrames"));
    return JsonReply.of(json -> {});
  }

  private static Optional<Long> frames(Map<String, String> query, String name) {
    return query.containsKey(name) ? Optional.of(GuidedTake.whole(query, name)) : Optional.empty();
  }

  /** Goes on after what was told. */
  DoorReply answer(DoorRequest request) throws IOException {
    session().answer(JsonFields.of(request).number("number"));
    return JsonReply.of(json -> {});
  }

  DoorReply end(DoorRequest request) throws IOException {
    session().end();
    return JsonReply.of(json -> {});
  }

  /** What tells a decision without words, as samples of the guide's format. */
  DoorReply sound(DoorRequest request) throws IOException {
    String move = JsonFields.of(request).text("move").toUpperCase(Locale.ROOT);
    byte[] samples = DecisionSound.of(StairStep.Move.valueOf(move), GUIDE);
    return DoorReply.of("application/octet-stream", samples);
  }
}
