package motebook.command;

import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.model.MaskUse;
import motebook.model.Work;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
    name = "checked",
    description = {
      "The seal was checked when the mask was put on, though the session's line left it out.",
      "A check that failed is recorded as none: the mask then counts for nothing in the session."
    })
final class FitChecked implements Callable<Integer> {
  private final Desk desk;

  @Parameters(paramLabel = "SESSION", description = "The session's number.")
  private long id;

  @Mixin private Outcome outcome;

  FitChecked(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      boolean held = outcome.passed();
      Work now = book.sealChecked(id, held).work();
      desk.out()
          .println(
              "Session %d: the seal of %s was checked%s."
                  .formatted(
                      id,
                      now.mask().map(MaskUse::respirator).orElse(""),
                      held ? "" : " and did not hold, so the mask counts for nothing"));
    }
    return ExitCode.DONE;
  }
}
