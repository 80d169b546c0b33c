package motebook.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import motebook.desk.LimitReach;
import motebook.desk.LimitReach.Moments;
import motebook.desk.PlanReport;
import motebook.desk.PlanReport.Help;
import motebook.desk.Plans;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Control;

/** What some work would bring, as JSON. */
public final class PlanJson {
  private PlanJson() {}

  /**
   * The object that the command answers.
   *
   * @param said says a session in full, as a line
   */
  public static Map<String, Object> of(Plans plans, Function<Work, String> said) {
    return Json.object(
        "plans",
        IntStream.range(0, plans.all().size())
            .mapToObj(i -> plan(plans.all().get(i), said))
            .toList(),
        "lowest",
        plans.ranked().stream().findFirst().map(i -> i + 1).orElse(null));
  }

  private static Map<String, Object> plan(PlanReport plan, Function<Work, String> said) {
    return Json.object(
        "line", said.apply(plan.work()),
        "replaces", plan.replaced().stream().map(Session::id).toList(),
        "added_typical_mg_m3", plan.addedTypical(),
        "added_mg_m3", plan.added(),
        "minutes_to_limit", minutes(plan.reach().limit().half()),
        "minutes_to_limit_1_in_20", minutes(plan.reach().limit().oneInTwenty()),
        "minutes_to_advisory_limit", minutes(plan.reach().advisory().flatMap(Moments::half)),
        "minutes_to_advisory_limit_1_in_20",
            minutes(plan.reach().advisory().flatMap(Moments::oneInTwenty)),
        "twa_before", DayJson.twa(plan.before().outside()),
        "helps", helps(plan, said),
        "day", DayJson.of(plan.day()));
  }

  private static Integer minutes(Optional<LimitReach.Moment> moment) {
    return moment.map(LimitReach.Moment::minutes).orElse(null);
  }

  private static List<Map<String, Object>> helps(PlanReport plan, Function<Work, String> said) {
    return plan.helps().stream().map(help -> help(help, said)).toList();
  }

  private static Map<String, Object> help(Help help, Function<Work, String> said) {
    return Json.object(
        "line", said.apply(help.work()),
        "control", help.control().map(Control::key).orElse(null),
        "place", help.work().place(),
        "twa_outside", DayJson.twa(help.day().outside()),
        "mixture_index_outside_central",
            help.day().vapour().map(vapour -> vapour.indexOutside().central()).orElse(null));
  }
}
