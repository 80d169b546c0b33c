package motebook.command;

import java.util.List;
import java.util.concurrent.Callable;
import motebook.desk.Allowed;
import motebook.journal.Book;
import motebook.model.Gear;
import motebook.reference.Masks;
import motebook.reference.Reference;
import motebook.report.GearReport;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The masks and filters of the shop. */
final class GearCommand {
  private GearCommand() {}

  static Allowed allowed() {
    return new Allowed(Masks.shipped(), Reference.shipped());
  }

  /** The command with all that hangs on it. */
  static CommandLine line(Desk desk) {
    CommandLine add =
        new CommandLine(new GearAdd.Group())
            .addSubcommand(new GearAdd.OfRespirator(desk))
            .addSubcommand(new ElementAdd(desk))
            .addSubcommand(new GearAdd.OfFilter(desk))
            .addSubcommand(new FinishCommand.Add(desk));
    return new CommandLine(new Group())
        .addSubcommand(add)
        .addSubcommand(new ListAll(desk))
        .addSubcommand(new GearClocks(desk))
        .addSubcommand(new GearGive(desk))
        .addSubcommand(new ElementOpen(desk))
        .addSubcommand(new ElementChange(desk))
        .addSubcommand(new GearRetire(desk))
        .addSubcommand(new GearRemove(desk))
        .addSubcommand(new GearUpkeep(desk))
        .addSubcommand(new FinishCommand.ListAll(desk));
  }

  @Command(name = "gear", description = "Respirators, their elements, and the filters of the shop.")
  static final class Group extends GroupCommand {}

  @Command(name = "list", description = "Lists the masks and filters that are in use.")
  static final class ListAll implements Callable<Integer> {
    private final Desk desk;
    @Mixin private Answer answer;

    @Option(names = "--all", description = "Those that were retired too.")
    private boolean all;

    ListAll(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        Gear gear = book.gear();
        GearReport report = new GearReport(allowed());
        desk.answer(answer.json(), () -> report.object(gear, all), () -> lines(report, gear));
      }
      return ExitCode.DONE;
    }

    private List<String> lines(GearReport report, Gear gear) {
      List<String> lines = report.lines(gear, all);
      return lines.isEmpty()
          ? List.of("No masks or filters yet. Add one with: " + desk.program().command("gear add"))
          : lines;
    }
  }
}
