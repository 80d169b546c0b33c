package motebook.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.desk.CareClock;
import motebook.desk.WeekWear;
import motebook.desk.WeekWear.OfElement;
import motebook.desk.WeekWear.OfFilter;
import motebook.model.Retirement;

/** What a week used up of masks and filters, as JSON. */
final class WearJson {
  private WearJson() {}

  static Map<String, Object> of(WeekWear wear) {
    return Json.object(
        "elements", wear.elements().stream().map(WearJson::element).toList(),
        "filters", wear.filters().stream().map(WearJson::filter).toList());
  }

  private static Map<String, Object> element(OfElement used) {
    Map<String, Object> object =
        Json.object(
            "id", used.element().id(),
            "name", used.element().name(),
            "respirator", used.element().respirator(),
            "hours_worn", used.hours(),
            "hours_worn_by", used.hoursByPerson().entrySet().stream().map(WearJson::hours).toList(),
            "hours_limit", orNull(used.hoursLimit()),
            "load_central_mg", used.loadMg().central(),
            "load_low90_mg", used.loadMg().low90(),
            "load_high90_mg", used.loadMg().high90(),
            "load_limit_mg", orNull(used.loadLimitMg()),
            "vapour_used_typical_percent", 100 * used.vapourShare(),
            "put_on", used.putOn().map(Object::toString).orElse(null));
    object.putAll(ended(used.takenOff(), used.spent()));
    return object;
  }

  private static Map<String, Object> hours(Map.Entry<String, Double> of) {
    return Json.object("person", of.getKey(), "hours_worn", of.getValue());
  }

  private static Map<String, Object> filter(OfFilter used) {
    Map<String, Object> object =
        Json.object(
            "id", used.filter().id(),
            "name", used.filter().name(),
            "place", used.filter().place(),
            "run_hours", used.runHours(),
            "upkeep",
                used.upkeep().stream()
                    .map(
                        done ->
                            Json.object("date", done.date().toString(), "what", done.what().key()))
                    .toList());
    object.putAll(ended(used.takenOff(), used.spent()));
    return object;
  }

  private static Map<String, Object> ended(Optional<Retirement> gone, List<CareClock> spent) {
    return Json.object(
        "retired_on", gone.map(end -> end.on().toString()).orElse(null),
        "retired_because", gone.map(Retirement::why).orElse(null),
        "spent",
            spent.stream()
                .map(
                    clock ->
                        Json.object(
                            "clock", clock.kind().name().toLowerCase(Locale.ROOT),
                            "on", clock.ranOut().orElseThrow().date().toString()))
                .toList());
  }

  private static Double orNull(OptionalDouble value) {
    return value.isPresent() ? value.getAsDouble() : null;
  }
}
