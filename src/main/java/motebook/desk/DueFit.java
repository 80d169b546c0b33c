package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import motebook.desk.DueItem.Kind;
import motebook.desk.DueItem.State;
import motebook.model.Action;
import motebook.model.Figures;
import motebook.model.FitRecord;
import motebook.model.FitRecord.FitTest;
import motebook.model.FitRecord.Medical;
import motebook.model.FitRecord.Training;
import motebook.model.Gear;
import motebook.model.Respirator;
import motebook.reference.Masks;
import motebook.reference.ProtectionFactor.Seal;

/** What is due of the people who wear the masks: fit tests, medical evaluations, training. */
final class DueFit {
  private final Gear gear;
  private final Masks masks;
  private final Care care;
  private final LocalDate today;

  DueFit(Gear gear, Masks masks, Care care) {
    this.gear = gear;
    this.masks = masks;
    this.care = care;
    this.today = care.today();
  }

  List<DueItem> items() {
    List<DueItem> items = new ArrayList<>();
    Set<String> wearers = new LinkedHashSet<>();
    for (Respirator mask : gear.respirators()) {
      if (mask.inUseOn(today)) {
        Set<String> people = people(mask);
        wearers.addAll(people);
        people.forEach(person -> fit(mask, person).ifPresent(items::add));
      }
    }
    for (String person : wearers) {
      medical(person).ifPresent(items::add);
      items.add(training(person));
    }
    return items;
  }

  // Those it is for, and whoever wears it; nobody else is asked for anything.
  private Set<String> people(Respirator mask) {
    Set<String> people = new LinkedHashSet<>(mask.people());
    people.addAll(care.wearers(mask.name()));
    return people;
  }

  private Optional<DueItem> fit(Respirator mask, String person) {
    return masks.factors(mask.scheme().key(), mask.kind(), mask.facepiece()).stream()
        .map(row -> row.seal())
        .findFirst()
        .filter(Seal::tight)
        .map(seal -> fit(mask, seal, person));
  }

  private DueItem fit(Respirator mask, Seal seal, String person) {
    FitStanding standing = FitStanding.of(gear, mask, seal, person, today, care.rules());
    LocalDate when = lastDay(standing, person);
    return new DueItem(
        "fit test with " + mask.name(),
        Kind.FIT_TEST,
        person,
        when,
        care.state(when),
        standing
            .untested()
            .orElse(holds("A fit test", care.rules().fitMonths(mask.scheme()), when)),
        FitStanding.test(mask, seal, person, today),
        OptionalDouble.empty());
  }

  private LocalDate lastDay(FitStanding standing, String person) {
    if (standing.latest().isEmpty()) {
      return today;
    }
    FitTest test = standing.latest().get();
    if (!standing.result().orElseThrow().passed()) {
      return test.date();
    }
    LocalDate until = standing.until().orElseThrow();
    return FitStanding.changed(gear, person, test.date(), today)
        .map(FitRecord::date)
        .filter(until::isAfter)
        .orElse(until);
  }

  private Optional<DueItem> medical(String person) {
    return gear.fit(Medical.class, person).stream().anyMatch(m -> !m.date().isAfter(today))
        ? Optional.empty()
        : Optional.of(
            new DueItem(
                "medical evaluation",
                Kind.MEDICAL,
                person,
                today,
                State.DUE,
                "None is on record; it comes before a fit test and before wearing a respirator",
                new Action.RecordMedical(person, today),
                OptionalDouble.empty()));
  }

  private DueItem training(String person) {
    Optional<LocalDate> until =
        gear.fit(Training.class, person).stream()
            .map(FitRecord::date)
            .filter(date -> !date.isAfter(today))
            .max(LocalDate::compareTo)
            .map(date -> date.plusMonths(care.rules().trainingMonths()));
    LocalDate when = until.orElse(today);
    return new DueItem(
        "training in respirators",
        Kind.TRAINING,
        person,
        when,
        care.state(when),
        until.isPresent()
            ? holds("Training", care.rules().trainingMonths(), when)
            : "None is on record",
        new Action.RecordTraining(person, today),
        OptionalDouble.empty());
  }

  private static String holds(String what, int months, LocalDate until) {
    String span = months == 12 ? "a year" : Figures.count(months, "month");
    return what + " holds for " + span + "; the last one ends on " + until;
  }
}
