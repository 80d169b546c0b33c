package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import motebook.journal.Deed.Subject;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Stopwatch;
import motebook.model.Stopwatch.Stretch;
import motebook.model.Text;
import motebook.model.Work;

/**
 * The work that is being timed. A start, a pause and a stop are in the book at once, so that the
 * time goes on through an ended program and a machine that was switched off.
 */
public final class Stopwatches {
  private final Store store;
  private final Changes changes;
  private final People people;
  private final Logging logging;
  private final Clock clock;

  Stopwatches(Store store, Changes changes, People people, Logging logging, Clock clock) {
    this.store = store;
    this.changes = changes;
    this.people = people;
    this.logging = logging;
    this.clock = clock;
  }

  /** Everybody's, in the order in which they were started. */
  public List<Stopwatch> all() {
    Map<Long, Stopwatch> byId = new LinkedHashMap<>();
    store
        .list("stopwatches", Stopwatches::read)
        .forEach(one -> byId.merge(one.id(), one, Stopwatches::joined));
    return List.copyOf(byId.values());
  }

  private static Stopwatch read(ResultSet row) throws SQLException {
    Optional<Instant> ended = Row.optional(row, "ended_at").map(Instant::parse);
    return new Stopwatch(
        row.getLong("id"),
        row.getString("person"),
        row.getString("line"),
        List.of(new Stretch(Instant.parse(row.getString("began_at")), ended)));
  }

  private static Stopwatch joined(Stopwatch first, Stopwatch then) {
    List<Stretch> stretches = new ArrayList<>(first.stretches());
    stretches.addAll(then.stretches());
    return new Stopwatch(first.id(), first.person(), first.line(), stretches);
  }

  /** Somebody's, if one is under way. */
  public Optional<Stopwatch> of(String person) {
    String folded = Text.folded(person);
    return all().stream().filter(one -> Text.folded(one.person()).equals(folded)).findFirst();
  }

  /**
   * Starts one.
   *
   * @param line what is done, as a spoken line without its duration
   * @throws Refusal if that person has one under way, or there is no such person
   */
  public Stopwatch start(String person, String line) {
    return changes.make(
        Deed.added(Subject.STOPWATCH, person, "Started the stopwatch of " + person + ": " + line),
        () -> {
          Known.Name who = people.known().get(person);
          of(person).ifPresent(Stopwatches::refuseSecond);
          long id = store.number("stopwatch-insert", who.id(), Text.clean(line));
          store.run("stretch-begin", id, now());
          return running(person);
        });
  }

  private static void refuseSecond(Stopwatch other) {
    throw new Refusal(
        "The stopwatch of " + other.person() + " is under way already: " + other.line() + ".");
  }

  /** Pauses; one that is paused stays so. */
  public Stopwatch pause(String person) {
    return changes.make(
        Deed.changed(Subject.STOPWATCH, person, "Paused the stopwatch of " + person),
        () -> {
          store.run("stretch-end", running(person).id(), now());
          return running(person);
        });
  }

  /**
   * Pauses one whose stretch really was another than the clock says.
   *
   * @param really when it began and ended
   */
  public Stopwatch pause(String person, Stretch really) {
    return changes.make(
        Deed.changed(Subject.STOPWATCH, person, "Paused the stopwatch of " + person),
        () -> {
          store.run(
              "stretch-correct",
              running(person).id(),
              really.began().toString(),
              really.ended().orElseThrow().toString());
          return running(person);
        });
  }

  /** Goes on after a pause; one that runs goes on running. */
  public Stopwatch goOn(String person) {
    return changes.make(
        Deed.changed(Subject.STOPWATCH, person, "Went on with the stopwatch of " + person),
        () -> {
          Stopwatch paused = running(person);
          if (!paused.running()) {
            store.run("stretch-begin", paused.id(), now());
          }
          return running(person);
        });
  }

  /**
   * Stops one and logs what was done, as one change.
   *
   * @throws Refusal as {@link Book#log}; the stopwatch stays as it was then
   */
  public List<Session> stop(String person, List<Work> works) {
    return changes.make(
        Deed.removed(
            Subject.STOPWATCH,
            person,
            "Stopped the stopwatch of " + person + " and logged " + told(works)),
        () -> {
          drop(running(person));
          return logging.logAll(works, clock.getZone(), written -> {});
        });
  }

  private static String told(List<Work> works) {
    return works.stream().map(Told::stretch).reduce((a, b) -> a + "; " + b).orElse("nothing");
  }

  /** Throws one away; nothing is logged. */
  public void discard(String person) {
    changes.make(
        Deed.removed(Subject.STOPWATCH, person, "Threw away the stopwatch of " + person),
        () -> drop(running(person)));
  }

  private void drop(Stopwatch gone) {
    store.run("stretches-delete", gone.id());
    store.run("stopwatch-delete", gone.id());
  }

  private Stopwatch running(String person) {
    return of(person)
        .orElseThrow(() -> new Refusal("No stopwatch of " + person + " is under way."));
  }

  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.SECONDS);
  }
}
