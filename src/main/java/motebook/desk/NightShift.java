package motebook.desk;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Limit;
import motebook.science.Estimate;

/**
 * Work over midnight as one shift, held against 8 hours as a day is: midnight parts the dates of
 * the book, not what somebody breathes in a night.
 *
 * <p>The shift is everything around midnight without a break of two hours or more, and its air that
 * of the 24 hours that end with it, so what hangs in the room at midnight counts on.
 *
 * @param evening the date on which it begins
 * @param startMinute of that date at which it begins
 * @param endMinute of the next date at which it ends
 * @param outside the inhalable 8-hour TWA of the shift outside the mask, mg/m³
 * @param limit the limit that it is held against; empty where none applies or covers its dust
 * @param advisory the advisory limit beside a legal one
 * @param uncovered the dust of the shift that no limit covers; empty where there is none
 */
public record NightShift(
    LocalDate evening,
    int startMinute,
    int endMinute,
    Estimate outside,
    Optional<HeldLimit> limit,
    Optional<HeldLimit> advisory,
    Optional<Uncovered> uncovered) {
  // Judgement, no source: shorter than this it is a break, not the end of the shift.
  private static final int SHIFT_ENDS_AFTER = 2 * 60;
  private static final int DAY = 24 * 60;

  /**
   * The shifts over the midnights at which a day begins and ends.
   *
   * @param sessions everybody's sessions of a date; asked only where work lies near midnight
   */
  static List<NightShift> of(DayReckoning day, Function<LocalDate, List<Session>> sessions) {
    List<Session> today = day.sources().stream().map(Source::session).toList();
    List<Work> own =
        day.sources().stream().filter(day::isOwn).map(mine -> mine.session().work()).toList();
    List<NightShift> nights = new ArrayList<>();
    if (own.stream().anyMatch(work -> work.startMinute() < SHIFT_ENDS_AFTER)) {
      LocalDate before = day.date().minusDays(1);
      new Night(before, sessions.apply(before), today, day).shift().ifPresent(nights::add);
    }
    if (own.stream().anyMatch(work -> work.endMinute() > DAY - SHIFT_ENDS_AFTER)) {
      List<Session> next = sessions.apply(day.date().plusDays(1));
      new Night(day.date(), today, next, day).shift().ifPresent(nights::add);
    }
    return nights;
  }

  /** Two days on one line of minutes that begins with the first. */
  private static final class Night {
    private final LocalDate evening;
    private final DayReckoning day;
    private final List<Timed> all = new ArrayList<>();

    /** A session and the minutes at which it begins and ends. */
    private record Timed(Session session, int from, int to) {}

    Night(LocalDate evening, List<Session> first, List<Session> second, DayReckoning day) {
      this.evening = evening;
      this.day = day;
      first.forEach(session -> add(session, 0));
      second.forEach(session -> add(session, DAY));
    }

    private void add(Session session, int later) {
      Work work = session.work();
      all.add(new Timed(session, later + work.startMinute(), later + work.endMinute()));
    }

    Optional<NightShift> shift() {
      List<Timed> own =
          all.stream()
              .filter(one -> one.session.work().person().equals(day.person()))
              .sorted(Comparator.comparing(Timed::from))
              .toList();
      int morning = 0;
      while (morning < own.size() && own.get(morning).from < DAY) {
        morning++;
      }
      int first = morning;
      while (first > 0 && first < own.size() && goesOn(own.get(first - 1), own.get(first))) {
        first--;
      }
      int last = morning - 1;
      while (last >= 0 && last + 1 < own.size() && goesOn(own.get(last), own.get(last + 1))) {
        last++;
      }
      if (first == morning) {
        return Optional.empty();
      }
      int end = own.get(last).to;
      return Optional.of(shift(Math.max(own.get(first).from, end - DAY), end));
    }

    private static boolean goesOn(Timed before, Timed after) {
      return after.from - before.to < SHIFT_ENDS_AFTER;
    }

    private NightShift shift(int start, int end) {
      DayReckoning shift = reckoning(start, end);
      return new NightShift(
          evening,
          start,
          end - DAY,
          shift.outside(Limit.Fraction.INHALABLE),
          HeldLimit.of(shift),
          HeldLimit.advisory(shift),
          Uncovered.of(shift));
    }

    /** The 24 hours before its end as one day, of which the person breathes the shift. */
    private DayReckoning reckoning(int start, int end) {
      int midnight = end - DAY;
      Map<Session, Session> logged = new HashMap<>();
      List<Session> moved = new ArrayList<>();
      for (Timed one : all) {
        int from = Math.max(one.from, midnight) - midnight;
        int minutes = Math.min(one.to, end) - midnight - from;
        if (minutes > 0) {
          LocalTime at = LocalTime.of(from / 60, from % 60);
          Work work = one.session.work().lasting(minutes).at(evening, at);
          moved.add(new Session(one.session.id(), work));
          logged.put(moved.get(moved.size() - 1), one.session);
        }
      }
      CreditRule credits = day.shop().credits();
      Shop shop = day.shop().crediting(session -> credits.credit(logged.get(session)));
      return new DayReckoning(
          day.person(), DayWork.of(evening, moved, shop), start - midnight, DAY);
    }
  }
}
