package motebook.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.Function;
import motebook.journal.Book;
import motebook.journal.PlaceVersion;
import motebook.model.Place;

/**
 * The shop on each day of a stretch of time, asked of the book only where a place changes: a year
 * of days costs no more questions than there are places and changes.
 */
final class ShopDays {
  private final NavigableMap<LocalDate, Shop> fromDay = new TreeMap<>();

  /**
   * Asks the book.
   *
   * @param shop the shop on a day, asked for the first day and for each day that begins a change
   */
  ShopDays(Book book, LocalDate first, LocalDate last, Function<LocalDate, Shop> shop) {
    fromDay.put(first, shop.apply(first));
    for (Place place : book.premises().places(first)) {
      List<PlaceVersion> versions = book.premises().placeVersions(place.name());
      versions.stream()
          .flatMap(version -> version.from().stream())
          .filter(from -> from.isAfter(first) && !from.isAfter(last))
          .forEach(from -> fromDay.computeIfAbsent(from, shop));
    }
  }

  /** The shop on a day, not before the first. */
  Shop on(LocalDate day) {
    return fromDay.floorEntry(day).getValue();
  }
}
