package motebook.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import motebook.desk.DayReport;
import motebook.desk.HeldLimit;
import motebook.desk.LimitReach;
import motebook.desk.LimitReach.Moment;
import motebook.desk.LimitReach.Moments;
import motebook.desk.LongDay;
import motebook.desk.NightShift;
import motebook.desk.Uncovered;
import motebook.model.Figures;
import motebook.model.MinuteOfDay;
import motebook.reference.Limit;
import motebook.reference.Material;

/** How a day stands to limits, in words. */
public final class LimitText {
  private static final String LEAD = "lead";

  private LimitText() {}

  /**
   * The limit of a day with the multiple and the chance, what no limit covers, the lowered limit of
   * a long day, the limits beside it and the night, each line with its label in ten columns.
   */
  static List<String> lines(DayReport day) {
    List<String> lines = new ArrayList<>();
    day.limit()
        .ifPresent(
            held -> {
              lines.add("limit     " + limit(held) + ": " + Wording.ratio(held));
              Wording.chance(day.outside().chanceOverLimit())
                  .ifPresent(chance -> lines.add("          " + chance + " outside the mask"));
            });
    day.uncovered().ifPresent(dust -> labelled("limit     ", uncovered(dust), lines));
    lines.addAll(besides(day));
    return lines;
  }

  /** What stands beside the limit of a day, each line with its label in ten columns. */
  public static List<String> besides(DayReport day) {
    List<String> lines = new ArrayList<>();
    day.limits().longDay().ifPresent(longer -> lines.add("long day  " + longDay(longer)));
    day.limits().beside().forEach(held -> lines.add("beside    " + beside(held)));
    day.limits().nights().forEach(night -> lines.add("night     " + night(night)));
    return lines;
  }

  private static void labelled(String label, List<String> sentences, List<String> lines) {
    for (int i = 0; i < sentences.size(); i++) {
      boolean first = i == 0 && lines.isEmpty();
      lines.add((first ? label : " ".repeat(label.length())) + sentences.get(i));
    }
  }

  /**
   * What is over its limit though the day itself may not be: a night as one shift, and a long day
   * against its lowered limit.
   */
  public static List<String> overBeside(DayReport day) {
    List<String> over = new ArrayList<>();
    day.limits().nights().stream()
        .filter(night -> Stream.of(night.limit(), night.advisory()).anyMatch(LimitText::over))
        .forEach(night -> over.add(night(night) + "."));
    day.limits()
        .longDay()
        .filter(longer -> longer.over() && !over(Optional.of(longer.held())))
        .ifPresent(longer -> over.add(longDay(longer) + "."));
    return over;
  }

  private static boolean over(Optional<HeldLimit> held) {
    return held.map(limit -> limit.ratio() > 1).orElse(false);
  }

  /**
   * What to do about dust that no limit covers. No figure stands here: none says how far a control
   * or a mask goes against lead or arsenic.
   */
  public static List<String> uncovered(Uncovered dust) {
    String which =
        (dust.alone()
                ? "No limit here covers the dust of "
                : Figures.percent(dust.percent()) + " of the dust no limit here covers: ")
            + names(dust.materials())
            + ".";
    return Stream.concat(Stream.of(which), instead(dust.materials()).stream()).toList();
  }

  /** What to do about such dust. */
  static List<String> instead(Collection<Material> materials) {
    boolean lead = materials.stream().anyMatch(material -> material.cautions().contains(LEAD));
    return List.of(
        "Only wet hand methods, or a shrouded tool with a HEPA (class H) vacuum; have it tested.",
        "No dry sweeping, no blow-down. Follow your local rules for "
            + (lead ? "lead." : "treated wood."));
  }

  static String names(Collection<Material> materials) {
    return materials.stream().map(Material::name).collect(Collectors.joining(" and "));
  }

  /** The same in one line. */
  static String uncoveredBriefly(Uncovered dust) {
    return (dust.alone()
            ? ""
            : "No limit here covers " + Figures.percent(dust.percent()) + " of the dust. ")
        + instead(dust.materials()).get(0);
  }

  /**
   * {@code 1 mg/m³ inhalable dust (ACGIH TLV, advisory)}; of added shares {@code 0.5 mg/m³ for red
   * cedar and 1 mg/m³ for other wood, inhalable dust (ACGIH TLV, advisory), shares added}.
   */
  public static String limit(HeldLimit held) {
    Limit limit = held.limit();
    return held.other()
        .map(
            other ->
                amount(limit)
                    + " and "
                    + amount(other)
                    + ", "
                    + limit.fraction().name().toLowerCase(Locale.ROOT)
                    + " dust ("
                    + limit.body()
                    + ", "
                    + limit.place()
                    + "), shares added")
        .orElseGet(() -> Wording.limit(limit));
  }

