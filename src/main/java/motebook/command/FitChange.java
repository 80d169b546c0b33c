package motebook.command;

import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.model.FitRecord.FaceChange;
import motebook.model.Refusal;
import motebook.model.Text;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
    name = "change",
    description = {
      "A face changed, so that a new fit test is asked for: weight (20 lb or 9 kg), dental work,",
      "or the face itself."
    })
final class FitChange implements Callable<Integer> {
  private final Desk desk;
  @Mixin private FitCommand.WhoAndWhen who;

  @Option(
      names = "--what",
      required = true,
      paramLabel = "WHAT",
      description = "weight, or how much was lost since the test (25lb, 11kg); dental; face.")
  private String what;

  FitChange(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    FaceChange.What changed = changed();
    try (Book book = desk.open()) {
      FitCommand.note(new FaceChange(0, who.person(desk, book), who.on(desk), changed), desk, book);
    }
    return ExitCode.DONE;
  }

  private FaceChange.What changed() {
    if (WeightLost.says(what)) {
      WeightLost.requireMuch(what);
      return FaceChange.What.WEIGHT;
    }
    return FaceChange.What.of(what)
        .orElseThrow(
            () ->
                new Refusal(
                    "\"%s\" is no change that is kept: say weight, dental, face, or how much was lost, like 25lb or 11kg."
                        .formatted(Text.clean(what))));
  }
}
