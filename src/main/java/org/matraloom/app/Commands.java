package org.matraloom.app;

import java.util.List;
import java.util.Optional;
import org.matraloom.app.handon.BookletCommand;
import org.matraloom.app.handon.EventsCommand;
import org.matraloom.app.handon.ExportCommand;
import org.matraloom.app.handon.PackCommand;
import org.matraloom.app.handon.PageCommand;
import org.matraloom.app.handon.SheetCommand;
import org.matraloom.app.hear.LogCommand;
import org.matraloom.app.hear.TakeCommand;
import org.matraloom.app.open.OpenCommand;
import org.matraloom.app.practise.BreathsCommand;
import org.matraloom.app.practise.CalibrateCommand;
import org.matraloom.app.practise.DrillCommand;
import org.matraloom.app.practise.PlayCommand;
import org.matraloom.app.practise.RecordCommand;
import org.matraloom.app.practise.RenderCommand;
import org.matraloom.app.prove.CheckCommand;
import org.matraloom.app.prove.ConvertCommand;
import org.matraloom.app.prove.EndingsCommand;
import org.matraloom.app.prove.FitCommand;
import org.matraloom.app.prove.ProposeCommand;
import org.matraloom.app.prove.RebarCommand;
import org.matraloom.app.prove.ShapeCommand;
import org.matraloom.app.write.SollusCommand;
import org.matraloom.app.write.TalasCommand;
import org.matraloom.app.write.TidyCommand;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/**
 * All commands, in the order of the help text.
 *
 * <p>Describing every option of every command costs a third of the time a short command takes, so a
 * command line that names its command is given that one alone.
 */
final class Commands {

  private static final List<Class<?>> ALL =
      List.of(
          OpenCommand.class,
          CheckCommand.class,
          EventsCommand.class,
          TidyCommand.class,
          FitCommand.class,
          EndingsCommand.class,
          ShapeCommand.class,
          ProposeCommand.class,
          ConvertCommand.class,
          RebarCommand.class,
          RenderCommand.class,
          PlayCommand.class,
          RecordCommand.class,
          CalibrateCommand.class,
          BreathsCommand.class,
          DrillCommand.class,
          PackCommand.class,
          SheetCommand.class,
          BookletCommand.class,
          ExportCommand.class,
          PageCommand.class,
          TakeCommand.class,
          LogCommand.class,
          TalasCommand.class,
          SollusCommand.class,
          DemoCommand.class,
          WarmUpCommand.class);

  private Commands() {}

  /** Adds the command that is named, or all of them. */
  static void addTo(CommandLine line, String... arguments) {
    Optional<Class<?>> named =
        ALL.stream()
            .filter(type -> arguments.length > 0 && name(type).equals(arguments[0]))
            .findFirst();
    named.map(List::<Class<?>>of).orElse(ALL).forEach(type -> line.addSubcommand(name(type), type));
  }

  private static String name(Class<?> type) {
    return type.getAnnotation(Command.class).name();
  }
}
