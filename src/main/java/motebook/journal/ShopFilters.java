package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import motebook.model.Retirement;
import motebook.model.ShopFilter;
import motebook.model.Text;
import motebook.model.Upkeep;

/** The rows of the shop's own filters and of their upkeep. */
final class ShopFilters {
  private static final int HOUR = 60;

  private final Store store;

  ShopFilters(Store store) {
    this.store = store;
  }

  List<ShopFilter> all() {
    return store.list("shop-filters", ShopFilters::read);
  }

  private static ShopFilter read(ResultSet row) throws SQLException {
    return new ShopFilter(
        row.getLong("id"),
        row.getString("name"),
        row.getString("sits_on"),
        row.getString("place"),
        LocalDate.parse(row.getString("counts_from")),
        Columns.number(row, "clean_every_hours"),
        Columns.number(row, "change_at_hours"),
        Columns.number(row, "gauge_clean"),
        Columns.number(row, "gauge_change"),
        Columns.retired(row));
  }

  long insert(ShopFilter filter, long place) {
    return store.number(
        "shop-filter-insert",
        place,
        filter.name(),
        Text.folded(filter.name()),
        filter.on(),
        filter.from(),
        Columns.orNull(filter.cleanEveryHours()),
        Columns.orNull(filter.changeAtHours()),
        Columns.orNull(filter.gaugeClean()),
        Columns.orNull(filter.gaugeChange()));
  }

  void retire(ShopFilter filter, Retirement end) {
    store.run("shop-filter-retire", filter.id(), end.on(), end.why());
  }

  boolean isInSessions(ShopFilter filter) {
    return store.number("shop-filter-in-sessions", filter.id(), filter.from()) == 1;
  }

  void delete(ShopFilter filter) {
    store.run("shop-filter-delete", filter.id());
  }

  List<Upkeep> upkeep() {
    return store.list("upkeep", ShopFilters::upkeep);
  }

  private static Upkeep upkeep(ResultSet row) throws SQLException {
    return new Upkeep(
        row.getLong("id"),
        row.getString("filter"),
        LocalDate.parse(row.getString("date")),
        Row.optional(row, "minute").map(text -> time(Integer.parseInt(text))),
        Upkeep.What.of(row.getString("what")).orElseThrow(),
        Columns.number(row, "reading"));
  }

  private static LocalTime time(int minute) {
    return LocalTime.of(minute / HOUR, minute % HOUR);
  }

  long insert(Upkeep upkeep, long filter) {
    Optional<Integer> minute = upkeep.time().map(time -> time.getHour() * HOUR + time.getMinute());
    return store.number(
        "upkeep-insert",
        filter,
        upkeep.date(),
        minute,
        upkeep.what().key(),
        Columns.orNull(upkeep.reading()));
  }
}
