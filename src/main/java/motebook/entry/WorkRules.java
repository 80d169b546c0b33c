package motebook.entry;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Surroundings.Indoors;
import motebook.model.Work;
import motebook.reference.Control;
import motebook.reference.Operation;

/** What a session must be to make sense in a scene, however it was entered. */
public final class WorkRules {
  private final Work work;
  private final Scene scene;

  private WorkRules(Work work, Scene scene) {
    this.work = work;
    this.scene = scene;
  }

  /**
   * What speaks against a session.
   *
   * @param slot the part of a line at fault
   * @param key what fills it; empty where the slot has no names
   * @param message what is wrong and what would be right
   */
  record Objection(Slot slot, String key, String message) {}

  /**
   * Checks a session.
   *
   * @throws Refusal if it ends in the future, a control does not serve it or cannot work in its
   *     place, or the book does not hold its respirator
   */
  public static void check(Work work, Scene scene) {
    first(work, scene)
        .ifPresent(
            objection -> {
              throw new Refusal(objection.message());
            });
  }

  /** The first thing that speaks against a session. */
  static Optional<Objection> first(Work work, Scene scene) {
    WorkRules rules = new WorkRules(work, scene);
    return Stream.concat(
            Stream.of(rules.future(), rules.respirator()),
            work.controls().stream().map(rules::control))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<Objection> future() {
    LocalDateTime end = work.date().atStartOfDay().plusMinutes(work.endMinute());
    if (!end.isAfter(scene.now())) {
      return Optional.empty();
    }
    return Optional.of(
        new Objection(
            Slot.START,
            "",
            "The session would end at "
                + clock(work.endMinute())
                + " on "
                + work.date()
                + ", which is still to come: it is "
                + clock(60 * scene.now().getHour() + scene.now().getMinute())
                + " on "
                + scene.now().toLocalDate()
                + ". Log it when it is done, or say another time or date."));
  }

  private static String clock(int minute) {
    return "%02d:%02d".formatted(minute / 60, minute % 60);
  }

  private Optional<Objection> respirator() {
    return work.mask()
        .filter(mask -> !scene.holdsRespirator(mask.respirator()))
        .map(
            mask ->
                new Objection(
                    Slot.MASK, mask.respirator(), noRespirator(mask.respirator(), scene)));
  }

  static String noRespirator(String name, Scene scene) {
    String held =
        scene.respirators().isEmpty()
            ? "It holds none yet: leave \"wearing …\" out, and the dose inside is taken as outside."
            : "It holds: " + String.join(", ", scene.respirators()) + ".";
    return "The book does not hold a respirator \"" + name + "\". " + held;
  }

  private Optional<Objection> control(String key) {
    Control control = scene.reference().control(key);
    Operation operation = scene.reference().operation(work.operation());
    Optional<String> message =
        control.rowFor(operation.key()).isEmpty()
            ? Optional.of(doesNotServe(control, operation))
            : inPlace(control);
    return message.map(text -> new Objection(Slot.CONTROL, key, text));
  }

  private String doesNotServe(Control control, Operation operation) {
    List<String> serves =
        control.rows().stream()
            .flatMap(
                row ->
                    scene.reference().operations().stream()
                        .filter(o -> row.serves().contains(o.key())))
            .map(Saying::name)
            .toList();
    List<String> serving =
        scene.reference().controls().stream()
            .filter(other -> other.actsOn() == Control.ActsOn.SOURCE)
            .filter(other -> other.rowFor(operation.key()).isPresent())
            .map(Saying::name)
            .toList();
    return "\""
        + Saying.name(control)
        + "\" does not serve "
        + Saying.name(operation)
        + ". It serves "
        + Saying.anyOf(serves).replace(" or ", " and ")
        + ". "
        + (serving.isEmpty()
            ? "No control at the source is known for " + Saying.name(operation) + "."
            : "For " + Saying.name(operation) + " there is " + Saying.anyOf(serving) + ".");
  }

  private Optional<String> inPlace(Control control) {
    if (control.actsOn() == Control.ActsOn.SOURCE) {
      return Optional.empty();
    }
    Optional<Place> place = scene.placeNamed(work.place(), work.date());
    if (place.isEmpty()) {
      return Optional.empty();
    }
    if (place.get().surroundings() instanceof Indoors room) {
      return missingFlow(control, room);
    }
    return Optional.of(
        "\""
            + Saying.name(control)
            + "\" works on a room's air, and "
            + work.place()
            + " is outdoors. Leave it out.");
  }

  private Optional<String> missingFlow(Control control, Indoors room) {
    return switch (control.key()) {
      case Control.AIR_CLEANER ->
          room.cleanerFlowM3PerMin().isPresent()
              ? Optional.empty()
              : Optional.of(unknownFlow("clean-air flow of the air cleaner", "--cleaner-flow"));
      case Control.WINDOW_FAN ->
          room.fanFlowM3PerMin().isPresent()
              ? Optional.empty()
              : Optional.of(unknownFlow("flow of the window fan", "--fan-flow"));
      default -> Optional.empty();
    };
  }

  private String unknownFlow(String what, String option) {
    return "The book does not know the "
        + what
        + " in "
        + work.place()
        + ". Give it once: motebook place change "
        + (work.place().contains(" ") ? "'" + work.place() + "'" : work.place())
        + " "
        + option
        + " 400cfm";
  }
}
