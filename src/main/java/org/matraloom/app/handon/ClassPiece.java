package org.matraloom.app.handon;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.breath.BreathPlan;
import org.matraloom.breath.BreathText;
import org.matraloom.film.FilmCoding;
import org.matraloom.film.FilmLook;
import org.matraloom.film.FilmMaker;
import org.matraloom.film.FilmOrder;
import org.matraloom.film.FilmPass;
import org.matraloom.film.FilmSize;
import org.matraloom.pack.PackFiles;
import org.matraloom.pack.PackMaker;
import org.matraloom.pack.PackOrder;
import org.matraloom.page.PhonePage;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.sheet.HtmlSheet;
import org.matraloom.sheet.PdfPages;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SheetOptions;
import org.matraloom.sheet.SheetWords;
import org.matraloom.site.ClassEntry;
import org.matraloom.site.SiteFile;
import org.matraloom.site.SitePages;
import org.matraloom.site.SitePiece;
import org.matraloom.site.SiteStamp;
import org.matraloom.sound.Mix;
import org.matraloom.voice.SolluVoice;
import org.matraloom.voice.VoiceSettings;
import org.matraloom.wav.PcmFormat;

/** One piece of a class: what is made of it, and the making. */
final class ClassPiece {

  private static final int RATE = PcmFormat.USUAL.ratePerSecond();
  private static final int PICTURES_PER_SECOND = 30;

  private final SitePiece piece;
  private final Lexicon lexicon;
  private final ClassOptions options;
  private final PageContentOptions content;

  ClassPiece(
      String name,
      Performance performance,
      ClassEntry entry,
      Lexicon lexicon,
      ClassOptions options,
      PageContentOptions content) {
    this.lexicon = lexicon;
    this.options = options;
    this.content = content;
    this.piece = new SitePiece(name, performance, entry, files(performance));
  }

  SitePiece onSite() {
    return piece;
  }

  private List<SiteFile> files(Performance performance) {
    List<SiteFile> files = new ArrayList<>();
    options.film().ifPresent(coding -> files.add(new SiteFile("film." + coding.ending(), "Film")));
    files.add(new SiteFile("sheet.pdf", "Sheet (PDF)"));
    files.add(new SiteFile("sheet.html", "Sheet (page)"));
    if (options.phone()) {
      files.add(new SiteFile("phone.html", "Page for a phone, with sound"));
    }
    if (hasTracks(performance)) {
      files.add(new SiteFile("tracks/index.html", "Tracks, sections and joins to practise with"));
    }
    files.add(new SiteFile("breaths.txt", "Where to breathe"));
    return files;
  }

  /** A set of tracks is made of pieces in one tala only. */
  private boolean hasTracks(Performance performance) {
    return options.tracks() && !performance.composition().changesTala();
  }

  /** What its files stand for. */
  SiteStamp stamp(List<String> texts) {
    List<String> names = new ArrayList<>(piece.files().stream().map(SiteFile::name).toList());
    names.add("index.html");
    names.add("poster.png");
    return SiteStamp.of(texts, names);
  }

  /** The sheet of the booklet and of the pages. */
  Sheet sheet() {
    Performance performance = piece.performance();
    SheetOptions shown = content.options(performance, lexicon);
    return Sheet.of(performance, shown, content.breaths(performance));
  }

  /** Makes its files in a folder that is there; the stamp comes last. */
  void make(Path folder, SiteStamp stamp) throws IOException {
    Files.deleteIfExists(folder.resolve(SiteStamp.FILE_NAME));
    Performance performance = piece.performance();
    Sheet sheet = sheet();
    WholeFile.write(folder.resolve("sheet.pdf"), file -> PdfPages.write(sheet, file));
    WholeFile.writeText(folder.resolve("sheet.html"), file -> HtmlSheet.write(sheet, file));
    BreathPlan plan = content.breathOptions().plan(performance);
    String breaths = BreathText.of(plan, List.of(), false, Paragraph::folded);
    WholeFile.writeText(folder.resolve("breaths.txt"), file -> file.append(breaths));
    if (options.phone()) {
      var sound =
          PhoneSound.of(
              performance, PhoneSound.voice(options.who(), lexicon), content, Optional.empty());
      WholeFile.writeText(
          folder.resolve("phone.html"), file -> PhonePage.write(sheet, sound, file));
    }
    if (hasTracks(performance)) {
      tracks(folder.resolve("tracks"));
    }
    FilmMaker film = film(sheet);
    WholeFile.write(folder.resolve("poster.png"), film::writePoster);
    if (options.film().isPresent()) {
      FilmCoding coding = options.film().get();
      Path target = folder.resolve("film." + coding.ending());
      film.write(target, coding, options.ffmpeg(), (done, total) -> {});
    }
    String page = SitePages.piece(piece, new SheetWords(sheet).landing());
    WholeFile.writeText(folder.resolve("index.html"), file -> file.append(page));
    WholeFile.writeText(folder.resolve(SiteStamp.FILE_NAME), file -> file.append(stamp.text()));
  }

  private FilmMaker film(Sheet sheet) {
    FilmPass pass =
        new FilmPass(ScoreTimeline.of(piece.performance(), 1), sheet, Mix.lesson(), "", false);
    return new FilmMaker(
        new FilmOrder(
            List.of(pass),
            FilmSize.SMALL,
            FilmLook.LIGHT,
            PICTURES_PER_SECOND,
            voice(),
            Optional.empty()));
  }

  private SolluVoice voice() {
    return VoiceOptions.named(options.who(), RATE, lexicon, VoiceSettings.USUAL, false);
  }

  /** A set of another score in the same folder is thrown away: it was made here. */
  private void tracks(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> old = Files.walk(folder)) {
        for (Path file : old.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
    Files.createDirectories(folder);
    PackOrder order =
        new PackOrder(
            piece.performance().composition(),
            PackOrder.USUAL_PERCENTS,
            PackOrder.USUAL_MIXES,
            true,
            1,
            Optional.empty(),
            PackFiles.MP3,
            Optional.empty());
    PackMaker maker = new PackMaker(order, folder, this::voice);
    maker.claim();
    maker.make(1, (done, total) -> {});
  }
}
