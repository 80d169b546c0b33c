package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BooleanSupplier;
import motebook.desk.CareClock.Kind;
import motebook.desk.CareClock.RanOut;
import motebook.model.Gear;
import motebook.model.ShopFilter;
import motebook.model.Upkeep;
import motebook.model.Upkeep.What;

/** The clocks of the shop's own filters, from the sessions that ran them and what was done. */
final class FilterCare {
  private static final int EMPTYINGS = 5;

  private final Gear gear;
  private final WearLog log;
  private final CareRules rules;
  private final BooleanSupplier examined;

  /** With the thorough examination of exhaust asked for, or not. */
  FilterCare(Gear gear, WearLog log, CareRules rules, BooleanSupplier examined) {
    this.gear = gear;
    this.log = log;
    this.rules = rules;
    this.examined = examined;
  }

  /** A moment from which a clock runs. */
  private record Since(LocalDate date, int minute) {
    static Since of(Upkeep done) {
      return new Since(
          done.date(),
          done.time().map(t -> t.getHour() * 60 + t.getMinute()).orElse(RoomDay.DAY_ENDS));
    }
  }

  FilterStanding standing(ShopFilter filter) {
    RunHours runs = RunHours.of(filter, log, first(filter));
    RunHours sinceNew = since(runs, last(filter, EnumSet.of(What.REPLACED)));
    RunHours sinceClean = since(runs, last(filter, EnumSet.of(What.CLEANED, What.REPLACED)));
    GaugeCare gauge = new GaugeCare(filter, gear.upkeepOf(filter.name()), runs);
    List<CareClock> clocks = new ArrayList<>();
    clock(Kind.CLEANING, filter.cleanEveryHours(), sinceClean, runs).ifPresent(clocks::add);
    clock(Kind.CHANGE, filter.changeAtHours(), sinceNew, runs).ifPresent(clocks::add);
    emptying(filter, runs).ifPresent(clocks::add);
    gauge.clock(lately(runs), this::ends).ifPresent(clocks::add);
    examination(filter).ifPresent(clocks::add);
    return new FilterStanding(filter, held(filter, runs).hours(), gauge.reading(), clocks);
  }

  // What is emptied begins again, unless its clock is for cleaning: emptied, it is not yet clean.
  private RunHours held(ShopFilter filter, RunHours runs) {
    return since(
        runs,
        last(
            filter,
            filter.cleanEveryHours().isPresent()
                ? EnumSet.of(What.REPLACED)
                : EnumSet.of(What.REPLACED, What.EMPTIED)));
  }

  /** The clocks that run with the hours, each read no further back than it began. */
  List<CareClock> hourly(ShopFilter filter) {
    List<CareClock> clocks = new ArrayList<>();
    hourly(Kind.CLEANING, filter, filter.cleanEveryHours(), EnumSet.of(What.CLEANED, What.REPLACED))
        .ifPresent(clocks::add);
    hourly(Kind.CHANGE, filter, filter.changeAtHours(), EnumSet.of(What.REPLACED))
        .ifPresent(clocks::add);
    List<Upkeep> emptied = emptyings(filter);
    if (emptied.size() > 1) {
      emptying(filter, RunHours.of(filter, log, emptied.get(0).date())).ifPresent(clocks::add);
    }
    return clocks;
  }

  private Optional<CareClock> hourly(
      Kind kind, ShopFilter filter, OptionalDouble limit, Set<What> whats) {
    if (limit.isEmpty()) {
      return Optional.empty();
    }
    Since since = last(filter, whats);
    RunHours runs = RunHours.of(filter, log, since.date());
    return clock(kind, limit, since(runs, since), runs);
  }

  private Optional<CareClock> clock(Kind kind, OptionalDouble limit, RunHours ran, RunHours runs) {
    return limit.isPresent()
        ? Optional.of(clock(kind, limit.getAsDouble(), ran, runs))
        : Optional.empty();
  }

