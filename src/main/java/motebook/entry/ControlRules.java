package motebook.entry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.Action;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Surroundings;
import motebook.model.Surroundings.Indoors;
import motebook.reference.Control;
import motebook.reference.Reference;

/**
 * Which controls can be used at an operation in a place.
 *
 * @param reference the shipped tables
 * @param operation key of the operation
 * @param place where, as it is on the day
 */
record ControlRules(Reference reference, String operation, Place place) {

  /** Why the control cannot be used; empty where it can. */
  Optional<Refusal> objection(String key) {
    Control control = reference.control(key);
    if (control.rowFor(operation).isEmpty()) {
      return Optional.of(new Refusal(notServed(control)));
    }
    if (control.actsOn() == Control.ActsOn.SOURCE) {
      return Optional.empty();
    }
    return place.surroundings() instanceof Indoors room ? inRoom(key, room) : outdoors(control);
  }

  private Optional<Refusal> outdoors(Control control) {
    return Optional.of(
        new Refusal(
            "%s acts on the air of a room, and %s is outdoors. Leave it out."
                .formatted(Wording.capital(control.spoken()), place.name())));
  }

  private Optional<Refusal> inRoom(String key, Indoors room) {
    return switch (key) {
      case Control.AIR_CLEANER ->
          flow(
              room.cleanerFlowM3PerMin(),
              "the clean-air flow of the air cleaner",
              Action.Flow.AIR_CLEANER);
      case Control.WINDOW_FAN ->
          flow(room.fanFlowM3PerMin(), "the flow of the window fan", Action.Flow.WINDOW_FAN);
      default -> Optional.empty();
    };
  }

  private Optional<Refusal> flow(OptionalDouble known, String what, Action.Flow of) {
    return known.isPresent()
        ? Optional.empty()
        : Optional.of(
            new Refusal(
                "The book does not know %s in %s: give it to the place once."
                    .formatted(what, place.name()),
                new Action.GiveFlow(place.name(), of)));
  }

  private String notServed(Control control) {
    String name = Saying.name(reference.operation(operation));
    String advice = control.advice().isEmpty() ? "" : " " + control.advice();
    return "%s does not help with %s.%s It works with %s. For %s there are %s."
        .formatted(
            Wording.capital(control.spoken()),
            name,
            advice,
            Wording.list(served(control), "and"),
            name,
            Wording.list(usable(), "and"));
  }

  private List<String> served(Control control) {
    return reference.operations().stream()
        .filter(each -> control.rowFor(each.key()).isPresent())
        .map(Saying::name)
        .toList();
  }

  /**
   * What can be said after "with": every control that nothing speaks against but a missing flow.
   */
  List<String> usable() {
    boolean room = place.surroundings() instanceof Surroundings.Indoors;
    return reference.controls().stream()
        .filter(control -> control.rowFor(operation).isPresent())
        .filter(control -> room || control.actsOn() == Control.ActsOn.SOURCE)
        .map(Control::spoken)
        .toList();
  }
}
