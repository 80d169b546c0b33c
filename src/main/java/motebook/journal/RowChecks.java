package motebook.journal;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import motebook.model.Amount;
import motebook.model.Favourite;
import motebook.model.MaskUse;
import motebook.model.Person;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Sample;
import motebook.model.Stopwatch;
import motebook.model.Surroundings;
import motebook.model.Surroundings.Indoors;
import motebook.model.Surroundings.Outdoors;
import motebook.model.Work;

/** Sees to it that a row makes sense, by the records of the model that it stands for. */
final class RowChecks {
  private static final Surroundings ANY = new Outdoors(1);
  private static final Map<String, Consumer<Entry>> CHECKS =
      Map.ofEntries(
          Map.entry("people", row -> new Person(row.id(), row.text("name"))),
          Map.entry("places", row -> new Place(row.id(), row.text("name"), ANY)),
          Map.entry("place-figures", RowChecks::placeFigures),
          Map.entry("settings", RowChecks::settings),
          Map.entry("preferences", RowChecks::preference),
          Map.entry(
              "favourites", row -> new Favourite(row.id(), row.text("name"), row.text("line"))),
          Map.entry("respirators", row -> accept(GearRowChecks.respirator(row))),
          Map.entry("elements", GearRowChecks::element),
          Map.entry("shop-filters", GearRowChecks::shopFilter),
          Map.entry("upkeep", GearRowChecks::upkeep),
          Map.entry("fit-records", GearRowChecks::fitRecord),
          Map.entry("finishes", GearRowChecks::finish),
          Map.entry("sessions", RowChecks::session),
          Map.entry("samples", RowChecks::sample),
          Map.entry("set-aside", RowChecks::setAside),
          Map.entry("stopwatches", RowChecks::stopwatch));

  private RowChecks() {}

  /**
   * @throws Refusal if the row could not have come out of a book
   */
  static void check(Entry row) {
    CHECKS.get(row.kind().name()).accept(row);
  }

  private static void placeFigures(Entry row) {
    row.id();
    row.day("from").ifPresent(RowChecks::believable);
    if (row.text("kind").equals("outdoors")) {
      row.refuse(
          "volume_m3",
          "air_changes_per_hour",
          "open_air_changes_per_hour",
          "cleaner_flow_m3_per_min",
          "fan_flow_m3_per_min",
          "cleaner_run_on_minutes");
      accept(new Outdoors(row.number("air_speed_m_per_min")));
    } else {
      oneOf(row, "kind", List.of("indoors"), Function.identity(), "indoors or outdoors");
      accept(indoors(row));
    }
  }

  private static Indoors indoors(Entry row) {
    return new Indoors(
        row.number("volume_m3"),
        row.number("air_changes_per_hour"),
        row.number("open_air_changes_per_hour"),
        row.number("air_speed_m_per_min"),
        row.perhaps("cleaner_flow_m3_per_min"),
        row.perhaps("fan_flow_m3_per_min"),
        row.whole("cleaner_run_on_minutes"));
  }

  private static void settings(Entry row) {
    accept(
        new Settings(
            row.text("person"),
            row.text("place"),
            row.text("limit_set"),
            row.number("total_conversion"),
            row.whole("gap_minutes")));
  }

  private static void preference(Entry row) {
    row.id();
    Preferences.check(row.text("key"), row.text("value"));
  }

  private static void session(Entry row) {
    row.id();
    zone(row.text("zone"));
    accept(Instant.parse(row.text("starts_at")));
    accept(
        new Work(
            row.text("person"),
            row.text("place"),
            row.date("date"),
            row.time("start"),
            row.whole("minutes"),
            row.text("operation"),
            row.words("material"),
            row.items("controls").stream().map(item -> (String) item.get(0)).toList(),
            mask(row),
            row.items("finishes_ml").stream().map(RowChecks::amount).toList(),
            row.words("note").orElse("")));
  }

  private static void zone(String name) {
    try {
      accept(ZoneId.of(name));
    } catch (DateTimeException e) {
      throw new Refusal("There is no time zone \"" + name + "\"; one is Europe/Berlin, or UTC.");
    }
  }

  private static Optional<MaskUse> mask(Entry row) {
    if (!row.has("respirator")) {
      row.refuse("seal_checked", "worn_percent");
      return Optional.empty();
    }
    return Optional.of(
        new MaskUse(row.text("respirator"), row.flag("seal_checked"), row.number("worn_percent")));
  }

  private static Amount amount(List<Object> item) {
    return new Amount((String) item.get(0), (Double) item.get(1));
  }

  private static void sample(Entry row) {
    Sample.Kind kind =
        oneOf(
            row,
            "kind",
            List.of(Sample.Kind.values()),
            Sample.Kind::key,
            "gravimetric or direct-reading");
    accept(
        new Sample(
            row.id(),
            row.text("person"),
            row.date("date"),
            row.whole("from"),
            row.whole("to"),
            row.text("fraction"),
            kind,
            result(row),
            row.number("cv"),
            row.words("note").orElse(""),
            new Sample.Use(
                row.words("place"),
                row.perhaps("factor"),
                row.has("relative") && row.flag("relative"),
                row.has("whole_shift") && row.flag("whole_shift"))));
  }

  private static Sample.Result result(Entry row) {
    if (row.has("mg")) {
      row.refuse("mg_per_m3", "below_detection");
      return new Sample.Weighed(
          row.number("mg"),
          row.number("blank_mg"),
          row.number("litres_per_min"),
          row.number("detection_limit_mg"));
    }
    row.refuse("blank_mg", "litres_per_min", "detection_limit_mg");
    return new Sample.Told(row.number("mg_per_m3"), row.flag("below_detection"));
  }

  private static void setAside(Entry row) {
    row.id();
    believable(row.date("date"));
  }

  private static void stopwatch(Entry row) {
    List<Stopwatch.Stretch> stretches =
        row.items("stretches").stream()
            .map(
                item ->
                    new Stopwatch.Stretch(
                        Instant.parse((String) item.get(0)),
                        Optional.ofNullable((String) item.get(1)).map(Instant::parse)))
            .toList();
    if (stretches.isEmpty()) {
      throw new Refusal("A stopwatch has at least one stretch.");
    }
    accept(new Stopwatch(row.id(), row.text("person"), row.text("line"), stretches));
  }

  /** The one of some things that a word means. */
  static <T> T oneOf(
      Entry row, String column, List<T> things, Function<T, String> key, String known) {
    String word = row.text(column);
    return things.stream()
        .filter(thing -> key.apply(thing).equals(word))
        .findFirst()
        .orElseThrow(() -> new Refusal("The %s is %s, not \"%s\".".formatted(column, known, word)));
  }

  private static void believable(LocalDate day) {
    if (day.getYear() < 1900 || day.getYear() > 2199) {
      throw new Refusal("The date " + day + " is outside 1900 to 2199.");
    }
  }

  /** The record has checked itself; more is not asked of it. */
  static void accept(Object checked) {
    if (checked == null) {
      throw new IllegalArgumentException("nothing to check");
    }
  }
}
