package motebook.screen.draw;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import motebook.desk.Credit;
import motebook.desk.DayReport;
import motebook.desk.Objection;
import motebook.model.Figures;
import motebook.report.Wording;

/** All that stands against the masks of a day, in the order to mend it, each with its command. */
final class MaskNotes {
  private final DayReport report;
  private final Set<Objection> told = new HashSet<>();

  private MaskNotes(DayReport report) {
    this.report = report;
  }

  /** The paragraphs; none where every mask that was worn counts. */
  static List<String> of(DayReport report) {
    return new MaskNotes(report).lines();
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (var line : report.sessions()) {
      Credit credit = line.credit();
      if (!credit.objections().isEmpty()) {
        var work = line.source().session().work();
        String what = Wording.span(work) + " " + Wording.job(line.source());
        lines.add("The mask is not credited in " + what + ". What is missing:");
        lines.addAll(missing(credit));
        then(credit).ifPresent(lines::add);
      }
    }
    if (told.stream().anyMatch(one -> one.mend().isPresent())) {
      lines.add("Such a command is typed in a shell, after q here.");
    }
    return lines;
  }

  private List<String> missing(Credit credit) {
    List<String> lines = new ArrayList<>();
    int number = 1;
    for (Objection one : credit.objections()) {
      boolean again = !told.add(one);
      String mend = one.mend().map(m -> " " + m).orElse("");
      lines.add(number++ + ". " + one.reason() + "." + (again ? " (as above)" : mend));
    }
    return lines;
  }

  private static java.util.Optional<String> then(Credit credit) {
    OptionalDouble assigned = credit.dust().assigned();
    boolean mendable = credit.objections().stream().allMatch(one -> one.mend().isPresent());
    return assigned.isPresent() && mendable && !credit.dust().objections().isEmpty()
        ? java.util.Optional.of(
            "With all of that mended it counts as " + Figures.plain(assigned.getAsDouble()) + ".")
        : java.util.Optional.empty();
  }
}
