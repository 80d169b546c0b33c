package motebook.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import motebook.desk.DayReport;
import motebook.desk.Fire;
import motebook.desk.Source;
import motebook.desk.VapourLimit;
import motebook.desk.VapourReport;
import motebook.desk.VapourReport.OfShortTerm;
import motebook.desk.VapourReport.OfSolvent;
import motebook.model.Amount;
import motebook.reference.Solvent;
import motebook.science.Estimate;

/** The vapour of a day as JSON. */
final class VapourJson {
  private VapourJson() {}

  static Map<String, Object> of(VapourReport vapour) {
    Map<String, Object> object =
        Json.object(
            "limits", vapour.limits().key(),
            "solvents", vapour.solvents().stream().map(VapourJson::solvent).toList());
    index(object, "mixture_index_outside", vapour.indexOutside());
    index(object, "mixture_index_inside", vapour.indexInside());
    object.put("not_judged", vapour.notJudged().stream().map(Solvent::key).toList());
    object.put("not_estimated", vapour.notEstimated());
    object.put(
        "lower_flammable_limit_percent_high90",
        vapour.fire().map(fire -> 100 * fire.share()).orElse(null));
    object.put("capped_at_saturation", vapour.fire().map(Fire::saturated).orElse(false));
    object.put("remarks", vapour.remarks());
    return object;
  }

  private static Map<String, Object> solvent(OfSolvent line) {
    return Json.object(
        "solvent", line.solvent().key(),
        "twa_outside_ppm", line.outsidePpm(),
        "twa_inside_ppm", line.insidePpm(),
        "limit_ppm", line.limit().map(VapourLimit::ppm).orElse(null),
        "limit_body", line.limit().map(VapourLimit::body).orElse(null));
  }

  private static void index(Map<String, Object> object, String key, Estimate index) {
    object.put(key, index.typical());
    object.put(key + "_central", index.central());
    object.put(key + "_low90", index.low90());
    object.put(key + "_high90", index.high90());
  }

  /** The short-term limits that a day comes near to. */
  static List<Map<String, Object>> acute(DayReport day) {
    return day.vapour().stream()
        .flatMap(vapour -> vapour.acute().stream())
        .map(VapourJson::acute)
        .toList();
  }

  private static Map<String, Object> acute(OfShortTerm row) {
    return Json.object(
        "solvent", row.solvent().key(),
        "ppm_15_min_central", row.outside().central(),
        "ppm_15_min_high90", row.outside().high90(),
        "capped_at_saturation", row.saturated(),
        "limit_ppm", row.limit().ppm(),
        "kind", row.limit().kind().name().toLowerCase(Locale.ROOT),
        "authority", row.limit().authority().name());
  }

  /** Adds to a session what was used in it, and what its mask counts for where there was vapour. */
  static void addTo(Map<String, Object> session, Source source, Optional<VapourReport> vapour) {
    List<Amount> amounts = source.session().work().amounts();
    if (!amounts.isEmpty()) {
      session.put("finishes", amounts.stream().map(VapourJson::amount).toList());
    }
    vapour
        .flatMap(day -> day.credit(source))
        .ifPresent(credit -> session.put("credited_apf_vapour", credit.vapourApf()));
  }

  private static Map<String, Object> amount(Amount amount) {
    return Json.object("finish", amount.finish(), "ml", amount.millilitres());
  }
}
