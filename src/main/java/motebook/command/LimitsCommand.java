package motebook.command;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import motebook.desk.Choices;
import motebook.journal.Book;
import motebook.journal.Settings;
import motebook.model.Figures;
import motebook.reference.Limit;
import motebook.reference.Reference;
import motebook.report.Json;
import motebook.report.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The sets of limits. */
final class LimitsCommand {
  private LimitsCommand() {}

  @Command(
      name = "limits",
      description = "The occupational exposure limits that days are held against.")
  static final class Group extends GroupCommand {}

  @Command(
      name = "list",
      description = "Lists every set with its limits, their edition and source.")
  static final class ListAll implements Callable<Integer> {
    private final Desk desk;
    @Mixin private Answer answer;

    ListAll(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        String chosen = book.settings().limitSet();
        List<Limit> limits = Reference.shipped().limits();
        desk.answer(
            answer.json(),
            () ->
                Json.object(
                    "chosen", chosen, "limits", limits.stream().map(ListAll::object).toList()),
            () -> limits.stream().map(limit -> line(limit, chosen)).toList());
      }
      return ExitCode.DONE;
    }

    private static Map<String, Object> object(Limit limit) {
      return Json.object(
          "set", limit.set(),
          "key", limit.key(),
          "mg_m3", limit.mgPerM3(),
          "fraction", word(limit.fraction()),
          "averaging_minutes", limit.averagingMinutes(),
          "wood_classes", limit.woodClasses().stream().map(LimitsCommand::word).toList(),
          "valid_from", limit.validFrom().map(LocalDate::toString).orElse(null),
          "judges", limit.judges(),
          "valid_to", limit.validTo().map(LocalDate::toString).orElse(null),
          "edition", limit.edition(),
          "evidence", limit.evidence(),
          "source", limit.source());
    }

    private static String line(Limit limit, String chosen) {
      return String.format(
          Locale.ROOT,
          "%s %-14s %s; %s; %s; %s%s",
          limit.set().equals(chosen) ? "*" : " ",
          limit.set(),
          Wording.limit(limit),
          Wording.wood(limit),
          limit.edition().isEmpty() ? "edition not known" : limit.edition(),
          limit.evidence(),
          shown(limit));
    }
  }

  private static String shown(Limit limit) {
    return limit.judges() ? "" : "; shown only, days are not judged by it";
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Command(
      name = "use",
      description =
          "Chooses the set that every day is held against; motebook limits list tells what each"
              + " comes to.")
  static final class Use implements Callable<Integer> {
    private final Desk desk;

    @Parameters(paramLabel = "SET")
    private String set;

    Use(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        Settings chosen = Choices.of("limits").set(book.settings(), set);
        String key = chosen.limitSet();
        book.change(chosen, "chose the limits " + key);
        desk.out().println("Every day is now held against: " + key);
        Reference.shipped().limits().stream()
            .filter(limit -> limit.set().equals(key) && limit.validOn(desk.today()))
            .forEach(
                limit ->
                    desk.out()
                        .println(
                            "  "
                                + Wording.limit(limit)
                                + ", "
                                + Wording.wood(limit)
                                + ", over "
                                + Figures.duration(limit.averagingMinutes())
                                + shown(limit)));
      }
      return ExitCode.DONE;
    }
  }
}
