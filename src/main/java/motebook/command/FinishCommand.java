package motebook.command;

import java.util.List;
import java.util.concurrent.Callable;
import motebook.desk.Ledger;
import motebook.entry.MakeUp;
import motebook.entry.Quantities;
import motebook.journal.Book;
import motebook.model.OwnFinish;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.reference.Finishes;
import motebook.report.FinishReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The finishes, and those that the owner enters from makers' data sheets. */
final class FinishCommand {
  private FinishCommand() {}

  @Command(
      name = "finish",
      description = {
        "Enters a finish from its maker's data sheet. Under the name of a shipped finish it takes",
        "that one's place; how fast it dries and what it warns of is as the one it is like.",
        "Example: motebook gear add finish \"Quick Clear\" --like lacquer --volatile 640"
            + " --solvents \"toluene 0.2 acetone 0.8\""
      })
  static final class Add implements Callable<Integer> {
    private final Desk desk;

    @Parameters(paramLabel = "NAME")
    private String name;

    @Option(
        names = "--like",
        required = true,
        paramLabel = "FINISH",
        description = "The shipped finish that it dries like.")
    private String like;

    @Option(
        names = "--volatile",
        required = true,
        paramLabel = "G/L",
        description =
            "Organic vapour of a litre as sold, acetone and other exempt solvents included; or"
                + " as 5.3lb/gal.")
    private String volatileContent;

    @Option(
        names = "--solvents",
        required = true,
        paramLabel = "SHARES",
        description =
            "Share by weight of each solvent in that vapour: \"toluene 0.2 acetone 0.8\".")
    private String solvents;

    @Option(
        names = "--replace",
        description = "Put these figures in the place of the owner's earlier ones.")
    private boolean replace;

    Add(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      OwnFinish sheet =
          new OwnFinish(
              name,
              MakeUp.like(like).key(),
              Quantities.contentGPerL("--volatile", volatileContent),
              MakeUp.read(solvents));
      try (Book book = desk.open()) {
        refuseSecondName(sheet, book);
        OwnFinish kept = replace ? book.finishes().replace(sheet) : book.finishes().add(sheet);
        desk.out()
            .println(
                (replace ? "Changed " : "Added ") + FinishReport.line(new Ledger(book).own(kept)));
      }
      return ExitCode.DONE;
    }
  }

  /** A shipped finish has several names; under two of them it could mean two sheets. */
  private static void refuseSecondName(OwnFinish sheet, Book book) {
    Finishes shipped = Finishes.shipped();
    for (OwnFinish other : book.finishes().all()) {
      boolean sameName = Text.folded(other.name()).equals(Text.folded(sheet.name()));
      if (!sameName && shipped.key(other.name()).equals(shipped.key(sheet.name()))) {
        throw new Refusal(
            "\"%s\" is another name of \"%s\", which has a data sheet already. Use that name."
                .formatted(sheet.name(), other.name()));
      }
    }
  }

  @Command(
      name = "finishes",
      description = "Lists the finishes that can be said after \"using\", and what they give off.")
  static final class ListAll implements Callable<Integer> {
    private final Desk desk;
    @Mixin private Answer answer;

    ListAll(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        var finishes = new Ledger(book).finishes().inUseOn(desk.today());
        desk.answer(
            answer.json(),
            () -> FinishReport.object(finishes),
            () -> List.copyOf(finishes.stream().map(FinishReport::line).toList()));
      }
      return ExitCode.DONE;
    }
  }
}
