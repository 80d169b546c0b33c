package motebook.report;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.desk.DayReport;
import motebook.desk.DayReport.OtherSource;
import motebook.desk.DayReport.SessionLine;
import motebook.desk.DayReport.Twa;
import motebook.desk.HeldLimit;
import motebook.desk.NightShift;
import motebook.desk.PlanReport;
import motebook.desk.RequiredProtection;
import motebook.desk.Uncovered;
import motebook.model.MaskUse;
import motebook.model.MinuteOfDay;
import motebook.model.Work;
import motebook.reference.Caution;
import motebook.reference.Limit;
import motebook.science.Estimate;

/** A day as JSON. */
public final class DayJson {
  private static final CreditText REFUSED = CreditText.done(Invocation.USUAL);

  private DayJson() {}

  /** The object of {@code day --json}. */
  public static Map<String, Object> of(DayReport day) {
    Map<String, Object> object =
        Json.object(
            "date", day.date().toString(),
            "person", day.person(),
            "limit", limit(day.limit()),
            "uncovered_percent", day.uncovered().map(Uncovered::percent).orElse(0.0),
            "limits_shown", day.limits().beside().stream().map(DayJson::beside).toList(),
            "long_day", day.limits().longDay().map(ReviewJson::longDay).orElse(null),
            "nights", day.limits().nights().stream().map(DayJson::night).toList(),
            "sessions", day.sessions().stream().map(line -> session(line, day)).toList(),
            "twa",
                Json.object(
                    "outside", twa(day.outside()),
                    "inside", twa(day.inside()),
                    "respirable_outside_typical_mg_m3", day.respirableOutsideTypical()),
            "others", day.others().stream().map(DayJson::other).toList(),
            "left_out", LeftOut.objects(day.leftOut()),
            "minutes_logged", day.minutesLogged(),
            "minutes_between_counted", day.minutesBetween(),
            "remarks", day.remarks(),
            "cautions", day.cautions().stream().map(Caution::sentence).toList(),
            "learned_from_samples", day.learnedFrom(),
            "published", day.published().map(DayJson::estimate).orElse(null));
    object.put(
        "required_protection",
        Json.object(
            "dust", required(day.requiredForDust()), "vapour", required(day.requiredForVapour())));
    object.put("acute", VapourJson.acute(day));
    object.put("warnings", ProtectionWords.alarms(day));
    day.vapour().ifPresent(vapour -> object.put("vapour", VapourJson.of(vapour)));
    return object;
  }

  private static Map<String, Object> required(Optional<RequiredProtection> needed) {
    return needed
        .map(
            one ->
                Json.object(
                    "central", one.central(), "high90", one.high90(), "counted", one.counted()))
        .orElse(null);
  }

  static Object limit(Optional<HeldLimit> held) {
    return held.map(DayJson::limit).orElse(null);
  }

  private static Map<String, Object> limit(HeldLimit held) {
    Map<String, Object> object = limit(held.limit());
    held.index().ifPresent(index -> object.put("index", index));
    return object;
  }

  private static Map<String, Object> beside(HeldLimit held) {
    Map<String, Object> object = limit(held);
    object.put("judges", held.limit().judges());
    object.put("advisory", held.limit().advisory());
    object.put("ratio_outside_central", held.ratio());
    object.put("chance_over_outside", held.chanceOutside());
    object.put("chance_over_inside", held.chanceInside());
    return object;
  }

  static Map<String, Object> night(NightShift night) {
    return Json.object(
        "from", night.evening().toString(),
        "start", MinuteOfDay.told(night.startMinute()),
        "end", MinuteOfDay.told(night.endMinute()),
        "outside", estimate(night.outside()),
        "limit", limit(night.limit()),
        "advisory", night.advisory().map(DayJson::beside).orElse(null),
        "chance_over_limit", night.limit().map(HeldLimit::chanceOutside).orElse(null),
        "uncovered_percent", night.uncovered().map(Uncovered::percent).orElse(0.0));
  }

  static Map<String, Object> limit(Limit limit) {
    return Json.object(
        "key", limit.key(),
        "mg_m3", limit.mgPerM3(),
        "fraction", word(limit.fraction()));
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  private static Map<String, Object> session(SessionLine line, DayReport day) {
    Map<String, Object> session = session(line);
    VapourJson.addTo(session, line.source(), day.vapour());
    return session;
  }

  private static Map<String, Object> session(SessionLine line) {
    Work work = line.source().session().work();
    Map<String, Object> object =
        Json.object(
            "id", number(line.source().session().id()),
            "start", work.start().toString(),
            "minutes", work.minutes(),
            "operation", work.operation(),
            "material", work.material().orElse(null),
            "controls", work.controls(),
            "place", work.place(),
            "respirator", work.mask().map(MaskUse::respirator).orElse(null),
            "worn_percent", work.mask().map(MaskUse::wornPercent).orElse(0.0),
            "credited_apf", line.credit().apf(),
            "credit_refused", REFUSED.refused(line.credit()).orElse(null),
            "mean_outside_mg_m3", line.meanOutsideMgPerM3(),
            "share_percent", line.sharePercent(),
            "rough", line.source().rough(),
            "note", work.note());
    line.credit().vapour().ifPresent(v -> object.put("credited_apf_vapour", v.apf()));
    return object;
  }

  // What is only planned has no number.
  private static Long number(long id) {
    return id == PlanReport.NUMBER ? null : (Long) id;
  }

  private static Map<String, Object> other(OtherSource other) {
    return Json.object(
        "session", other.source().session().id(),
        "person", other.source().session().work().person(),
        "operation", other.source().operation().key(),
        "share_percent", other.sharePercent());
  }

  static Map<String, Object> twa(Twa twa) {
    Map<String, Object> object = estimate(twa.estimate());
    OptionalDouble chance = twa.chanceOverLimit();
    object.put("chance_over_limit", chance.isPresent() ? chance.getAsDouble() : null);
    return object;
  }

  static Map<String, Object> estimate(Estimate estimate) {
    return Json.object(
        "typical_mg_m3", estimate.typical(),
        "central_mg_m3", estimate.central(),
        "low90_mg_m3", estimate.low90(),
        "high90_mg_m3", estimate.high90());
  }
}
