package motebook.entry;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Work;

/**
 * What was done in each row. Its cells are said as a spoken line and read as one, so the names and
 * the rules are the line's; rows that say the same in the same places are read once.
 */
final class SheetWork {
  private final Scene scene;
  private final Map<List<Place>, Map<List<String>, Outcome>> outcomes = new HashMap<>();
  private List<Place> latestPlaces = List.of();
  private Map<List<String>, Outcome> latest = new HashMap<>();

  /** What is wrong, and in which column. */
  private record Wrong(SheetColumn column, String message) {}

  /** The work at any time of such a day, or all that is wrong. */
  private record Outcome(Optional<Work> work, List<Wrong> wrongs) {}

  SheetWork(Scene scene) {
    this.scene = scene;
  }

  /** Reads a row; where it cannot be read, the row knows what is wrong. */
  Optional<Work> read(SheetRow row, LocalDate date) {
    Optional<List<String>> said = SheetSaying.parts(row);
    if (said.isEmpty()) {
      return Optional.empty();
    }
    Outcome outcome =
        among(scene.places().apply(date)).computeIfAbsent(said.get(), it -> outcome(it, date));
    outcome.wrongs.forEach(wrong -> row.fault(wrong.column, wrong.message));
    return outcome.work;
  }

  private Map<List<String>, Outcome> among(List<Place> places) {
    if (places != latestPlaces) {
      latestPlaces = places;
      latest = outcomes.computeIfAbsent(places, any -> new HashMap<>());
    }
    return latest;
  }

  /** What is wrong in one column is left out, so that all others are read too. */
  private Outcome outcome(List<String> said, LocalDate date) {
    List<String> parts = new ArrayList<>(said);
    List<Wrong> wrongs = new ArrayList<>();
    while (true) {
      try {
        Work work =
            SpokenLine.read("1m" + String.join("", parts) + " at 0:00 on " + date, dayAfter(date));
        return new Outcome(wrongs.isEmpty() ? Optional.of(work) : Optional.empty(), wrongs);
      } catch (Refusal refusal) {
        SheetColumn column = column(parts, refusal.from());
        wrongs.add(new Wrong(column, refusal.getMessage()));
        if (column == SheetColumn.OPERATION) {
          return new Outcome(Optional.empty(), wrongs);
        }
        leaveOut(column, parts);
      }
    }
  }

  /** Without a respirator there is neither a seal nor a share of the time. */
  private static void leaveOut(SheetColumn column, List<String> parts) {
    int at = SheetSaying.COLUMNS.indexOf(column);
    int last = SheetSaying.COLUMNS.indexOf(SheetColumn.RESPIRATOR);
    parts.subList(Math.min(at, last), at < last ? at + 1 : parts.size()).replaceAll(part -> "");
  }

  /** The column whose words a refusal points at; the operation where it points at none. */
  private static SheetColumn column(List<String> parts, int at) {
    int to = "1m".length();
    for (int i = 0; i < parts.size(); i++) {
      to += parts.get(i).length();
      if (at < to) {
        return at < 0 ? SheetColumn.OPERATION : SheetSaying.COLUMNS.get(i);
      }
    }
    return SheetColumn.OPERATION;
  }

  // Seen from the day after, whatever is done on a day is over.
  private Scene dayAfter(LocalDate date) {
    return scene.at(date.plusDays(1).atTime(LocalTime.NOON));
  }

  /** The work of a row at its time and with its note. */
  Work at(Work done, SheetSpans.Span span, String note) {
    return new Work(
        done.person(),
        done.place(),
        span.date(),
        Clock.time(span.startMinute()),
        span.minutes(),
        done.operation(),
        done.material(),
        done.controls(),
        done.mask(),
        done.amounts(),
        note);
  }
}
