package motebook.desk;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import motebook.journal.Flawed;
import motebook.journal.Logged;
import motebook.model.Session;

/** The weeks of one person in a stretch of a book, each reckoned when it is asked for. */
public final class Reviews {
  private final String person;
  private final Map<LocalDate, List<Session>> byDate;
  private final Map<LocalDate, List<Flawed>> leftOut;
  private final Function<LocalDate, Shop> shops;
  private final Function<LocalDate, WeekWear> wear;
  private final Map<LocalDate, OptionalDouble> means = new HashMap<>();

  /**
   * Weeks of one person.
   *
   * @param logged all that is on record of everybody
   * @param shops the shop on a day
   * @param wear what the week from a Monday used up of masks and filters
   */
  Reviews(
      String person,
      Logged logged,
      Function<LocalDate, Shop> shops,
      Function<LocalDate, WeekWear> wear) {
    this.person = person;
    byDate = logged.sessions().stream().collect(Collectors.groupingBy(s -> s.work().date()));
    leftOut = logged.leftOut().stream().collect(Collectors.groupingBy(Flawed::date));
    this.shops = shops;
    this.wear = wear;
  }

  /** A day, source by source. */
  public DayReckoning reckoning(LocalDate date) {
    Logged logged = new Logged(sessions(date), leftOut.getOrDefault(date, List.of()));
    return new DayReckoning(date, person, logged, shops.apply(date));
  }

  private List<Session> sessions(LocalDate date) {
    return byDate.getOrDefault(date, List.of());
  }

  /** The figures of a week. */
  WeekReport report(LocalDate monday) {
    return Week.report(monday, person, this::reckoning, this::sessions);
  }

  /** Whether the person has any work in a week. */
  public boolean worked(LocalDate monday) {
    return monday.datesUntil(monday.plusWeeks(1)).anyMatch(this::workedOn);
  }

  private boolean workedOn(LocalDate date) {
    return sessions(date).stream().anyMatch(session -> session.work().person().equals(person));
  }

  /** All there is to say of a week; its trends look back over a year. */
  public WeekReview review(LocalDate monday) {
    List<DayReckoning> days = Week.days(monday, this::reckoning);
    WeekReport week = Week.report(monday, person, days, this::sessions);
    means.put(
        monday, worked(monday) ? OptionalDouble.of(week.meanOfDays()) : OptionalDouble.empty());
    return new WeekReview(
        week,
        Attribution.of(days),
        Trend.of(monday, Trend.QUARTER, this::mean),
        Trend.of(monday, Trend.YEAR, this::mean),
        worked(monday.minusWeeks(1))
            ? new Weeks(List.of(report(monday.minusWeeks(1)), week)).change()
            : Optional.empty(),
        BestChange.of(week, days),
        wear.apply(monday));
  }

  /** The mean of a week's days outside, mg/m³; empty for a week without work. */
  public OptionalDouble mean(LocalDate monday) {
    return means.computeIfAbsent(monday, this::reckonMean);
  }

  private OptionalDouble reckonMean(LocalDate monday) {
    List<DayReckoning> days =
        monday.datesUntil(monday.plusWeeks(1)).filter(this::workedOn).map(this::reckoning).toList();
    return days.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Week.meanOfDays(days));
  }

  /** A week as it is put on a sheet. */
  public WeekSheet sheet(LocalDate monday) {
    WeekReview review = review(monday);
    DayReport worst = review.week().worstDay();
    List<DayReckoning> days = Week.days(monday, this::reckoning);
    return new WeekSheet(
        review,
        worst,
        Air.of(reckoning(worst.date())),
        shops.apply(monday).settings().units(),
        UsedFigure.of(days, review.week()));
  }
}
