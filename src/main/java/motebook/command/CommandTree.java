package motebook.command;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine;

/** The commands by name, in the order of the help; each is built when it is wanted. */
final class CommandTree {
  static final Map<String, Function<Desk, CommandLine>> COMMANDS = commands();

  private CommandTree() {}

  private static Map<String, Function<Desk, CommandLine>> commands() {
    Map<String, Function<Desk, CommandLine>> all = new LinkedHashMap<>();
    all.put("log", desk -> spoken(new LogCommand(desk)));
    all.put("day", desk -> new CommandLine(new DayCommand(desk)));
    all.put("week", desk -> new CommandLine(new WeekCommand(desk)));
    all.put("plan", desk -> spoken(new PlanCommand(desk)));
    all.put("due", desk -> new CommandLine(new DueCommand(desk)));
    all.put("export", desk -> new CommandLine(new ExportCommand(desk)));
    all.put("import", desk -> new CommandLine(new ImportCommand(desk)));
    all.put("place", CommandTree::places);
    all.put("person", CommandTree::people);
    all.put("limits", CommandTree::limits);
    all.put("words", desk -> new CommandLine(new WordsCommand(desk)));
    all.put("settings", desk -> new CommandLine(new SettingsCommand(desk)));
    all.put("gear", GearCommand::line);
    all.put("fit", FitCommand::line);
    all.put("sample", CommandTree::samples);
    all.put("reckon", ReckonCommand::line);
    all.put("undo", desk -> new CommandLine(new UndoCommand(desk)));
    all.put("history", desk -> new CommandLine(new HistoryCommand(desk)));
    all.put("backup", desk -> new CommandLine(new BackupCommand(desk)));
    all.put("restore", desk -> new CommandLine(new RestoreCommand(desk)));
    all.put("verify", desk -> new CommandLine(new VerifyCommand(desk)));
    all.put("sample-shop", desk -> new CommandLine(new SampleShopCommand(desk)));
    return Collections.unmodifiableMap(all);
  }

  // A note may hold a word that begins with a hyphen; the line itself tells what it cannot read.
  private static CommandLine spoken(Object command) {
    return new CommandLine(command)
        .setUnmatchedOptionsArePositionalParams(true)
        .setEndOfOptionsDelimiter("\u0000");
  }

  private static CommandLine places(Desk desk) {
    return new CommandLine(new PlaceCommand.Group())
        .addSubcommand(new PlaceCommand.Add(desk))
        .addSubcommand(new PlaceCommand.ChangeIt(desk))
        .addSubcommand(new PlaceCommand.ListAll(desk));
  }

  private static CommandLine people(Desk desk) {
    return new CommandLine(new PersonCommand.Group())
        .addSubcommand(new PersonCommand.Add(desk))
        .addSubcommand(new PersonCommand.Rename(desk))
        .addSubcommand(new PersonCommand.Use(desk))
        .addSubcommand(new PersonCommand.ListAll(desk));
  }

  private static CommandLine samples(Desk desk) {
    return new CommandLine(new SampleCommand.Group())
        .addSubcommand(new SampleCommand.Add(desk))
        .addSubcommand(new SampleCommand.ListAll(desk))
        .addSubcommand(new SampleCommand.Remove(desk))
        .addSubcommand(new SampleImport(desk));
  }

  private static CommandLine limits(Desk desk) {
    return new CommandLine(new LimitsCommand.Group())
        .addSubcommand(new LimitsCommand.ListAll(desk))
        .addSubcommand(new LimitsCommand.Use(desk));
  }
}
