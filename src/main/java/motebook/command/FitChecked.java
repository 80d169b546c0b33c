package motebook.command;

import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.model.MaskUse;
import motebook.model.Refusal;
import motebook.model.Work;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
    name = "checked",
    description = "The seal was checked at the donning of a session, though its line left it out.")
final class FitChecked implements Callable<Integer> {
  private final Desk desk;

  @Parameters(paramLabel = "SESSION", description = "The session's number.")
  private long id;

  FitChecked(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      Work was = FitCommand.work(book, id);
      MaskUse mask =
          was.mask()
              .orElseThrow(() -> new Refusal("No respirator was worn in session " + id + "."));
      book.amend(id, was.withMask(new MaskUse(mask.respirator(), true, mask.wornPercent())));
      desk.out()
          .println("Session %d: the seal of %s was checked.".formatted(id, mask.respirator()));
    }
    return ExitCode.DONE;
  }
}
