package motebook.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import motebook.desk.Credit;
import motebook.desk.DayReport;
import motebook.desk.DayReport.OtherSource;
import motebook.desk.DayReport.SessionLine;
import motebook.desk.HeldLimit;
import motebook.desk.Objection;
import motebook.desk.Source;
import motebook.entry.SpokenLine;
import motebook.model.Amount;
import motebook.model.Figures;
import motebook.model.MinuteOfDay;
import motebook.model.Work;
import motebook.reference.Control;
import motebook.reference.Limit;
import motebook.reference.Material;
import motebook.reference.Operation;
import motebook.reference.WoodClass;
import motebook.science.Estimate;

/** The phrases that every text answer and every screen shares. */
public final class Wording {
  /** What every estimate is said with. */
  public static final String ESTIMATES =
      "Estimates from published averages, not measurements. Local rules, the maker's instructions"
          + " and a licensed hygienist come first.";

  private Wording() {}

  // To format dates with names takes a fifth of the first frame of a start.
  /** {@code Monday 2 March 2026}. */
  public static String date(LocalDate date) {
    return weekday(date)
        + " "
        + date.getDayOfMonth()
        + " "
        + capitalised(date.getMonth())
        + " "
        + date.getYear();
  }

  /** {@code Monday}. */
  public static String weekday(LocalDate date) {
    return capitalised(date.getDayOfWeek());
  }

  private static String capitalised(Enum<?> name) {
    return name.name().charAt(0) + name.name().substring(1).toLowerCase(Locale.ROOT);
  }

  /** {@code about 3.1 mg/m³ (90 % range 0.37 to 27)}; {@code none} where nothing was breathed. */
  public static String estimate(Estimate estimate) {
    return estimate.central() == 0
        ? "none"
        : Figures.about(estimate.central())
            + " mg/m³ (90 % range "
            + Figures.range(estimate.low90(), estimate.high90())
            + ")";
  }

  /** The estimate inside the mask, said once where no mask was worn. */
  public static String inside(Estimate inside, boolean masked) {
    return masked ? estimate(inside) : "the same: no mask worn";
  }

  /** {@code orbital sanding of oak}. */
  public static String job(Source source) {
    return source.session().work().material().isEmpty()
        ? source.operation().name()
        : source.operation().name() + " of " + material(source.material());
  }

  /** A material as it is said. */
  public static String material(Material material) {
    return material.name();
  }

  /** {@code orbital sanding of oak with tool vacuum and air cleaner}. */
  public static String jobAndControls(Source source) {
    String controls =
        String.join(" and ", source.controls().stream().map(c -> c.spoken()).toList());
    return job(source)
        + (controls.isEmpty() ? "" : " with " + controls)
        + amounts(source.session().work().amounts());
  }

  /**
   * A control as it is offered for an operation. The motor of a common fan can set light to the
   * vapour that it draws out.
   */
  static String offered(Control control, Operation operation) {
    return control.spoken()
        + (control.key().equals(Control.WINDOW_FAN) && operation.finishes()
            ? " (motor out of the air stream, rated for it)"
            : "");
  }

  /**
   * {@code using 250 ml lacquer and 8 fl oz (237 ml) lacquer thinner}; nothing where none was used.
   */
  private static String amounts(List<Amount> amounts) {
    return amounts.isEmpty()
        ? ""
        : amounts.stream()
            .map(it -> amount(it) + " " + it.finish().replace('-', ' '))
            .collect(Collectors.joining(" and ", " using ", ""));
  }

  /** {@code 250 ml}; {@code 8 fl oz (237 ml)} where it was said in other units. */
  static String amount(Amount amount) {
    String said = SpokenLine.amount(amount);
    double millilitres = amount.millilitres();
    return said.endsWith("ml")
        ? Figures.plain(millilitres) + " ml"
        : said
            + " ("
            + Figures.plain(millilitres < 10 ? millilitres : Math.rint(millilitres))
            + " ml)";
  }

  /** {@code 09:00-10:00}. */
  public static String span(Work work) {
    return MinuteOfDay.told(work.startMinute()) + "-" + MinuteOfDay.told(work.endMinute());
  }

  /** {@code 1 mg/m³ inhalable dust (ACGIH TLV, advisory)}. */
  public static String limit(Limit limit) {
    return Figures.plain(limit.mgPerM3())
        + " mg/m³ "
        + limit.fraction().name().toLowerCase(Locale.ROOT)
        + " dust ("
        + limit.body()
        + ", "
        + limit.place()
        + ")";
  }

