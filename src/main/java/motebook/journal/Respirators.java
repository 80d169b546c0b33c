package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import motebook.model.Element;
import motebook.model.Respirator;
import motebook.model.Retirement;
import motebook.model.Scheme;
import motebook.model.Text;

/** The rows of respirators and of their elements. */
final class Respirators {
  private final Store store;

  Respirators(Store store) {
    this.store = store;
  }

  List<Respirator> all() {
    Map<Long, List<String>> people =
        store.list("respirator-people", Owner::read).stream()
            .collect(
                Collectors.groupingBy(
                    Owner::respirator, Collectors.mapping(Owner::person, Collectors.toList())));
    return store.list("respirators", row -> read(row, people));
  }

  private record Owner(long respirator, String person) {
    static Owner read(ResultSet row) throws SQLException {
      return new Owner(row.getLong("respirator_id"), row.getString("person"));
    }
  }

  private static Respirator read(ResultSet row, Map<Long, List<String>> people)
      throws SQLException {
    long id = row.getLong("id");
    return new Respirator(
        id,
        row.getString("name"),
        Scheme.of(row.getString("scheme")).orElseThrow(),
        row.getString("kind"),
        row.getString("facepiece"),
        Row.optional(row, "size"),
        Row.optional(row, "make"),
        people.getOrDefault(id, List.of()),
        Columns.retired(row));
  }

  long insert(Respirator respirator, List<Long> people) {
    long id =
        store.number(
            "respirator-insert",
            respirator.name(),
            Text.folded(respirator.name()),
            respirator.scheme().key(),
            respirator.kind(),
            respirator.facepiece(),
            respirator.size(),
            respirator.make());
    insertPeople(id, people);
    return id;
  }

  private void insertPeople(long respirator, List<Long> people) {
    int position = 0;
    for (long person : people) {
      store.run("respirator-person-insert", respirator, position++, person);
    }
  }

  void give(Respirator respirator, List<Long> people) {
    store.run("respirator-people-delete", respirator.id());
    insertPeople(respirator.id(), people);
  }

  void retire(Respirator respirator, Retirement end) {
    store.run("respirator-retire", respirator.id(), end.on(), end.why());
  }

  boolean isInSessions(Respirator respirator) {
    return store.number("respirator-in-sessions", respirator.name()) == 1;
  }

  /** The last day it was worn after a day, if it was. */
  Optional<LocalDate> wornAfter(Respirator respirator, LocalDate day) {
    return store
        .first("respirator-worn-after", Row::text, respirator.name(), day)
        .map(LocalDate::parse);
  }

  void delete(Respirator respirator) {
    store.run("respirator-people-delete", respirator.id());
    store.run("respirator-delete", respirator.id());
  }

  List<Element> elements() {
    return store.list("elements", Respirators::element);
  }

  private static Element element(ResultSet row) throws SQLException {
    return new Element(
        row.getLong("id"),
        row.getString("name"),
        row.getString("respirator"),
        row.getString("class"),
        row.getBoolean("is_pair"),
        LocalDate.parse(row.getString("worn_from")),
        Columns.day(row, "opened"),
        Columns.day(row, "sealed_until"),
        Columns.number(row, "limit_hours"),
        Columns.number(row, "limit_mg"),
        Columns.number(row, "carbon_g"),
        Columns.retiredAt(row),
        row.getInt("worn_from_minute"),
        row.getBoolean("is_single_use"));
  }

  long insert(Element element, long respirator) {
    return store.number(
        "element-insert",
        respirator,
        element.name(),
        Text.folded(element.name()),
        element.elementClass(),
        element.pair() ? 1 : 0,
        element.from(),
        element.opened(),
        element.sealedUntil(),
        Columns.orNull(element.limitHours()),
        Columns.orNull(element.limitMg()),
        Columns.orNull(element.carbonGrams()),
        Columns.minute(element.fromMinute()),
        element.singleUse() ? 1 : null,
        element.retired().map(Retirement::on).orElse(null),
        Columns.minute(element.retired().map(Retirement::minute).orElse(0)),
        element.retired().map(Retirement::why).orElse(null));
  }

  void open(Element element, LocalDate on) {
    store.run("element-open", element.id(), on);
  }

  void retire(Element element, Retirement end) {
    store.run("element-retire", element.id(), end.on(), Columns.minute(end.minute()), end.why());
  }

  boolean isInSessions(Element element) {
    return element.opened().isPresent()
        && store.number("element-in-sessions", element.respirator(), element.from()) == 1;
  }

  void delete(Element element) {
    store.run("element-delete", element.id());
  }
}
