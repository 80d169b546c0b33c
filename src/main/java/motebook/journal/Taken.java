package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import motebook.model.Work;

/**
 * Which minutes of whom are taken, held in memory for entries that come by the thousand. The book
 * is read month by month, as far as the entries reach.
 */
final class Taken {
  private final Store store;
  private final Set<YearMonth> read = new HashSet<>();
  private final Map<PersonDay, NavigableMap<Integer, Integer>> ends = new HashMap<>();

  private record PersonDay(long person, LocalDate date) {}

  /** From a minute of the day to another one. */
  private record Stretch(PersonDay day, int start, int end) {
    static Stretch read(ResultSet row) throws SQLException {
      int start = row.getInt("start_minute");
      LocalDate date = LocalDate.parse(row.getString("date"));
      return new Stretch(
          new PersonDay(row.getLong("person_id"), date), start, start + row.getInt("minutes"));
    }
  }

  Taken(Store store) {
    this.store = store;
  }

  /** Whether no minute of the work is taken already; if so, they are from now on. */
  boolean take(long person, Work work) {
    readMonth(YearMonth.from(work.date()));
    NavigableMap<Integer, Integer> day = day(new PersonDay(person, work.date()));
    Map.Entry<Integer, Integer> before = day.lowerEntry(work.endMinute());
    boolean free = before == null || before.getValue() <= work.startMinute();
    if (free) {
      day.put(work.startMinute(), work.endMinute());
    }
    return free;
  }

  private void readMonth(YearMonth month) {
    if (read.add(month)) {
      store
          .list("stretches-between", Stretch::read, month.atDay(1), month.atEndOfMonth())
          .forEach(one -> day(one.day).put(one.start, one.end));
    }
  }

  private NavigableMap<Integer, Integer> day(PersonDay day) {
    return ends.computeIfAbsent(day, any -> new TreeMap<>());
  }
}
