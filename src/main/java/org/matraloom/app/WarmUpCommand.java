package org.matraloom.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Program;
import org.matraloom.app.prove.LandingJson;
import org.matraloom.app.prove.LandingText;
import org.matraloom.kanakku.Landing;
import org.matraloom.score.Performance;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * Loads the classes that short commands need, so that the launcher can archive them; prints
 * nothing.
 */
@Command(name = "warm-up", hidden = true, description = "Load what short commands need.")
final class WarmUpCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Override
  public Integer call() throws IOException {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    Landing landing = Landing.of(Performance.of(DemoScore.read()));
    new LandingText(landing).print(nowhere);
    LandingJson.write(landing, nowhere);
    Program program = (Program) command.root().userObject();
    program.runAlso(nowhere, nowhere, "--help");
    program.runAlso(nowhere, nowhere, "talas", "adi");
    return ExitCode.DONE;
  }
}
