package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import motebook.entry.SessionSheet.Contents;
import motebook.entry.SessionSheet.Row;
import motebook.entry.SheetFault;
import motebook.journal.Book;
import motebook.journal.Hindrance;
import motebook.model.Session;
import motebook.model.Work;

/** Which rows of a sheet are new to a book, known to it, said twice, or in the way of others. */
final class SheetCheck {
  private final Book book;
  private final Contents contents;
  private final Map<PersonDay, NavigableMap<Integer, Row>> seen = new HashMap<>();
  private final List<Row> fresh = new ArrayList<>();
  private final List<SheetFault> faults;
  private int known;
  private int repeated;

  private record PersonDay(String person, LocalDate date) {}

  SheetCheck(Book book, Contents contents) {
    this.book = book;
    this.contents = contents;
    faults = new ArrayList<>(contents.faults());
  }

  SheetIntake intake() {
    Map<PersonDay, Map<Integer, Session>> booked = booked();
    for (Row row : contents.rows()) {
      PersonDay day = new PersonDay(row.work().person(), row.work().date());
      Session session = booked.getOrDefault(day, Map.of()).get(row.work().startMinute());
      if (isNew(row, day)) {
        hold(row, session);
      }
    }
    hinder();
    faults.sort(Comparator.comparingLong(SheetFault::line));
    return new SheetIntake(
        contents.rows().size() + (int) linesOf(contents.faults()),
        fresh.stream().map(Row::work).toList(),
        known,
        repeated,
        List.copyOf(faults),
        contents.remarks());
  }

  private static long linesOf(List<SheetFault> faults) {
    return faults.stream().mapToLong(SheetFault::line).distinct().count();
  }

  /** What the book holds of the days that the sheet spans, by its start. */
  private Map<PersonDay, Map<Integer, Session>> booked() {
    Map<PersonDay, Map<Integer, Session>> booked = new HashMap<>();
    if (contents.rows().isEmpty() || !book.hasSessions()) {
      return booked;
    }
    for (Session session : book.sessionsBetween(first(), last())) {
      booked
          .computeIfAbsent(
              new PersonDay(session.work().person(), session.work().date()), d -> new HashMap<>())
          .put(session.work().startMinute(), session);
    }
    return booked;
  }

  private LocalDate first() {
    return contents.rows().stream()
        .map(row -> row.work().date())
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  private LocalDate last() {
    return contents.rows().stream()
        .map(row -> row.work().date())
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  /** Whether no earlier row says the same; one that shares minutes with an earlier is at fault. */
  private boolean isNew(Row row, PersonDay day) {
    NavigableMap<Integer, Row> rows = seen.computeIfAbsent(day, any -> new TreeMap<>());
    Map.Entry<Integer, Row> before = rows.lowerEntry(row.work().endMinute());
    if (before == null || before.getValue().work().endMinute() <= row.work().startMinute()) {
      rows.put(row.work().startMinute(), row);
      return true;
    }
    if (before.getValue().work().equals(row.work())) {
      repeated++;
    } else {
      fault(
          row,
          contents.startColumn(),
          "Overlaps the work of line %d of %s. Correct one of the two."
              .formatted(before.getValue().line(), row.work().person()));
    }
    return false;
  }

  private void hold(Row row, Session booked) {
    if (booked == null || booked.work().minutes() != row.work().minutes()) {
      fresh.add(row); // what overlaps the book is found with all else that keeps it out
    } else if (booked.work().equals(row.work())) {
      known++;
    } else {
      fault(
          row,
          contents.startColumn(),
          "Session %d of the book is at this time already, but not the same: %s. Change that one,"
                  .formatted(booked.id(), differences(booked.work(), row.work()))
              + " or take the row out.");
    }
  }

  private static String differences(Work booked, Work row) {
    List<String> other = new ArrayList<>();
    compare("operation", booked.operation(), row.operation(), other);
    compare("material", booked.material(), row.material(), other);
    compare("controls", booked.controls(), row.controls(), other);
    compare("place", booked.place(), row.place(), other);
    compare("respirator", booked.mask(), row.mask(), other);
    compare("finishes", booked.amounts(), row.amounts(), other);
    compare("note", booked.note(), row.note(), other);
    return "other " + String.join(", ", other);
  }

  private static void compare(String what, Object booked, Object row, List<String> other) {
    if (!booked.equals(row)) {
      other.add(what);
    }
  }

  private void hinder() {
    List<Work> works = fresh.stream().map(Row::work).toList();
    for (Hindrance hindrance : book.hindrances(works)) {
      fault(
          fresh.get(hindrance.index()),
          hindrance.ofTime() ? contents.startColumn() : contents.maskColumn(),
          hindrance.sentence());
    }
  }

  private void fault(Row row, String column, String message) {
    faults.add(new SheetFault(row.line(), column, message));
  }
}
