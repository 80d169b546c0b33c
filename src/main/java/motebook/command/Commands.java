package motebook.command;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import motebook.journal.BookTrouble;
import motebook.model.Decimal;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.report.ActionText;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;

/** The command line: which command answers, and how what goes wrong is told. */
public final class Commands {
  private static final Set<Integer> ANSWERED = Set.of(ExitCode.DONE, ExitCode.SOMETHING_DUE);

  private Commands() {}

  /**
   * Runs one command line.
   *
   * @return exit code: 0 done, 1 failed, 2 not understood, 3 something is due, 4 trouble with the
   *     book
   */
  public static int run(World world, String... arguments) {
    Desk desk = new Desk(world);
    int code = arguments.length == 0 ? screen(desk) : line(desk, arguments).execute(arguments);
    desk.warning().ifPresent(world.err()::println);
    boolean unread = world.out().checkError();
    if (unread) {
      world
          .err()
          .println(
              "The answer could not be written in full: its output is full or closed. What the"
                  + " command changed in the book stands.");
    }
    world.err().flush();
    return unread && ANSWERED.contains(code) ? ExitCode.FAILED : code;
  }

  /** The screen alone: no word is there to be taken apart, so the library for that stays away. */
  private static int screen(Desk desk) {
    try {
      return new Root(desk).call();
    } catch (RuntimeException e) {
      return failed(e, desk);
    }
  }

  /**
   * The command line with those commands that its words name; with all of them where that does not
   * do, such as for help or for a word that is no command. To build them all costs as much as most
   * answers.
   */
  private static CommandLine line(Desk desk, String... arguments) {
    Set<String> words = new HashSet<>(List.of(arguments));
    CommandLine few = line(desk, words::contains);
    return suffices(few, arguments) ? few : line(desk, name -> true);
  }

  private static boolean suffices(CommandLine line, String... arguments) {
    try {
      return !line.parseArgs(arguments).isUsageHelpRequested();
    } catch (ParameterException e) {
      return false;
    }
  }

  private static CommandLine line(Desk desk, Predicate<String> wanted) {
    CommandLine root = new CommandLine(new Root(desk));
    CommandTree.COMMANDS.forEach(
        (name, command) -> {
          if (wanted.test(name)) {
            root.addSubcommand(name, command.apply(desk));
          }
        });
    return told(root, desk);
  }

  private static CommandLine told(CommandLine root, Desk desk) {
    World world = desk.world();
    return root.setExpandAtFiles(false)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .registerConverter(Double.class, Commands::number)
        .setOut(world.out())
        .setErr(world.err())
        .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
        .setParameterExceptionHandler((e, args) -> misused(e, world))
        .setExecutionExceptionHandler((e, line, parsed) -> failed(e, desk));
  }

  private static Double number(String text) {
    return Decimal.parse(text)
        .orElseThrow(
            () -> new TypeConversionException("\"" + Text.clean(text) + "\" is not a number"));
  }

  private static int misused(ParameterException e, World world) {
    CommandLine line = e.getCommandLine();
    world.err().println(Text.clean(e.getMessage()));
    CommandLine.UnmatchedArgumentException.printSuggestions(e, world.err());
    world.err().println("See: " + line.getCommandSpec().qualifiedName() + " --help");
    return ExitCode.NOT_UNDERSTOOD;
  }

  private static int failed(Exception e, Desk desk) {
    if (e instanceof Refusal) {
      return told(e, ExitCode.NOT_UNDERSTOOD, desk);
    }
    if (e instanceof Unwritable) {
      return told(e, ExitCode.FAILED, desk);
    }
    if (e instanceof BookTrouble) {
      return told(e, ExitCode.BOOK, desk);
    }
    desk.world()
        .err()
        .println(
            "Motebook failed at something it should have done: "
                + Text.clean(String.valueOf(e.getMessage()))
                + " ("
                + e.getClass().getSimpleName()
                + "). Nothing was half written.");
    return ExitCode.FAILED;
  }

  private static int told(Exception e, int code, Desk desk) {
    String told =
        e instanceof Refusal refusal
            ? new ActionText(desk.program()).told(refusal)
            : e.getMessage();
    desk.world().err().println(told);
    return code;
  }
}
