package motebook.command;

import motebook.journal.BookTrouble;
import motebook.model.Refusal;
import motebook.model.Text;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** The command line: which command answers, and how what goes wrong is told. */
public final class Commands {
  private Commands() {}

  /**
   * Runs one command line.
   *
   * @return exit code: 0 done, 1 failed, 2 not understood, 3 something is due, 4 trouble with the
   *     book
   */
  public static int run(World world, String... arguments) {
    Desk desk = new Desk(world);
    int code = line(desk).execute(arguments);
    desk.warning().ifPresent(world.err()::println);
    world.out().flush();
    world.err().flush();
    return code;
  }

  /** The tree of commands. */
  private static CommandLine line(Desk desk) {
    World world = desk.world();
    CommandLine log = new CommandLine(new LogCommand(desk));
    // A note may hold a word that begins with a hyphen; the line itself tells what it cannot read.
    log.setUnmatchedOptionsArePositionalParams(true).setEndOfOptionsDelimiter("\u0000");
    CommandLine root =
        new CommandLine(new Root(desk))
            .addSubcommand(log)
            .addSubcommand(new DayCommand(desk))
            .addSubcommand(new WeekCommand(desk))
            .addSubcommand(new DueCommand(desk))
            .addSubcommand(new ExportCommand(desk))
            .addSubcommand(new ImportCommand(desk))
            .addSubcommand(places(desk))
            .addSubcommand(people(desk))
            .addSubcommand(limits(desk))
            .addSubcommand(GearCommand.line(desk))
            .addSubcommand(FitCommand.line(desk))
            .addSubcommand(samples(desk))
            .addSubcommand(ReckonCommand.line(desk))
            .addSubcommand(new UndoCommand(desk))
            .addSubcommand(new HistoryCommand(desk))
            .addSubcommand(new BackupCommand(desk))
            .addSubcommand(new RestoreCommand(desk))
            .addSubcommand(new VerifyCommand(desk))
            .addSubcommand(new SampleShopCommand(desk));
    return root.setExpandAtFiles(false)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setOut(world.out())
        .setErr(world.err())
        .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
        .setParameterExceptionHandler((e, args) -> misused(e, world))
        .setExecutionExceptionHandler((e, line, parsed) -> failed(e, world));
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

  private static int misused(ParameterException e, World world) {
    CommandLine line = e.getCommandLine();
    world.err().println(Text.clean(e.getMessage()));
    CommandLine.UnmatchedArgumentException.printSuggestions(e, world.err());
    world.err().println("See: " + line.getCommandSpec().qualifiedName() + " --help");
    return ExitCode.NOT_UNDERSTOOD;
  }

  private static int failed(Exception e, World world) {
    if (e instanceof Refusal) {
      return told(e, ExitCode.NOT_UNDERSTOOD, world);
    }
    if (e instanceof BookTrouble) {
      return told(e, ExitCode.BOOK, world);
    }
    world
        .err()
        .println(
            "Motebook failed at something it should have done: "
                + Text.clean(String.valueOf(e.getMessage()))
                + " ("
                + e.getClass().getSimpleName()
                + "). Nothing was half written.");
    return ExitCode.FAILED;
  }

  private static int told(Exception e, int code, World world) {
    world.err().println(e.getMessage());
    return code;
  }
}
