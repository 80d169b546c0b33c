package motebook.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import motebook.desk.Ledger;
import motebook.desk.Plans;
import motebook.entry.Scene;
import motebook.entry.SpokenLine;
import motebook.journal.Book;
import motebook.model.Refusal;
import motebook.model.Work;
import motebook.report.PlanJson;
import motebook.report.PlanText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "plan",
    description = {
      "What if: reckons what work would bring and what would help, and writes nothing.",
      "Several quoted lines are held against each other. Without a time the work begins now;"
          + " at 9:15, tomorrow or a weekday to come may be said.",
      "Example: motebook plan \"40m orbital sanding of oak\" \"40m block sanding of oak\""
    })
final class PlanCommand implements Callable<Integer> {
  private final Desk desk;
  @Mixin private Answer answer;

  @Parameters(paramLabel = "LINE", description = "What may be done; one line may go unquoted.")
  private List<String> words = new ArrayList<>();

  @Option(
      names = "--published",
      description = "By the published figures alone, without what the shop's samples taught.")
  private boolean published;

  PlanCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      Scene scene = desk.scene(book).planned();
      Ledger ledger = new Ledger(book, !published);
      Plans plans = new Plans(works(scene).stream().map(ledger::plan).toList());
      desk.answer(
          answer.json(),
          () -> PlanJson.of(plans, work -> SpokenLine.say(work, scene)),
          () -> PlanText.of(plans, said(plans, scene), desk.ink(), desk.program()));
    }
    return 0;
  }

  private static List<String> said(Plans plans, Scene scene) {
    return plans.all().stream().map(plan -> SpokenLine.say(plan.work(), scene)).toList();
  }

  private List<Work> works(Scene scene) {
    List<String> lines = lines();
    List<Work> works = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      works.add(read(lines.get(i), lines.size() == 1 ? "" : "Line " + (i + 1) + ": ", scene));
    }
    return works;
  }

  private static Work read(String line, String which, Scene scene) {
    try {
      return SpokenLine.read(line, scene);
    } catch (Refusal refusal) {
      throw refusal.within(which);
    }
  }

  /** Every argument is a line, unless the first is a single word: then they are one line. */
  private List<String> lines() {
    boolean quoted = words.size() > 1 && words.get(0).strip().contains(" ");
    return quoted ? words : List.of(String.join(" ", words));
  }
}
