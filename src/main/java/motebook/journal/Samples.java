package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.journal.Deed.Subject;
import motebook.model.Refusal;
import motebook.model.Sample;
import motebook.model.Session;

/** Measured air results. */
public final class Samples {
  private final Store store;
  private final Changes changes;
  private final People people;
  private final Places places;

  Samples(Store store, Changes changes, People people, Places places) {
    this.store = store;
    this.changes = changes;
    this.people = people;
    this.places = places;
  }

  /** Every sample, by day, start and number. */
  public List<Sample> all() {
    return store.list("samples", Samples::read);
  }

  /** Everyone's sessions of the days that hold a sample, by day, start and number. */
  public List<Session> sessionsOnSampledDays() {
    return store.list("sessions-on-sampled-days", Sessions::read);
  }

  private static Sample read(ResultSet row) throws SQLException {
    return new Sample(
        row.getLong("id"),
        row.getString("person"),
        LocalDate.parse(row.getString("date")),
        row.getInt("from_minute"),
        row.getInt("to_minute"),
        row.getString("fraction"),
        kind(row.getString("kind")),
        result(row),
        row.getDouble("cv"),
        row.getString("note"),
        use(row));
  }

  private static Sample.Use use(ResultSet row) throws SQLException {
    double factor = row.getDouble("factor");
    return new Sample.Use(
        Optional.ofNullable(row.getString("place")),
        row.getObject("factor") == null ? OptionalDouble.empty() : OptionalDouble.of(factor),
        row.getBoolean("relative"),
        row.getBoolean("whole_shift"));
  }

  private static Sample.Kind kind(String key) {
    return Arrays.stream(Sample.Kind.values())
        .filter(kind -> kind.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  private static Sample.Result result(ResultSet row) throws SQLException {
    double mg = row.getDouble("mg");
    return row.wasNull()
        ? new Sample.Told(row.getDouble("mg_per_m3"), row.getBoolean("below_detection"))
        : new Sample.Weighed(
            mg,
            row.getDouble("blank_mg"),
            row.getDouble("litres_per_min"),
            row.getDouble("detection_limit_mg"));
  }

  /**
   * Writes samples as one change: all, or none.
   *
   * @param what the change in words, for the history
   * @throws Refusal if a reading of the same is in the book already, or its person is not
   */
  public List<Sample> add(List<Sample> samples, String what) {
    return changes.make(
        Deed.added(Subject.SAMPLE, "", what), () -> samples.stream().map(this::insert).toList());
  }

  private Sample insert(Sample sample) {
    standing(sample)
        .ifPresent(
            there -> {
              throw new Refusal(
                  "The book holds a result of that person or place, time and fraction already, as"
                      + " sample "
                      + there.id()
                      + ": remove it first.");
            });
    List<Object> columns = columns(sample);
    columns.add(sample.note());
    return get(store.number("sample-insert", columns.toArray()));
  }

  /**
   * The reading that the book holds of the same air: of the same person, day, times and fraction,
   * on the person or in the same place, and by the same kind of measurement or with the same
   * figure. A filter and a meter side by side are two readings; one that is read in twice, with
   * another factor, error or use, is one.
   */
  public Optional<Sample> standing(Sample sample) {
    return store.first(
        "sample-standing",
        Samples::read,
        people.known().idOf(sample.person()),
        sample.date(),
        sample.fromMinute(),
        sample.toMinute(),
        sample.fraction(),
        place(sample),
        sample.kind().key(),
        sample.result() instanceof Sample.Told told ? told.mgPerM3() : null);
  }

  private Object place(Sample sample) {
    return sample.use().area().map(places.known()::idOf).orElse(null);
  }

  /** Whether the book holds that very sample, whatever its note. */
  public boolean holds(Sample sample) {
    return store.first("same-sample", Row::number, columns(sample).toArray()).isPresent();
  }

  private Sample get(long id) {
    return store
        .first("sample", Samples::read, id)
        .orElseThrow(() -> new Refusal("The book holds no sample with the number " + id + "."));
  }

  /**
   * Deletes a sample.
   *
   * @return what it was
   * @throws Refusal if there is none of that number
   */
  public Sample remove(long id) {
    Sample sample = get(id);
    changes.make(
        Deed.removed(
            Subject.SAMPLE,
            id,
            "Removed sample " + id + " of " + sample.date() + " by " + sample.person()),
        () -> store.run("sample-delete", get(id).id()));
    return sample;
  }

  private List<Object> columns(Sample sample) {
    List<Object> columns =
        new ArrayList<>(
            List.of(
                people.known().idOf(sample.person()),
                sample.date(),
                sample.fromMinute(),
                sample.toMinute(),
                sample.fraction(),
                sample.kind().key()));
    if (sample.result() instanceof Sample.Weighed weighed) {
      columns.addAll(
          Arrays.asList(
              weighed.mg(),
              weighed.blankMg(),
              weighed.litresPerMin(),
              weighed.detectionLimitMg(),
              null,
              null));
    } else if (sample.result() instanceof Sample.Told told) {
      columns.addAll(Arrays.asList(null, null, null, null, told.mgPerM3(), told.below() ? 1 : 0));
    }
    Sample.Use use = sample.use();
    columns.addAll(
        Arrays.asList(
            sample.cv(),
            place(sample),
            use.factor().isPresent() ? use.factor().getAsDouble() : null,
            use.relative() ? 1 : 0,
            use.wholeShift() ? 1 : 0));
    return columns;
  }
}