  private static String amount(Limit limit) {
    String wood = limit.woodClasses().size() == 1 ? Wording.wood(limit) : "other wood";
    return Figures.plain(limit.mgPerM3()) + " mg/m³ for " + wood;
  }

  /** {@code about 6.8 times the advisory limit}. */
  public static String advisory(HeldLimit held) {
    return Figures.about(held.ratio()) + " times the advisory limit";
  }

  private static String beside(HeldLimit held) {
    return limit(held)
        + ": "
        + Wording.ratio(held)
        + (held.limit().judges()
            ? ", " + Wording.chance(OptionalDouble.of(held.chanceOutside())).orElseThrow()
            : "; shown only, days are not judged by it");
  }

  /** {@code 12 h in the shop: about 4.2 times the limit lowered to 0.75 mg/m³ …}. */
  public static String longDay(LongDay day) {
    String lowered =
        day.held().other().isPresent()
            ? "the limits lowered to " + Figures.percent(100 * day.factor()) + " of their figures"
            : "the limit lowered to " + Figures.rounded(day.adjustedMgPerM3()) + " mg/m³";
    return Figures.duration(day.minutes())
        + " in the shop: "
        + Figures.about(day.ratio())
        + " times "
        + lowered
        + " for so long a day (Brief and Scala; practice, not law)"
        + (day.held().covered().isPresent() || day.over() ? "" : ", so not over it");
  }

  /** {@code Monday 22:00 to 02:30 as one shift: about 3.1 mg/m³ over 8 h outside, …}. */
  public static String night(NightShift night) {
    return Wording.weekday(night.evening())
        + " "
        + MinuteOfDay.told(night.startMinute())
        + " to "
        + MinuteOfDay.told(night.endMinute())
        + " held against 8 hours as one shift: outside "
        + Wording.estimate(night.outside())
        + night.limit().map(held -> ", " + Wording.ratio(held)).orElse("")
        + night.advisory().map(held -> ", " + advisory(held)).orElse("")
        + night
            .uncovered()
            .map(dust -> "; no limit here covers the dust of " + names(dust.materials()))
            .orElse("");
  }

  /**
   * When some work takes its day over the limit and over the advisory one beside it: where the
   * chance of being over passes one half, and where it passes one in twenty. Nothing of a limit
   * that is not passed on that day.
   */
  static List<String> reached(LimitReach reach) {
    return Stream.concat(
            reached("the dust limit", reach.limit()).stream(),
            reach.advisory().flatMap(moments -> reached("the advisory limit", moments)).stream())
        .toList();
  }

  private static Optional<String> reached(String limit, Moments moments) {
    if (moments.half().isEmpty() && moments.oneInTwenty().isEmpty()) {
      return Optional.empty();
    }
    String half =
        moments
            .half()
            .map(
                moment ->
                    moment.minutes() == 0
                        ? "over " + limit + " before this work, more likely than not"
                        : limit + " " + after(moment) + " of this work, more likely than not")
            .orElse(limit + " is passed with less than even chances");
    return Optional.of(
        moments
            .oneInTwenty()
            .filter(moment -> moments.half().map(even -> even.minutes() > 0).orElse(true))
            .map(moment -> half + "; with a chance of 1 in 20 " + early(moment))
            .orElse(half));
  }

  private static String early(Moment moment) {
    return moment.minutes() == 0 ? "before this work" : after(moment);
  }

  private static String after(Moment moment) {
    return "after "
        + Figures.duration(moment.minutes())
        + " (at "
        + MinuteOfDay.told(moment.minuteOfDay())
        + ")";
  }

  /** The minutes that work which is going on has left, in sentences. */
  public static String left(LimitReach reach) {
    String limit =
        switch (reach.state()) {
          case UNCOVERED -> "No limit here covers this dust: no minutes left can be given.";
          case NO_LIMIT -> "No limit of the chosen set applies.";
          case JUDGED -> left("the limit", reach.limit());
        };
    return limit
        + reach.advisory().map(moments -> " " + left("the advisory limit", moments)).orElse("");
  }

  private static String left(String limit, Moments moments) {
    boolean passed = moments.oneInTwenty().map(moment -> moment.minutes() == 0).orElse(false);
    Optional<String> early =
        moments
            .oneInTwenty()
            .map(
                moment ->
                    passed
                        ? "1 in 20 is passed"
                        : Figures.duration(moment.minutes()) + " at 1 in 20");
    if (moments.half().isEmpty()) {
      return early
              .map(
                  soon -> "Even chances of being over " + limit + " are not reached today; " + soon)
              .orElse("The chance of being over " + limit + " stays below 1 in 20 today")
          + ".";
    }
    int minutes = moments.half().get().minutes();
    return minutes == 0
        ? "The day is over " + limit + ", more likely than not."
        : Figures.duration(minutes)
            + " left before "
            + limit
            + " at even chances, "
            + early.orElseThrow()
            + ".";
  }
}
