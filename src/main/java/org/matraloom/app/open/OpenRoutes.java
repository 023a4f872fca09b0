package org.matraloom.app.open;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.app.cli.UserError;
import org.matraloom.device.RoundTrips;
import org.matraloom.door.DoorFault;
import org.matraloom.door.DoorReply;
import org.matraloom.door.DoorRoute;
import org.matraloom.shelf.ScoreName;

/** All that the page can ask for. */
final class OpenRoutes {

  /** A score with its text, in JSON, where each letter may take six bytes. */
  private static final long SCORE_BYTES = 6_500_000;

  private OpenRoutes() {}

  static List<DoorRoute> of(OpenDesk desk, Optional<ScoreName> first) {
    List<DoorRoute> routes = new ArrayList<>(new PageAnswers(first).routes());
    ShelfAnswers shelf = new ShelfAnswers(desk);
    get(routes, "/api/shelf", request -> shelf.list());
    post(routes, "/api/new", shelf::create);
    post(routes, "/api/rename", shelf::rename);
    post(routes, "/api/copy", shelf::copy);
    post(routes, "/api/discard", shelf::discard);
    post(routes, "/api/bring-back", shelf::bringBack);
    TextAnswers text = new TextAnswers(desk.scores());
    get(routes, "/api/score", text::read);
    get(routes, "/api/stamp", text::stamp);
    post(routes, "/api/save", text::save);
    get(routes, "/api/versions", text::versions);
    get(routes, "/api/version", text::version);
    ReadingAnswers reading = new ReadingAnswers(desk.lexicon());
    post(routes, "/api/read", reading::read);
    post(routes, "/api/repairs", reading::repairs);
    post(routes, "/api/repair", reading::repair);
    get(routes, "/api/vocabulary", request -> Vocabulary.of(desk.lexicon()));
    PlayAnswers play = new PlayAnswers(desk.lexicon(), desk.voice());
    post(routes, "/api/play", play::begin);
    post(routes, "/api/play/next", play::next);
    post(routes, "/api/play/change", play::change);
    post(routes, "/api/play/clock", play::clock);
    TapAnswers taps = new TapAnswers(desk.lexicon());
    post(routes, "/api/tap", taps::tempo);
    post(routes, "/api/rhythm", taps::rhythm);
    HandOnAnswers files = new HandOnAnswers(desk.scores(), desk.voice());
    post(routes, "/api/make", files::make);
    post(routes, "/api/cancel", files::cancel);
    get(routes, "/api/jobs", request -> files.list());
    get(routes, "/api/made", files::made);
    TakeAnswers takes = new TakeAnswers(desk, files);
    routes.add(DoorRoute.post("/api/take", TakeAnswers.MOST_BYTES, told(takes::measure)));
    post(routes, "/api/take/expected", takes::expect);
    post(routes, "/api/drill", takes::drill);
    SessionAnswers sessions = new SessionAnswers(desk, files, play);
    post(routes, "/api/session/begin", sessions::begin);
    post(routes, "/api/session/look", sessions::look);
    post(routes, "/api/session/play", sessions::play);
    post(routes, "/api/session/heard", sessions::heard);
    post(routes, "/api/session/answer", sessions::answer);
    post(routes, "/api/session/end", sessions::end);
    post(routes, "/api/session/sound", sessions::sound);
    routes.add(DoorRoute.post("/api/session/take", TakeAnswers.MOST_BYTES, told(sessions::take)));
    RoundTripAnswers trips = new RoundTripAnswers(RoundTrips.ofUser());
    get(routes, "/api/clicks", request -> trips.clicks());
    get(routes, "/api/round-trip", trips::known);
    routes.add(
        DoorRoute.post("/api/round-trip", RoundTripAnswers.MOST_BYTES, told(trips::measure)));
    PastAnswers past = new PastAnswers(desk, files);
    get(routes, "/api/tempi", past::picture);
    get(routes, "/api/takes", past::takes);
    post(routes, "/api/compare", past::compare);
    get(routes, "/api/take-sound", past::sound);
    return routes;
  }

  private static void get(List<DoorRoute> routes, String path, DoorRoute.Answer answer) {
    routes.add(DoorRoute.get(path, told(answer)));
  }

  private static void post(List<DoorRoute> routes, String path, DoorRoute.Answer answer) {
    routes.add(DoorRoute.post(path, SCORE_BYTES, told(answer)));
  }

  /** What the user can put right is told with its own words. */
  private static DoorRoute.Answer told(DoorRoute.Answer answer) {
    return request -> {
      try {
        return answer.to(request);
      } catch (UserError | IllegalArgumentException fault) {
        throw new DoorFault(DoorReply.BAD, String.valueOf(fault.getMessage()));
      }
    };
  }
}
