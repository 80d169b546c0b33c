package motebook.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import motebook.model.Place;
import motebook.reference.Control;
import motebook.reference.Figure;
import motebook.reference.Grade;
import motebook.reference.Limit;
import motebook.reference.Operation;

/**
 * A figure that a week was reckoned with, and how sure it is.
 *
 * @param kind of what
 * @param name of which
 * @param amount the figure and its range; empty where it is the place's own, see {@code place}
 * @param unit of the figure
 * @param grade of the shipped table; empty where it has none
 * @param basis source
 * @param place the place whose own figures these are
 */
public record UsedFigure(
    Kind kind,
    String name,
    Optional<Figure> amount,
    String unit,
    Optional<Grade> grade,
    String basis,
    Optional<Place> place) {

  /** What a figure is of, in the order in which they are listed. */
  public enum Kind {
    OPERATION,
    MATERIAL,
    CONTROL,
    LIMIT,
    PLACE
  }

  /** The figures behind a week: each once, in the order of their kinds. */
  static List<UsedFigure> of(List<DayReckoning> days, WeekReport week) {
    Set<UsedFigure> used = new LinkedHashSet<>();
    for (DayReckoning day : days) {
      day.sources().stream()
          .filter(source -> day.isOwn(source) || day.reached(source))
          .forEach(source -> add(source, day, used));
    }
    for (DayReport day : week.days()) {
      Stream.concat(day.limit().stream(), day.limits().beside().stream())
          .flatMap(held -> Stream.concat(Stream.of(held.limit()), held.other().stream()))
          .forEach(row -> used.add(limit(row)));
    }
    List<UsedFigure> sorted = new ArrayList<>(used);
    sorted.sort(Comparator.comparing(UsedFigure::kind));
    return sorted;
  }

  private static void add(Source source, DayReckoning day, Set<UsedFigure> used) {
    if (source.operation().dusty()) {
      used.add(operation(source.operation()));
      used.add(material(source));
    }
    source.atSource().ifPresent(row -> used.add(control(source, row)));
    source.controls().stream()
        .filter(control -> control.actsOn() == Control.ActsOn.ROOM)
        .forEach(control -> used.add(room(control)));
    used.add(place(day.shop().place(source.session().work().place())));
  }

  private static UsedFigure operation(Operation operation) {
    return graded(
        Kind.OPERATION,
        operation.name(),
        operation.referenceMgPerM3(),
        "mg/m³",
        operation.grade(),
        operation.basis());
  }

  private static UsedFigure material(Source source) {
    boolean sands = source.operation().sands();
    return graded(
        Kind.MATERIAL,
        source.material().name() + (sands ? ", sanded" : ", otherwise worked"),
        sands
            ? source.material().sandingFactor()
            : Figure.exactly(source.material().cuttingFactor()),
        "times",
        source.material().grade(),
        source.material().basis());
  }

  private static UsedFigure control(Source source, Control.Row row) {
    String name =
        source.controls().stream()
            .filter(control -> control.rows().contains(row))
            .map(Control::name)
            .findFirst()
            .orElse(row.id());
    return graded(Kind.CONTROL, name, row.passFactor(), "let through", row.grade(), row.basis());
  }

  private static UsedFigure room(Control control) {
    Control.Row row = control.rows().get(0);
    return new UsedFigure(
        Kind.CONTROL,
        control.name(),
        Optional.empty(),
        "",
        Optional.of(row.grade()),
        row.basis(),
        Optional.empty());
  }

  private static UsedFigure limit(Limit limit) {
    return new UsedFigure(
        Kind.LIMIT,
        limit.body() + ", " + limit.place(),
        Optional.of(Figure.exactly(limit.mgPerM3())),
        "mg/m³ " + limit.fraction().name().toLowerCase(Locale.ROOT),
        Optional.empty(),
        limit.source() + "; " + limit.edition() + " (" + limit.evidence() + ")",
        Optional.empty());
  }

  private static UsedFigure place(Place place) {
    return new UsedFigure(
        Kind.PLACE,
        place.name(),
        Optional.empty(),
        "",
        Optional.empty(),
        "as it stands in the book",
        Optional.of(place));
  }

  private static UsedFigure graded(
      Kind kind, String name, Figure amount, String unit, Grade grade, String basis) {
    return new UsedFigure(
        kind, name, Optional.of(amount), unit, Optional.of(grade), basis, Optional.empty());
  }
}
