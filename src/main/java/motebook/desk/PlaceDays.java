package motebook.desk;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.function.Function;
import motebook.journal.Book;
import motebook.model.Place;

/** The places as they are on each day, asked of the book once for each time one of them changed. */
final class PlaceDays implements Function<LocalDate, List<Place>> {
  private final Book book;
  private final NavigableSet<LocalDate> changes = new TreeSet<>();
  private final Map<LocalDate, List<Place>> since = new HashMap<>();

  PlaceDays(Book book, LocalDate today) {
    this.book = book;
    for (Place place : book.premises().places(today)) {
      book.premises().placeVersions(place.name()).stream()
          .flatMap(version -> version.from().stream())
          .forEach(changes::add);
    }
  }

  @Override
  public List<Place> apply(LocalDate day) {
    LocalDate change = changes.floor(day);
    return since.computeIfAbsent(
        change == null ? LocalDate.MIN : change, any -> List.copyOf(book.premises().places(day)));
  }
}
