package motebook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import motebook.desk.Evidence;
import motebook.desk.Evidence.Agreement;
import motebook.desk.Evidence.Lesson;
import motebook.desk.Evidence.Line;
import motebook.desk.Measured;
import motebook.model.Figures;
import motebook.model.MinuteOfDay;
import motebook.model.Sample;

/** Samples beside the estimates, as JSON and as text. */
public final class EvidenceReport {
  private EvidenceReport() {}

  /** The object of {@code sample list --json}. */
  public static Map<String, Object> json(Evidence evidence) {
    return Json.object(
        "samples", evidence.samples().stream().map(EvidenceReport::sample).toList(),
        "operations", evidence.operations().stream().map(EvidenceReport::lesson).toList(),
        "groups", evidence.groups().stream().map(GroupReport::json).toList());
  }

  private static Map<String, Object> sample(Line line) {
    Sample sample = line.sample();
    return Json.object(
        "id", sample.id(),
        "person", sample.person(),
        "date", sample.date().toString(),
        "from", MinuteOfDay.told(sample.fromMinute()),
        "to", MinuteOfDay.told(sample.toMinute()),
        "fraction", sample.fraction(),
        "kind", sample.kind().key(),
        "type", sample.use().area().isPresent() ? "area" : "personal",
        "place", sample.use().area().orElse(null),
        "factor", sample.use().factor().isPresent() ? sample.use().factor().getAsDouble() : null,
        "relative", sample.use().relative(),
        "stands_for_shift", sample.use().wholeShift(),
        "mg_m3", line.measured().mgPerM3(),
        "below_detection", line.measured().below(),
        "cv", sample.cv(),
        "estimated_mg_m3", of(line, Agreement::estimatedMgPerM3),
        "learned_mg_m3", of(line, Agreement::learnedMgPerM3),
        "ratio", of(line, Agreement::ratio),
        "z", of(line, Agreement::z),
        "note", sample.note());
  }

  private static Double of(Line line, Function<Agreement, Double> figure) {
    Optional<Double> value = line.agreement().map(figure);
    return value.orElse(null);
  }

  private static Map<String, Object> lesson(Lesson lesson) {
    return Json.object(
        "operation", lesson.operation().key(),
        "before", DayJson.estimate(lesson.before()),
        "after", DayJson.estimate(lesson.after()));
  }

  /** The lines of {@code sample list}. */
  public static List<String> text(Evidence evidence, Invocation program) {
    List<String> lines = new ArrayList<>();
    if (evidence.samples().isEmpty()) {
      lines.add(
          "There are no samples in this book. Add one with: " + program.command("sample add"));
      return lines;
    }
    evidence.samples().forEach(line -> lines.add(text(line)));
    evidence.samples().forEach(line -> warning(line).ifPresent(lines::add));
    if (!evidence.operations().isEmpty()) {
      lines.add(
          "Each operation before and after, one session without a control in the default shop:");
      evidence.operations().forEach(lesson -> lines.add(text(lesson)));
    }
    if (!evidence.groups().isEmpty()) {
      lines.add(GroupReport.HEADING);
      evidence.groups().forEach(group -> lines.addAll(GroupReport.lines(group)));
    }
    return lines;
  }

  private static String text(Line line) {
    Sample sample = line.sample();
    return String.format(
        Locale.ROOT,
        "%4d  %s %s-%s %s: %s mg/m³ %s%s",
        sample.id(),
        sample.date(),
        MinuteOfDay.told(sample.fromMinute()),
        MinuteOfDay.told(sample.toMinute()),
        where(sample),
        measured(line.measured()),
        sample.fraction() + use(sample),
        line.agreement()
            .map(EvidenceReport::agreement)
            .orElse(
                sample.use().relative() ? "" : "; no dusty work is logged then, nothing learned"));
  }

  /** A sample in few words: {@code 2026-03-02 09:00-13:00 me: 1.2 inhalable}. */
  public static String brief(Sample sample, Measured measured) {
    return String.format(
        Locale.ROOT,
        "%s %s-%s %s: %s %s",
        sample.date(),
        MinuteOfDay.told(sample.fromMinute()),
        MinuteOfDay.told(sample.toMinute()),
        where(sample),
        measured(measured),
        sample.fraction());
  }

  private static String measured(Measured measured) {
    return (measured.below() ? "below " : "") + Figures.rounded(measured.mgPerM3());
  }

  private static String agreement(Agreement agreement) {
    return String.format(
        Locale.ROOT,
        ", estimated %s (%s times, z %s)",
        Figures.rounded(agreement.estimatedMgPerM3()),
        Figures.rounded(agreement.ratio()),
        Figures.rounded(agreement.z()));
  }

  private static Optional<String> warning(Line line) {
    return line.agreement()
        .filter(Agreement::disagrees)
        .map(
            far ->
                "warning   Sample "
                    + line.sample().id()
                    + " lies more than three deviations from all else: check its times, its unit"
                    + " and what was logged then.");
  }

  private static String text(Lesson lesson) {
    return "  "
        + lesson.operation().name()
        + ": "
        + Wording.estimate(lesson.before())
        + ", now "
        + Wording.estimate(lesson.after());
  }

  /** Who wore the sampler, or where it hung. */
  private static String where(Sample sample) {
    return sample.use().area().map(place -> "air of " + place).orElse(sample.person());
  }

  private static String use(Sample sample) {
    return (sample.use().factor().isPresent()
            ? ", meter times " + Figures.plain(sample.use().factor().getAsDouble())
            : "")
        + (sample.use().relative() ? ", for comparison only" : "")
        + (sample.use().wholeShift() ? ", stands for the shift" : "");
  }

  /** A sample in words: {@code 2026-03-02 09:00-10:00 me: 1.2 mg/m³ inhalable, gravimetric}. */
  public static String describe(Sample sample) {
    return sample.date()
        + " "
        + MinuteOfDay.told(sample.fromMinute())
        + "-"
        + MinuteOfDay.told(sample.toMinute())
        + " "
        + where(sample)
        + ": "
        + measured(Measured.of(sample))
        + " mg/m³ "
        + sample.fraction()
        + ", "
        + sample.kind().key()
        + use(sample);
  }
}
