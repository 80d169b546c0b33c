package motebook.command;

import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.model.Element;
import motebook.model.MinuteOfDay;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "change",
    description = {
      "Retires an element and puts a fresh one of the same kind in its place. A change that was",
      "forgotten is told with its day: the fresh one is worn until the next one on record."
    })
final class ElementChange implements Callable<Integer> {
  private final Desk desk;

  @Parameters(paramLabel = "NAME")
  private String name;

  @Option(names = "--on", paramLabel = "DATE", description = "When; today unless told.")
  private String on;

  @Option(
      names = "--at",
      paramLabel = "HH:MM",
      description = "Between the work of that day; before all of it unless told.")
  private String at;

  @Option(
      names = "--single-use",
      description = "From then on a fresh one each day, without a change being told.")
  private boolean singleUse;

  ElementChange(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      int minute = at == null ? 0 : Times.minute("--at", at);
      desk.out().println(told(book.rack().change(name, desk.date(on), minute, singleUse)));
    }
    return ExitCode.DONE;
  }

  private String told(Element fresh) {
    String since = fresh.from() + (at == null ? "" : " at " + MinuteOfDay.told(fresh.fromMinute()));
    String what = fresh.singleUse() ? "a fresh one each day" : "a fresh one";
    return "Changed %s: ".formatted(fresh.name())
        + fresh
            .retired()
            .map(
                end ->
                    "%s was on %s from %s until %s (%s)."
                        .formatted(what, fresh.respirator(), since, end.on(), end.why()))
            .orElse("%s is on %s from %s.".formatted(what, fresh.respirator(), since));
  }
}
