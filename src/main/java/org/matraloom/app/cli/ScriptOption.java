package org.matraloom.app.cli;

import org.matraloom.score.Lexicon;
import org.matraloom.script.Script;
import org.matraloom.script.SolluWriting;
import picocli.CommandLine.Option;

/** In which script sollus are written. */
public final class ScriptOption {

  @Option(
      names = "--script",
      paramLabel = "SCRIPT",
      defaultValue = "latin",
      description = {
        "How sollus are written: latin (as you spell them), iso15919, tamil, kannada,",
        "telugu, malayalam, devanagari."
      })
  private Script script;

  /**
   * How sollus are written.
   *
   * @param lexicon tells how they sound
   * @return in the script that was asked for, or as the score spells them
   */
  public SolluWriting writing(Lexicon lexicon) {
    return new SolluWriting(script, lexicon);
  }
}
