package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import motebook.model.FitRecord;
import motebook.model.FitRecord.FaceChange;
import motebook.model.FitRecord.FitTest;
import motebook.model.FitRecord.Hair;
import motebook.model.FitRecord.Medical;
import motebook.model.FitRecord.Method;
import motebook.model.FitRecord.Qualitative;
import motebook.model.FitRecord.Quantitative;
import motebook.model.FitRecord.Training;

/** The rows of who is fit to wear what. */
final class FitRows {
  private final Store store;

  FitRows(Store store) {
    this.store = store;
  }

  List<FitRecord> all() {
    Map<Long, List<Double>> factors =
        store.list("fit-exercises", Exercise::read).stream()
            .collect(
                Collectors.groupingBy(
                    Exercise::test, Collectors.mapping(Exercise::factor, Collectors.toList())));
    return store.list("fit-records", row -> read(row, factors));
  }

  private record Exercise(long test, double factor) {
    static Exercise read(ResultSet row) throws SQLException {
      return new Exercise(row.getLong("fit_record_id"), row.getDouble("factor"));
    }
  }

  private static FitRecord read(ResultSet row, Map<Long, List<Double>> factors)
      throws SQLException {
    long id = row.getLong("id");
    String person = row.getString("person");
    LocalDate date = LocalDate.parse(row.getString("date"));
    return switch (row.getString("kind")) {
      case "test" ->
          new FitTest(id, row.getString("respirator"), person, date, method(row, factors, id));
      case "medical" -> new Medical(id, person, date);
      case "training" -> new Training(id, person, date);
      case "hair" -> new Hair(id, person, date, Columns.day(row, "until"));
      default ->
          new FaceChange(
              id, person, date, FaceChange.What.of(row.getString("changed")).orElseThrow());
    };
  }

  private static Method method(ResultSet row, Map<Long, List<Double>> factors, long id)
      throws SQLException {
    String agent = row.getString("agent");
    return agent == null
        ? new Quantitative(factors.getOrDefault(id, List.of()))
        : new Qualitative(agent, row.getBoolean("passed"));
  }

  void insert(FitTest test, long respirator, long person) {
    Optional<Qualitative> tasted =
        test.method() instanceof Qualitative q ? Optional.of(q) : Optional.empty();
    long id =
        store.number(
            "fit-record-insert",
            "test",
            person,
            test.date(),
            respirator,
            tasted.map(Qualitative::agent),
            tasted.map(q -> q.passed() ? 1 : 0),
            null,
            null);
    if (test.method() instanceof Quantitative measured) {
      insertFactors(id, measured.factors());
    }
  }

  private void insertFactors(long test, List<Double> factors) {
    int position = 0;
    for (double factor : factors) {
      store.run("fit-exercise-insert", test, position++, factor);
    }
  }

  /** Writes what is no test. */
  void insert(FitRecord record, long person) {
    Optional<LocalDate> until = record instanceof Hair hair ? hair.to() : Optional.empty();
    Optional<String> changed =
        record instanceof FaceChange change ? Optional.of(change.what().key()) : Optional.empty();
    store.number(
        "fit-record-insert", kind(record), person, record.date(), null, null, null, until, changed);
  }

  private static String kind(FitRecord record) {
    if (record instanceof Medical) {
      return "medical";
    }
    if (record instanceof Training) {
      return "training";
    }
    return record instanceof Hair ? "hair" : "change";
  }

  /** Takes a record out. */
  void delete(FitRecord record) {
    store.run("fit-exercises-delete", record.id());
    store.run("fit-record-delete", record.id());
  }

  /** Puts right when hair had gone. */
  void end(Hair hair, Optional<LocalDate> last) {
    store.run("hair-end", hair.id(), last);
  }
}
