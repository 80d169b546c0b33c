package motebook.journal;

import static motebook.journal.RowChecks.accept;
import static motebook.journal.RowChecks.oneOf;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.Element;
import motebook.model.FitRecord;
import motebook.model.OwnFinish;
import motebook.model.Refusal;
import motebook.model.Respirator;
import motebook.model.Scheme;
import motebook.model.ShopFilter;
import motebook.model.Upkeep;

/** The checks of the rows of masks, filters, fit and finishes. */
final class GearRowChecks {
  private GearRowChecks() {}

  static Respirator respirator(Entry row) {
    List<String> people = row.items("people").stream().map(i -> (String) i.get(0)).toList();
    return new Respirator(
        row.id(),
        row.text("name"),
        oneOf(row, "scheme", List.of(Scheme.values()), Scheme::key, "osha or uk"),
        row.text("kind"),
        row.text("facepiece"),
        row.words("size"),
        row.words("make"),
        people,
        row.retired());
  }

  static void element(Entry row) {
    accept(
        new Element(
            row.id(),
            row.text("name"),
            row.text("respirator"),
            row.text("class"),
            row.flag("pair"),
            row.date("worn_from"),
            row.day("opened"),
            row.day("sealed_until"),
            row.perhaps("limit_hours"),
            row.perhaps("limit_mg"),
            row.perhaps("carbon_g"),
            row.retiredAt("retired_time"),
            row.minute("worn_from_time"),
            row.has("single_use") && row.flag("single_use")));
  }

  static void shopFilter(Entry row) {
    accept(
        new ShopFilter(
            row.id(),
            row.text("name"),
            row.text("on"),
            row.text("place"),
            row.date("from"),
            row.perhaps("clean_every_hours"),
            row.perhaps("change_at_hours"),
            row.perhaps("gauge_clean"),
            row.perhaps("gauge_change"),
            row.retired()));
  }

  static void upkeep(Entry row) {
    Optional<LocalTime> time = row.has("time") ? Optional.of(row.time("time")) : Optional.empty();
    String known = "cleaned, replaced, emptied, inspected or gauge";
    Upkeep.What what = oneOf(row, "what", List.of(Upkeep.What.values()), Upkeep.What::key, known);
    OptionalDouble reading = row.perhaps("reading");
    accept(new Upkeep(row.id(), row.text("filter"), row.date("date"), time, what, reading));
  }

  static void fitRecord(Entry row) {
    long id = row.id();
    String person = row.text("person");
    LocalDate date = row.date("date");
    switch (row.text("kind")) {
      case "test" ->
          accept(new FitRecord.FitTest(id, row.text("respirator"), person, date, method(row)));
      case "medical" -> accept(new FitRecord.Medical(id, person, date));
      case "training" -> accept(new FitRecord.Training(id, person, date));
      case "hair" -> accept(new FitRecord.Hair(id, person, date, row.day("until")));
      case "change" ->
          accept(
              new FitRecord.FaceChange(
                  id,
                  person,
                  date,
                  oneOf(
                      row,
                      "changed",
                      List.of(FitRecord.FaceChange.What.values()),
                      FitRecord.FaceChange.What::key,
                      "weight, dental or face")));
      default ->
          throw new Refusal("The kind of a record is test, medical, training, hair or change.");
    }
  }

  private static FitRecord.Method method(Entry row) {
    if (!row.has("agent")) {
      return new FitRecord.Quantitative(
          row.items("fit_factors").stream().map(item -> (Double) item.get(0)).toList());
    }
    if (!row.items("fit_factors").isEmpty()) {
      throw new Refusal("A qualitative test has no fit factors.");
    }
    return new FitRecord.Qualitative(row.text("agent"), row.flag("passed"));
  }

  static void finish(Entry row) {
    row.id();
    Map<String, Double> shares = new LinkedHashMap<>();
    row.items("solvents_weight_share")
        .forEach(item -> shares.put((String) item.get(0), (Double) item.get(1)));
    accept(
        new OwnFinish(
            row.text("name"), row.text("dries_like"), row.number("volatile_g_per_l"), shares));
  }
}
