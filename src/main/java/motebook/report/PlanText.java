package motebook.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import motebook.desk.DayReport;
import motebook.desk.DayReport.SessionLine;
import motebook.desk.Foremost;
import motebook.desk.PlanReport;
import motebook.desk.PlanReport.Help;
import motebook.desk.Plans;
import motebook.desk.VapourReport;
import motebook.model.Figures;
import motebook.model.Session;
import motebook.reference.Caution;
import motebook.reference.Operation;

/** What some work would bring, as text for a terminal. */
public final class PlanText {
  private static final int HELPS = 3;
  private static final String LABEL = "          ";

  private final Plans plans;
  private final List<String> said;
  private final Ink ink;
  private final Set<String> warned = new HashSet<>();

  private final Invocation program;

  private PlanText(Plans plans, List<String> said, Ink ink, Invocation program) {
    this.program = program;
    this.plans = plans;
    this.said = said;
    this.ink = ink;
  }

  /**
   * The lines of the command.
   *
   * @param said each of the plans as a line that says it in full
   */
  public static List<String> of(Plans plans, List<String> said, Ink ink, Invocation program) {
    return new PlanText(plans, said, ink, program).lines();
  }

  /** All that is told of one plan, but for what it says. */
  public static List<String> told(PlanReport plan, Ink ink, Invocation program) {
    return new PlanText(new Plans(List.of(plan)), List.of(), ink, program).plan(plan);
  }

  /** Which of several plans is the lowest, and how the others compare; empty where none is. */
  public static Optional<String> ranked(Plans plans) {
    if (plans.all().size() > 1 && plans.uncovered()) {
      return Optional.of("lowest    not said: no limit here covers the dust of one of them");
    }
    return plans.ranked().size() > 1
        ? Optional.of("lowest    " + ranking(plans))
        : Optional.empty();
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < said.size(); i++) {
      lines.add(ink.headline("%4d  %s".formatted(i + 1, said.get(i))));
      lines.addAll(plan(plans.all().get(i)));
    }
    ranked(plans).ifPresent(lines::add);
    lines.add("None of this is written. " + Wording.ESTIMATES);
    return lines;
  }

  private List<String> plan(PlanReport plan) {
    List<String> lines = new ArrayList<>();
    plan.replaced().forEach(session -> lines.add("instead   of " + replaced(session)));
    lines.addAll(DayText.leftOut(plan.day()));
    lines.add("meanwhile " + meanwhile(plan.line()));
    lines.addAll(DayText.refused(plan.line(), "", CreditText.ahead(program)));
    lines.addAll(DayText.dose(plan.day(), ink, "of work"));
    lines.add("before    " + before(plan));
    for (String reached : reached(plan)) {
      lines.add(
          (lines.get(lines.size() - 1).startsWith("reached") ? LABEL : "reached   ") + reached);
    }
    lines.addAll(helps(plan));
    lines.addAll(warnings(plan));
    return lines;
  }

  private static String replaced(Session session) {
    return "session "
        + session.id()
        + ", "
        + Wording.span(session.work())
        + ", which is in the book at that time";
  }

  private static String meanwhile(SessionLine line) {
    return Figures.rounded(line.meanOutsideMgPerM3())
        + " mg/m³ outside the mask"
        + (line.source().rough() ? " (rough)" : "")
        + "; "
        + Figures.percent(line.sharePercent())
        + " of the day's dose";
  }

  // Dust that is far from its limit says nothing of vapour that is nearer to one.
  private static List<String> reached(PlanReport plan) {
    if (plan.foremost() == Foremost.DUST) {
      return LimitText.reached(plan.reach());
    }
    List<String> lines = new ArrayList<>();
    VapourReport vapour = plan.day().vapour().orElseThrow();
    if (vapour.nearness() > 1) {
      lines.add("the vapour limits are passed with this work");
    }
    if (plan.day().limit().filter(held -> held.ratio() > 1).isPresent()) {
      lines.addAll(LimitText.reached(plan.reach()));
    }
    return lines;
  }

  private static String before(PlanReport plan) {
    return plan.before().outside().estimate().typical() == 0
        ? "nothing breathed that day"
        : "outside " + Wording.estimate(plan.before().outside().estimate()) + added(plan);
  }

  private static String added(PlanReport plan) {
    double added = plan.added();
    return (added < 0 ? "; this takes off " : "; this adds ") + Figures.rounded(Math.abs(added));
  }

  private static List<String> helps(PlanReport plan) {
    if (plan.tooMuch()) {
      return List.of(
          "helps     use less, or another finish: no control or place in this book is enough");
    }
    List<String> lines = new ArrayList<>();
    plan.helps().stream()
        .limit(HELPS)
        .map(help -> help(help, plan.foremost(), plan.line().source().operation()))
        .forEach(help -> lines.add((lines.isEmpty() ? "helps     " : LABEL) + help));
    return lines;
  }

  /** {@code with vacuum on the tool: about 0.71 mg/m³ outside}. */
  private static String help(Help help, Foremost foremost, Operation operation) {
    return help.control()
            .map(control -> "with " + Wording.offered(control, operation))
            .orElseGet(() -> "outdoors, in " + help.work().place())
        + ": about "
        + figure(help.day(), foremost);
  }

  private static String figure(DayReport day, Foremost foremost) {
    return foremost == Foremost.DUST
        ? Figures.rounded(day.outside().estimate().central()) + " mg/m³ outside"
        : Figures.rounded(day.vapour().map(v -> v.indexOutside().central()).orElse(0.0))
            + " times the limits of vapour outside";
  }

  /** What the plan brings to be known that the day did not, each once. */
  private List<String> warnings(PlanReport plan) {
    List<Caution> fresh =
        plan.day().cautions().stream()
            .filter(caution -> !plan.before().cautions().contains(caution))
            .toList();
    return Stream.concat(
            plan.day().remarks().stream()
                .filter(remark -> !plan.before().remarks().contains(remark))
                .map(remark -> "note      " + remark),
            fresh.stream().map(caution -> "caution   " + caution.sentence()))
        .filter(warned::add)
        .toList();
  }

  /** {@code 2, about 0.71 mg/m³ outside; then 3, 1.4 times that; 1, 3.6 times that}. */
  private static String ranking(Plans plans) {
    List<Integer> ranked = plans.ranked();
    int first = ranked.get(0);
    String lowest =
        plans
            .foremost()
            .map(one -> figure(plans.all().get(first).day(), one))
            .orElseGet(
                () ->
                    Figures.rounded(plans.figure(first))
                        + " times the nearer limit, of dust or of vapour");
    return first
        + 1
        + ", about "
        + lowest
        + "; then "
        + ranked.stream()
            .skip(1)
            .map(i -> (i + 1) + ", " + times(plans.figure(i), plans.figure(first)))
            .collect(Collectors.joining("; "));
  }

  private static String times(double figure, double lowest) {
    return lowest == 0 ? Figures.rounded(figure) : Figures.rounded(figure / lowest) + " times that";
  }
}