  // Sessions are read from what the oldest clock begins with, and four weeks for the pace.
  private LocalDate first(ShopFilter filter) {
    LocalDate first = last(filter, EnumSet.of(What.REPLACED)).date();
    List<Upkeep> emptied = emptyings(filter);
    if (!emptied.isEmpty() && emptied.get(0).date().isBefore(first)) {
      first = emptied.get(0).date();
    }
    LocalDate pace = Pace.first(log.last());
    return pace.isBefore(first) ? pace : first;
  }

  private Since last(ShopFilter filter, Set<What> whats) {
    return gear.upkeepOf(filter.name()).stream()
        .filter(done -> whats.contains(done.what()) && !done.date().isAfter(log.last()))
        .reduce((earlier, later) -> later)
        .map(Since::of)
        .orElse(new Since(filter.from(), 0));
  }

  private static RunHours since(RunHours runs, Since since) {
    return runs.after(since.date(), since.minute());
  }

  private CareClock clock(Kind kind, double limit, RunHours ran, RunHours runs) {
    Optional<RanOut> over = ran.reached(limit);
    OptionalDouble left =
        over.isPresent() ? OptionalDouble.empty() : daysLeft(limit - ran.hours(), lately(runs));
    return new CareClock(
        kind, ran.hours(), limit, over, left, over.map(RanOut::date).or(() -> ends(left)));
  }

  private Optional<LocalDate> ends(OptionalDouble left) {
    return left.isPresent()
        ? Optional.of(Pace.of(log).after(log.last(), left.getAsDouble()))
        : Optional.empty();
  }

  private static OptionalDouble daysLeft(double hours, OptionalDouble perDay) {
    return perDay.isPresent()
        ? OptionalDouble.of(hours / perDay.getAsDouble())
        : OptionalDouble.empty();
  }

  // Run hours of a working day, by the last four weeks.
  private OptionalDouble lately(RunHours runs) {
    Pace pace = Pace.of(log);
    double hours = runs.after(Pace.first(log.last()), 0).hours();
    return pace.still() || hours == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(hours / pace.workingDays());
  }

  private List<Upkeep> emptyings(ShopFilter filter) {
    List<Upkeep> all =
        gear.upkeepOf(filter.name()).stream()
            .filter(done -> done.what() == What.EMPTIED && !done.date().isAfter(log.last()))
            .toList();
    return all.subList(Math.max(0, all.size() - EMPTYINGS - 1), all.size());
  }

  /** The next emptying, after the owner's own habit: the middle of the last run hours between. */
  private Optional<CareClock> emptying(ShopFilter filter, RunHours runs) {
    List<Upkeep> emptied = emptyings(filter);
    List<Double> between = new ArrayList<>();
    for (int i = 1; i < emptied.size(); i++) {
      double before = since(runs, Since.of(emptied.get(i - 1))).hours();
      between.add(before - since(runs, Since.of(emptied.get(i))).hours());
    }
    double usual = median(between);
    return usual > 0
        ? Optional.of(
            clock(
                Kind.EMPTYING,
                usual,
                since(runs, last(filter, EnumSet.of(What.EMPTIED, What.REPLACED))),
                runs))
        : Optional.empty();
  }

  /** The middle value, 0 where there is none. */
  static double median(List<Double> values) {
    List<Double> sorted = values.stream().sorted().toList();
    int half = sorted.size() / 2;
    if (sorted.isEmpty()) {
      return 0;
    }
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }

  private Optional<CareClock> examination(ShopFilter filter) {
    if (!examined.getAsBoolean() || !filter.on().equals("collector")) {
      return Optional.empty();
    }
    LocalDate last = last(filter, EnumSet.of(What.INSPECTED)).date();
    return Optional.of(
        CareClock.date(
            Kind.EXAMINATION, last, last.plusMonths(rules.examinationMonths()), log.last()));
  }
}
