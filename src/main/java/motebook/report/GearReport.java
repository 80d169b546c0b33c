package motebook.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import motebook.desk.Allowed;
import motebook.model.Element;
import motebook.model.Figures;
import motebook.model.Gear;
import motebook.model.MinuteOfDay;
import motebook.model.Respirator;
import motebook.model.Retirement;
import motebook.model.ShopFilter;

/** Masks and filters in words and as JSON. */
public final class GearReport {
  private static final String SEPARATOR = ", ";

  private final Allowed allowed;

  public GearReport(Allowed allowed) {
    this.allowed = allowed;
  }

  /**
   * Each respirator with its elements, then the shop's own filters.
   *
   * @param all whether what was retired is told too
   */
  public List<String> lines(Gear gear, boolean all) {
    List<String> lines = new ArrayList<>();
    for (Respirator one : gear.respirators()) {
      if (all || one.retired().isEmpty()) {
        lines.add(one.name() + ": " + told(one));
        gear.elementsOf(one.name()).stream()
            .filter(element -> all || element.retired().isEmpty())
            .forEach(element -> lines.add("  " + element.name() + ": " + told(element)));
      }
    }
    gear.filters().stream()
        .filter(filter -> all || filter.retired().isEmpty())
        .forEach(filter -> lines.add(filter.name() + ": " + told(filter)));
    return lines;
  }

  /** {@code half mask, air-purifying, osha, factor 10, size M, for Ana}. */
  public String told(Respirator one) {
    return joined(
        Stream.of(
            one.facepiece(),
            one.kind(),
            one.scheme().key(),
            allowed.factor(one).map(f -> "factor " + Figures.plain(f)).orElse("factor by element"),
            one.size().map("size "::concat).orElse(""),
            one.make().orElse(""),
            one.people().isEmpty() ? "" : "for " + String.join(" and ", one.people()),
            one.retired().map(GearReport::told).orElse("")));
  }

  /** {@code P100, a pair, opened 2026-03-02, at most 40 h, at most 200 mg}. */
  public String told(Element one) {
    return joined(
        Stream.of(
            allowed.className(one.elementClass()),
            one.pair() ? "a pair" : "",
            one.opened().map(day -> "opened " + day).orElse("sealed"),
            one.opened().filter(one.from()::equals).isPresent() || one.opened().isEmpty()
                ? ""
                : "worn from " + one.from(),
            one.opened().isPresent()
                ? ""
                : one.sealedUntil().map(day -> "good until " + day).orElse(""),
            one.singleUse() ? "a fresh one each day" : "",
            figure("at most ", one.limitHours(), " h"),
            figure("at most ", one.limitMg(), " mg"),
            figure("", one.carbonGrams(), " g of carbon"),
            one.retired().map(GearReport::told).orElse("")));
  }

  /**
   * {@code collector in shop, from 2026-03-02, cleaned every 10 h, gauge 0.5 clean, 2 at change}.
   */
  public String told(ShopFilter one) {
    return joined(
        Stream.of(
            one.on().replace('-', ' ') + " in " + one.place(),
            "from " + one.from(),
            figure("cleaned every ", one.cleanEveryHours(), " h"),
            figure("changed at ", one.changeAtHours(), " h"),
            figure("gauge ", one.gaugeClean(), " clean"),
            figure("", one.gaugeChange(), " at the change"),
            one.retired().map(GearReport::told).orElse("")));
  }

  private static String told(Retirement end) {
    return "retired " + end.on() + " (" + end.why() + ")";
  }

  private static String figure(String before, OptionalDouble value, String unit) {
    return value.isPresent() ? before + Figures.plain(value.getAsDouble()) + unit : "";
  }

  private static String joined(Stream<String> parts) {
    return String.join(SEPARATOR, parts.filter(part -> !part.isEmpty()).toList());
  }

  /** All of it as one JSON object. */
  public Map<String, Object> object(Gear gear, boolean all) {
    return Json.object(
        "respirators",
        gear.respirators().stream()
            .filter(one -> all || one.retired().isEmpty())
            .map(this::object)
            .toList(),
        "elements",
        gear.elements().stream()
            .filter(one -> all || one.retired().isEmpty())
            .map(one -> object(one, gear))
            .toList(),
        "filters",
        gear.filters().stream()
            .filter(one -> all || one.retired().isEmpty())
            .map(one -> object(one, gear))
            .toList());
  }

  private Map<String, Object> object(Respirator one) {
    return with(
        one.retired().orElse(null),
        Json.object(
            "id", one.id(),
            "name", one.name(),
            "scheme", one.scheme().key(),
            "kind", one.kind(),
            "facepiece", one.facepiece(),
            "assigned_factor", allowed.factor(one).orElse(null),
            "size", one.size().orElse(null),
            "make", one.make().orElse(null),
            "people", one.people()));
  }

  private Map<String, Object> object(Element one, Gear gear) {
    return with(
        one.retired().orElse(null),
        Json.object(
            "id", one.id(),
            "name", one.name(),
            "respirator", one.respirator(),
            "class", one.elementClass(),
            "assigned_factor",
                gear.respirator(one.respirator()).flatMap(r -> allowed.factor(r, one)).orElse(null),
            "pair", one.pair(),
            "worn_from", one.opened().map(day -> one.from().toString()).orElse(null),
            "opened", one.opened().map(LocalDate::toString).orElse(null),
            "sealed_until", one.sealedUntil().map(LocalDate::toString).orElse(null),
            "limit_hours", orNull(one.limitHours()),
            "limit_mg", orNull(one.limitMg()),
            "carbon_g", orNull(one.carbonGrams()),
            "worn_from_time", one.fromMinute() == 0 ? null : MinuteOfDay.told(one.fromMinute()),
            "retired_time",
                one.retired()
                    .map(Retirement::minute)
                    .filter(m -> m > 0)
                    .map(MinuteOfDay::told)
                    .orElse(null),
            "single_use", one.singleUse()));
  }

  private static Map<String, Object> object(ShopFilter one, Gear gear) {
    return with(
        one.retired().orElse(null),
        Json.object(
            "id", one.id(),
            "name", one.name(),
            "on", one.on(),
            "place", one.place(),
            "from", one.from().toString(),
            "clean_every_hours", orNull(one.cleanEveryHours()),
            "change_at_hours", orNull(one.changeAtHours()),
            "gauge_clean", orNull(one.gaugeClean()),
            "gauge_change", orNull(one.gaugeChange()),
            "upkeep", gear.upkeepOf(one.name()).stream().map(UpkeepReport::object).toList()));
  }

  private static Map<String, Object> with(Retirement end, Map<String, Object> object) {
    object.put("retired_on", end == null ? null : end.on().toString());
    object.put("retired_because", end == null ? null : end.why());
    return object;
  }

  private static Double orNull(OptionalDouble value) {
    return value.isPresent() ? value.getAsDouble() : null;
  }
}
