package org.matraloom.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.matraloom.wav.WholeText;

/** The page of a set: its tracks with players, for a browser on the same disk. */
final class PackPage {

  private static final String NAME = "index.html";

  private final PackOrder order;
  private final List<PackTrack> tracks;

  PackPage(PackOrder order, List<PackTrack> tracks) {
    this.order = order;
    this.tracks = tracks;
  }

  /** The papers that lie in the folder, as links. */
  private static String papers(Path folder) {
    StringBuilder links = new StringBuilder();
    for (PackPaper paper : PackPaper.values()) {
      if (Files.exists(folder.resolve(paper.fileName()))) {
        links.append(links.isEmpty() ? "<p>" : " · ");
        links.append("<a href=\"" + paper.fileName() + "\">" + paper.words() + "</a>");
      }
    }
    return links.isEmpty() ? "" : links + "</p>\n";
  }

  void write(Path folder) throws IOException {
    StringBuilder rows = new StringBuilder();
    for (PackTrack track : tracks) {
      String file = order.files().hasMp3() ? track.mp3Name() : track.waveName();
      String exact = order.files().hasWave() ? track.waveName() : file;
      rows.append(
          """
          <li><p>%s, %s beats a minute</p>
          <audio controls preload="none" src="%s"></audio>
          <p><a href="%s">%s</a></p></li>
          """
              .formatted(
                  escaped(track.title()),
                  track.composition().tempo().beatsPerMinute().toMixed(),
                  file,
                  exact,
                  exact));
    }
    String title =
        order.composition().title().isEmpty() ? "Practice set" : order.composition().title();
    WholeText.put(
        folder.resolve(NAME),
        """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; \
        style-src 'unsafe-inline'; media-src 'self' file:">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <title>%1$s</title>
        <style>
        body { font: 18px/1.5 sans-serif; margin: 1rem auto; max-width: 40rem; padding: 0 1rem; \
        color: #111; background: #fff; }
        li { margin: 0 0 1.5rem; }
        p { margin: 0.2rem 0; }
        audio { width: 100%%; }
        </style>
        </head>
        <body>
        <h1>%1$s</h1>
        <p>%2$s. Every track is counted in. Keep the level low, drink some water, and stop if \
        anything hurts; these are general cautions, not medical advice.</p>
        %4$s<ol>
        %3$s</ol>
        </body>
        </html>
        """
            .formatted(
                escaped(title),
                escaped(order.composition().avartana().tala().name()),
                rows,
                papers(folder)));
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
