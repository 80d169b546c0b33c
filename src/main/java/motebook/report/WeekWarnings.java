package motebook.report;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import motebook.desk.DayReport;
import motebook.desk.Fire;
import motebook.desk.VapourReport;
import motebook.desk.WeekReport;

/** What comes before all else in a week: the warnings of its days. */
public final class WeekWarnings {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

  private WeekWarnings() {}

  /** Each warning of each day in full, then the short-term limits that it passes. */
  public static List<String> full(WeekReport week) {
    List<String> said = new ArrayList<>();
    for (DayReport day : week.days()) {
      String date = DAY.format(day.date()) + ": ";
      ProtectionWords.alarms(day).forEach(alarm -> said.add(date + alarm));
      ProtectionWords.allOverShortTerm(day).ifPresent(passed -> said.add(date + passed + "."));
    }
    return said;
  }

  /** {@code leave the area: Tue 3 Mar; short-term limit passed: Tue 3 Mar, Wed 4 Mar}. */
  public static Optional<String> brief(WeekReport week) {
    List<String> said = new ArrayList<>();
    add("leave the area", week, vapour(of -> !of.aboveIdlh().isEmpty()), said);
    add("stop, ventilate", week, vapour(of -> of.fire().filter(Fire::stop).isPresent()), said);
    add("mask not enough", week, day -> !day.shortfalls().isEmpty(), said);
    add("short-term limit passed", week, vapour(of -> !of.overShortTerm().isEmpty()), said);
    return said.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", said));
  }

  private static Predicate<DayReport> vapour(Predicate<VapourReport> such) {
    return day -> day.vapour().filter(such).isPresent();
  }

  private static void add(
      String what, WeekReport week, Predicate<DayReport> such, List<String> said) {
    String days =
        week.days().stream()
            .filter(such)
            .map(day -> DAY.format(day.date()))
            .collect(Collectors.joining(", "));
    if (!days.isEmpty()) {
      said.add(what + ": " + days);
    }
  }
}
