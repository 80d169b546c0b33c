package motebook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import motebook.desk.Teaching;
import motebook.desk.Teaching.Contradiction;
import motebook.desk.Teaching.Low;
import motebook.desk.Teaching.Moved;
import motebook.desk.Teaching.MovedDay;
import motebook.model.Figures;
import motebook.science.Estimate;

/** What samples change, before and after, as JSON and as text. */
public final class TeachingReport {
  private TeachingReport() {}

  /** All that moves by more than a tenth, for {@code sample add --json}. */
  public static List<Map<String, Object>> json(Teaching teaching) {
    return Stream.concat(
            teaching.work().stream().map(TeachingReport::json),
            teaching.days().stream().map(TeachingReport::json))
        .toList();
  }

  private static Map<String, Object> json(Moved moved) {
    return Json.object(
        "operation", moved.operation().key(),
        "material", moved.material().map(material -> material.key()).orElse(null),
        "control", moved.control().map(control -> control.key()).orElse(null),
        "logged", moved.logged(),
        "before", DayJson.estimate(moved.before()),
        "after", DayJson.estimate(moved.after()));
  }

  private static Map<String, Object> json(MovedDay day) {
    return Json.object(
        "date", day.date().toString(),
        "person", day.person(),
        "before", DayJson.estimate(day.before()),
        "after", DayJson.estimate(day.after()));
  }

  /** The same as lines; none where nothing moves so far. */
  public static List<String> moved(Teaching teaching) {
    List<String> lines = new ArrayList<>();
    if (!teaching.work().isEmpty() || !teaching.days().isEmpty()) {
      lines.add("What moves by more than a tenth, before and after, mg/m³ outside the mask:");
      teaching
          .days()
          .forEach(
              day ->
                  lines.add(
                      "  "
                          + day.date()
                          + ", "
                          + day.person()
                          + ", 8-hour TWA: "
                          + change(day.before(), day.after())));
      teaching.work().stream().filter(Moved::logged).forEach(one -> lines.add(line(one)));
      List<Moved> others = teaching.work().stream().filter(one -> !one.logged()).toList();
      if (!others.isEmpty()) {
        lines.add("  not logged in the last year:");
        others.forEach(one -> lines.add("  " + line(one)));
      }
    }
    return lines;
  }

  private static String line(Moved moved) {
    return "  "
        + moved.operation().name()
        + moved.material().map(material -> " of " + Wording.material(material)).orElse("")
        + moved.control().map(control -> " with " + control.spoken()).orElse("")
        + ", an hour in the default shop: "
        + change(moved.before(), moved.after());
  }

  private static String change(Estimate before, Estimate after) {
    return Wording.estimate(before) + " -> " + Wording.estimate(after);
  }

  /** What speaks against the samples: those too low and those that contradict others. */
  public static List<String> doubts(Teaching teaching) {
    return Stream.concat(
            teaching.low().stream().map(TeachingReport::low),
            teaching.contradicting().stream().map(TeachingReport::contradiction))
        .toList();
  }

  private static String contradiction(Contradiction one) {
    return EvidenceReport.brief(one.sample(), one.measured())
        + " mg/m³ contradicts sample "
        + one.other().id()
        + " ("
        + EvidenceReport.describe(one.other())
        + "): it lies more than three deviations from the "
        + Figures.rounded(one.estimatedMgPerM3())
        + " mg/m³ that was expected.";
  }

  private static String low(Low low) {
    return EvidenceReport.brief(low.sample(), low.measured())
        + " mg/m³ lies far below the estimate of "
        + Figures.rounded(low.estimatedMgPerM3())
        + " mg/m³"
        + (low.measured().below()
            ? ": ten times the limit of detection or more. "
            : ": less than a twentieth of it. ")
        + "Were pump and filter in order?";
  }
}
