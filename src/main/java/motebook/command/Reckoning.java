package motebook.command;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;

/** What every reckoning of the desk calculator shares. */
abstract class Reckoning implements Callable<Integer> {
  private final Desk desk;
  @Mixin private Answer answer;

  Reckoning(Desk desk) {
    this.desk = desk;
  }

  /** The desk that it is reckoned at. */
  final Desk desk() {
    return desk;
  }

  /**
   * Prints the answer.
   *
   * @param object its JSON
   * @param lines its sentences
   */
  Integer answer(Object object, String... lines) {
    desk.answer(answer.json(), () -> object, () -> List.of(lines));
    return ExitCode.DONE;
  }
}
