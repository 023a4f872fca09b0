package org.matraloom.app;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.matraloom.app.cli.Program;
import org.matraloom.app.handon.BookletCommand;
import org.matraloom.app.handon.ClassCommand;
import org.matraloom.app.handon.EventsCommand;
import org.matraloom.app.handon.ExportCommand;
import org.matraloom.app.handon.FilmCommand;
import org.matraloom.app.handon.PackCommand;
import org.matraloom.app.handon.PageCommand;
import org.matraloom.app.handon.SheetCommand;
import org.matraloom.app.hear.LogCommand;
import org.matraloom.app.hear.TakeCommand;
import org.matraloom.app.lesson.PractiseCommand;
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
import org.matraloom.app.voices.VoiceCommand;
import org.matraloom.app.write.SollusCommand;
import org.matraloom.app.write.TalasCommand;
import org.matraloom.app.write.TidyCommand;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/**
 * All commands, in the order of the help text.
 *
 * <p>Describing every option of every command takes far longer than a short command does, so a
 * command line that names its command is given that one alone, and nothing of the program's own
 * help. Names stand here as well as with the commands, for to ask the commands is to describe them.
 */
final class Commands {

  private static final Map<String, Class<?>> ALL = all();

  private Commands() {}

  /** Each command by its name. */
  static Map<String, Class<?>> byName() {
    return ALL;
  }

  /** A command line that knows the command that is named, or all of them. */
  static CommandLine lineFor(Program program, String... arguments) {
    Class<?> named = arguments.length == 0 ? null : ALL.get(arguments[0]);
    if (named == null) {
      CommandLine line = new CommandLine(program);
      ALL.forEach(line::addSubcommand);
      return line;
    }
    CommandLine line = new CommandLine(CommandSpec.wrapWithoutInspection(program).name(Main.NAME));
    return line.addSubcommand(arguments[0], named);
  }

  private static Map<String, Class<?>> all() {
    Map<String, Class<?>> all = new LinkedHashMap<>();
    all.put("open", OpenCommand.class);
    all.put("check", CheckCommand.class);
    all.put("events", EventsCommand.class);
    all.put("tidy", TidyCommand.class);
    all.put("fit", FitCommand.class);
    all.put("endings", EndingsCommand.class);
    all.put("shape", ShapeCommand.class);
    all.put("propose", ProposeCommand.class);
    all.put("convert", ConvertCommand.class);
    all.put("rebar", RebarCommand.class);
    all.put("render", RenderCommand.class);
    all.put("play", PlayCommand.class);
    all.put("practise", PractiseCommand.class);
    all.put("record", RecordCommand.class);
    all.put("calibrate", CalibrateCommand.class);
    all.put("breaths", BreathsCommand.class);
    all.put("drill", DrillCommand.class);
    all.put("pack", PackCommand.class);
    all.put("sheet", SheetCommand.class);
    all.put("booklet", BookletCommand.class);
    all.put("export", ExportCommand.class);
    all.put("page", PageCommand.class);
    all.put("film", FilmCommand.class);
    all.put("class", ClassCommand.class);
    all.put("take", TakeCommand.class);
    all.put("log", LogCommand.class);
    all.put("voice", VoiceCommand.class);
    all.put("talas", TalasCommand.class);
    all.put("sollus", SollusCommand.class);
    all.put("demo", DemoCommand.class);
    all.put("warm-up", WarmUpCommand.class);
    all.put("packaging", PackagingCommand.class);
    return Collections.unmodifiableMap(all);
  }
}
