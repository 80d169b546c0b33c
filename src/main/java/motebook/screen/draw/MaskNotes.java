package motebook.screen.draw;

import java.util.ArrayList;
import java.util.List;
import motebook.desk.Credit;
import motebook.desk.DayReport;
import motebook.desk.Objection;
import motebook.report.CreditText;
import motebook.report.Wording;

/** All that stands against the masks of a day, in the order to mend it. */
final class MaskNotes {
  private MaskNotes() {}

  /** The paragraphs; none where every mask that was worn counts. */
  static List<String> of(DayReport report) {
    List<String> lines = new ArrayList<>();
    for (var line : report.sessions()) {
      Credit credit = line.credit();
      if (!credit.objections().isEmpty()) {
        var work = line.source().session().work();
        lines.add(
            "The mask is not credited in "
                + Wording.span(work)
                + " "
                + Wording.job(line.source())
                + ":");
        lines.addAll(reasons(credit));
      }
    }
    report
        .nextStep()
        .ifPresent(step -> lines.add("Enter takes up the first: " + step.against().reason() + "."));
    return lines;
  }

  private static List<String> reasons(Credit credit) {
    List<String> lines = new ArrayList<>();
    for (Objection one : credit.toTell()) {
      lines.add(
          (lines.size() + 1)
              + ". "
              + one.reason()
              + "."
              + one.check()
                  .map(any -> " The sheet is entered as a finish of that name.")
                  .orElse(""));
    }
    credit.remedy().map(one -> CreditText.promise(one, credit)).ifPresent(lines::add);
    return lines;
  }
}