  /** The wood that a limit is for: {@code hardwood, board, unknown}. */
  public static String wood(Limit limit) {
    return limit.woodClasses().size() == WoodClass.values().length
        ? "all wood"
        : String.join(
            ", ",
            limit.woodClasses().stream()
                .map(wood -> wood.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .toList());
  }

  /** {@code about 3.1 times the limit}. */
  public static String ratio(HeldLimit held) {
    return Figures.about(held.ratio()) + " times the limit";
  }

  /** {@code chance of being over it: 81 %}; empty without a limit. */
  public static Optional<String> chance(OptionalDouble chance) {
    return chance.isPresent()
        ? Optional.of("chance of being over it: " + Figures.chance(chance.getAsDouble()))
        : Optional.empty();
  }

  /** {@code from 3 samples of this shop}; empty where there is none. */
  public static Optional<String> learned(int samples) {
    return samples == 0
        ? Optional.empty()
        : Optional.of(
            "from " + samples + (samples == 1 ? " sample" : " samples") + " of this shop");
  }

  /**
   * Whether the day is probably over its limit outside the mask, in one sentence, and inside where
   * a mask counts; empty without a limit. Where no limit covers some of the dust it says that, and
   * never which side of a limit the day is on but the worse.
   */
  public static Optional<String> verdict(DayReport day) {
    return day.uncovered()
        .map(
            dust ->
                day.limit()
                        .filter(held -> held.ratio() > 1)
                        .map(held -> "Probably over the limit (" + times(held) + "). ")
                        .orElse("")
                    + LimitText.uncoveredBriefly(dust))
        .or(() -> covered(day));
  }

  private static Optional<String> covered(DayReport day) {
    return day.limits()
        .advisory()
        .map(advisory -> besideAdvisory(day, advisory))
        .or(() -> aloneJudged(day));
  }

  private static String besideAdvisory(DayReport day, HeldLimit advisory) {
    return day.limit().map(held -> "Limit: " + briefly(held) + ". ").orElse("No legal limit. ")
        + "Advisory: "
        + briefly(advisory)
        + ".";
  }

  private static String briefly(HeldLimit held) {
    return times(held) + ", " + Figures.chance(held.chanceOutside()) + " likely over it";
  }

  private static String times(HeldLimit held) {
    return Figures.about(held.ratio()) + " times";
  }

  private static Optional<String> aloneJudged(DayReport day) {
    OptionalDouble outside = day.outside().chanceOverLimit();
    if (!day.leftOut().isEmpty() && outside.orElse(0) < 0.5) {
      return Optional.of("Not all of this day's work is in its figures; see what is left out.");
    }
    return day.limit()
        .filter(held -> outside.isPresent())
        .map(
            held ->
                "Probably "
                    + (outside.getAsDouble() >= 0.5 ? "over" : "below")
                    + " the limit ("
                    + Figures.about(held.ratio())
                    + " times); "
                    + chances(outside.getAsDouble(), day.inside().chanceOverLimit()));
  }

  private static String chances(double outside, OptionalDouble inside) {
    return inside.isEmpty() || inside.getAsDouble() == outside
        ? Figures.chance(outside) + " likely to be over."
        : Figures.chance(outside)
            + " likely to be over, "
            + Figures.chance(inside.getAsDouble())
            + " inside the mask.";
  }

  /**
   * Why no mask of the day counts against dust: {@code no fit test and 2 more}; empty where none
   * was worn, or one of them counts.
   */
  public static Optional<String> uncredited(DayReport day) {
    List<Credit> worn =
        day.sessions().stream()
            .filter(line -> line.source().session().work().mask().isPresent())
            .map(SessionLine::credit)
            .toList();
    boolean none = worn.stream().noneMatch(credit -> credit.dust().objections().isEmpty());
    return none && !worn.isEmpty() ? Optional.of(brief(worn.get(0))) : Optional.empty();
  }

  /** The first of the reasons against a mask, and how many there are beside it. */
  public static String brief(Credit credit) {
    List<String> all = credit.objections().stream().map(Objection::brief).distinct().toList();
    return all.get(0) + (all.size() > 1 ? " and " + (all.size() - 1) + " more" : "");
  }

  /** What each session and then each other source put into the day's dose; adds to 100 %. */
  public static List<String> shares(DayReport day) {
    return Figures.shares(
        Stream.concat(
                day.sessions().stream().map(SessionLine::sharePercent),
                day.others().stream().map(OtherSource::sharePercent))
            .toList());
  }

  /** Whether a respirator was worn in any session of the day. */
  public static boolean masked(DayReport day) {
    return day.sessions().stream().anyMatch(s -> s.source().session().work().mask().isPresent());
  }
}
