package motebook.command;

import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.model.MaskUse;
import motebook.model.Work;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "wore",
    description = {
      "Another respirator was worn in a session than its line says. The seal check and the",
      "percentage stay as they were said; without any, it was worn all the time.",
      "Example: motebook fit wore 12 \"air line\" --checked"
    })
final class FitWore implements Callable<Integer> {
  private final Desk desk;

  @Parameters(index = "0", paramLabel = "SESSION", description = "The session's number.")
  private long id;

  @Parameters(index = "1", paramLabel = "RESPIRATOR", description = "What was worn.")
  private String respirator;

  @Option(names = "--checked", description = "Its seal was checked.")
  private boolean checked;

  FitWore(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      Work now = book.wore(id, respirator, checked).work();
      String worn = now.mask().map(MaskUse::respirator).orElse("");
      desk.out().println("Session %d: %s was worn.".formatted(id, worn));
    }
    return ExitCode.DONE;
  }
}
