package motebook.command;

import java.util.concurrent.Callable;
import motebook.model.Refusal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

@Command(name = "export", description = "Puts what the book says into files for others to read.")
final class ExportCommand implements Callable<Integer> {
  private final Desk desk;
  @Mixin private SheetExport sheet;

  ExportCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    if (!sheet.asked()) {
      throw new Refusal("Say what to write: the week's sheet with --pdf FILE or --html FILE.");
    }
    sheet.write(desk);
    return ExitCode.DONE;
  }
}
