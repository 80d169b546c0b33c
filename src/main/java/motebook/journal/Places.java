package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Surroundings;
import motebook.model.Text;

/** Where work is done, and what the air did there on which day. */
final class Places {
  private static final String BEGINNING = "";

  private final Store store;

  Places(Store store) {
    this.store = store;
  }

  List<Place> on(LocalDate day) {
    return store.list("places-on", Places::read, day);
  }

  private static Place read(ResultSet row) throws SQLException {
    return new Place(row.getLong("place_id"), row.getString("name"), PlaceColumns.read(row));
  }

  Optional<Place> find(String name, LocalDate day) {
    String folded = Text.folded(name);
    return on(day).stream().filter(place -> Text.folded(place.name()).equals(folded)).findFirst();
  }

  Known known() {
    return new Known("place", store.list("place-names", Known.Name::read));
  }

  List<PlaceVersion> versions(String name) {
    return versions(known().idOf(name));
  }

  private List<PlaceVersion> versions(long place) {
    return store.list("place-versions", Places::version, place);
  }

  private static PlaceVersion version(ResultSet row) throws SQLException {
    Optional<LocalDate> from =
        Optional.of(row.getString("valid_from"))
            .filter(text -> !text.equals(BEGINNING))
            .map(LocalDate::parse);
    return new PlaceVersion(from, PlaceColumns.read(row));
  }

  Place add(String raw, Surroundings surroundings) {
    String name = known().fresh(raw);
    long id = store.number("place-insert", name, Text.folded(name));
    write("place-version-insert", id, new PlaceVersion(Optional.empty(), surroundings));
    return new Place(id, name, surroundings);
  }

  void change(String name, UnaryOperator<Surroundings> change, Optional<LocalDate> from) {
    from.ifPresent(Places::requireBelievable);
    long place = known().idOf(name);
    List<PlaceVersion> before = versions(place);
    List<PlaceVersion> after =
        from.map(day -> PlaceHistory.from(day, before, change))
            .orElseGet(() -> PlaceHistory.everywhere(before, change));
    writeWhatDiffers(place, before, after);
  }

  private static void requireBelievable(LocalDate day) {
    if (day.getYear() < 1900 || day.getYear() > 2199) {
      throw new Refusal("The date " + day + " is outside 1900 to 2199.");
    }
  }

  private void writeWhatDiffers(long place, List<PlaceVersion> before, List<PlaceVersion> after) {
    Map<Optional<LocalDate>, PlaceVersion> known = new HashMap<>();
    before.forEach(version -> known.put(version.from(), version));
    for (PlaceVersion version : after) {
      PlaceVersion old = known.get(version.from());
      if (old == null) {
        write("place-version-insert", place, version);
      } else if (!old.equals(version)) {
        write("place-version-update", place, version);
      }
    }
  }

  private void write(String query, long place, PlaceVersion version) {
    List<Object> values = new ArrayList<>(PlaceColumns.columns(version.surroundings()));
    values.add(place);
    values.add(version.from().map(LocalDate::toString).orElse(BEGINNING));
    store.run(query, values.toArray());
  }
}
