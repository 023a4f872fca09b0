package org.matraloom.app.voices;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.time.LocalDate;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.UserError;
import org.matraloom.mouth.KitHead;
import picocli.CommandLine.Option;

/** Whose voice it is, and that its owner agrees. */
final class ConsentOptions {

  @Option(names = "--owner", paramLabel = "TEXT", defaultValue = "", description = "Who spoke.")
  private String owner;

  @Option(
      names = "--terms",
      paramLabel = "TEXT",
      defaultValue = "",
      description = "What others may do with the voice.")
  private String terms;

  @Option(
      names = "--consent",
      description = {
        "I agree: it is my own voice, it is kept on this machine only, and whoever gets",
        "a page, a track or a film made with it, or the voice itself, hears it."
      })
  private boolean consent;

  String owner() {
    return owner;
  }

  String terms() {
    return terms;
  }

  /** Asks once, in one sentence; without a terminal the option has to say it. */
  String agreed(PrintWriter out) throws IOException {
    if (!consent) {
      if (System.console() == null) {
        throw new UserError(
            "a voice needs its owner's consent: --consent says \"" + KitHead.CONSENT + "\"");
      }
      out.println(Paragraph.folded(KitHead.CONSENT + " Do you agree? yes or no"));
      out.flush();
      BufferedReader typed =
          new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));
      String answer = typed.readLine();
      if (answer == null || !answer.strip().equalsIgnoreCase("yes")) {
        throw new UserError("without consent no voice is made; nothing was kept");
      }
    }
    return "yes, " + LocalDate.now() + ": " + KitHead.CONSENT;
  }
}
