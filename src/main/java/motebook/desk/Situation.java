package motebook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import java.util.function.UnaryOperator;
import motebook.model.Action;
import motebook.model.Action.AddElement;
import motebook.model.Action.AddRespirator;
import motebook.model.Action.ChangeElement;
import motebook.model.Action.EndHair;
import motebook.model.Action.RecordFitTest;
import motebook.model.Action.RecordSealCheck;
import motebook.model.Action.RemoveFitRecord;
import motebook.model.Action.WearInSession;
import motebook.model.Element;
import motebook.model.FitRecord;
import motebook.model.FitRecord.FitTest;
import motebook.model.FitRecord.Hair;
import motebook.model.FitRecord.Qualitative;
import motebook.model.FitRecord.Quantitative;
import motebook.model.Gear;
import motebook.model.MaskUse;
import motebook.model.Respirator;
import motebook.model.Retirement;
import motebook.model.Session;
import motebook.reference.ElementClass;
import motebook.reference.Masks;

/**
 * A session and the gear of its book, as they are or as they would be.
 *
 * @param gear the gear
 * @param session the session
 */
record Situation(Gear gear, Session session) {
  /** Above what any facepiece of any scheme asks for. */
  private static final double PASSING_FACTOR = 10_000;

  /** As it would be after an action; what has a result is taken as passed. */
  Situation after(Action action, Masks masks) {
    if (action instanceof RecordSealCheck) {
      return wearing(use -> use.checked(true));
    }
    if (action instanceof WearInSession wear) {
      return wearing(use -> use.of(wear.respirator()));
    }
    return new Situation(gearAfter(action, masks), session);
  }

  private Situation wearing(UnaryOperator<MaskUse> change) {
    MaskUse use = session.work().mask().orElseThrow();
    return new Situation(
        gear, new Session(session.id(), session.work().withMask(change.apply(use))));
  }

  private Gear gearAfter(Action action, Masks masks) {
    if (action instanceof AddRespirator add) {
      return with(
          new Respirator(
              next(gear.respirators(), Respirator::id),
              add.name(),
              add.scheme(),
              add.kind(),
              add.facepiece(),
              Optional.empty(),
              Optional.empty(),
              List.of(),
              Optional.empty()));
    }
    if (action instanceof AddElement add) {
      return with(List.of(), element(add, masks));
    }
    if (action instanceof ChangeElement change) {
      return changed(change);
    }
    if (action instanceof RecordFitTest test) {
      return fitting(
          record -> true,
          new FitTest(
              next(gear.fit(), FitRecord::id),
              test.respirator(),
              test.person(),
              test.on(),
              test.measured()
                  ? new Quantitative(List.of(PASSING_FACTOR))
                  : new Qualitative("saccharin", true)));
    }
    if (action instanceof EndHair end) {
      return ended(end);
    }
    if (action instanceof RemoveFitRecord wrong) {
      return fitting(record -> record.id() != wrong.id());
    }
    return gear;
  }

  private static <T> long next(List<T> all, ToLongFunction<T> id) {
    return all.stream().mapToLong(id).max().orElse(0) + 1;
  }

  private Element element(AddElement add, Masks masks) {
    return new Element(
        next(gear.elements(), Element::id),
        add.name(),
        add.respirator(),
        masks.elementClass(add.elementClass()).map(ElementClass::key).orElseThrow(),
        false,
        add.opened(),
        Optional.of(add.opened()),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        add.until().map(day -> new Retirement(day, Retirement.CHANGED)));
  }

  private Gear changed(ChangeElement change) {
    Element worn =
        gear.elementAt(change.element(), change.on(), change.minute())
            .or(() -> gear.element(change.element()))
            .orElseThrow();
    Element fresh =
        worn.heir(change.on(), change.minute()).numbered(next(gear.elements(), Element::id));
    Element gone = worn.retired(new Retirement(change.on(), change.minute(), Retirement.CHANGED));
    return with(List.of(worn), gone, fresh);
  }

  private Gear ended(EndHair end) {
    Hair open =
        gear.fit(Hair.class, end.person()).stream()
            .filter(hair -> hair.to().isEmpty())
            .findFirst()
            .orElseThrow();
    return fitting(
        record -> record.id() != open.id(),
        new Hair(open.id(), open.person(), open.date(), end.lastDay()));
  }

  private Gear with(Respirator added) {
    List<Respirator> all = new ArrayList<>(gear.respirators());
    all.add(added);
    return new Gear(all, gear.elements(), gear.filters(), gear.upkeep(), gear.fit());
  }

  private Gear with(List<Element> out, Element... in) {
    List<Element> all = new ArrayList<>(gear.elements());
    all.removeAll(out);
    all.addAll(List.of(in));
    return new Gear(gear.respirators(), all, gear.filters(), gear.upkeep(), gear.fit());
  }

  private Gear fitting(Predicate<FitRecord> kept, FitRecord... in) {
    List<FitRecord> all = new ArrayList<>(gear.fit().stream().filter(kept).toList());
    all.addAll(List.of(in));
    return new Gear(gear.respirators(), gear.elements(), gear.filters(), gear.upkeep(), all);
  }
}
