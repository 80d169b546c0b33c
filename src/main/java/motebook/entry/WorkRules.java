package motebook.entry;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import motebook.model.Action;
import motebook.model.MaskUse;
import motebook.model.MinuteOfDay;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Scheme;
import motebook.model.Work;
import motebook.reference.Operation;

/**
 * What a session must hold to, beyond what {@link Work} checks itself: it is over unless it is only
 * planned, and all that it names is known to the book and goes together.
 */
public final class WorkRules {
  private WorkRules() {}

  /**
   * A rule that is broken.
   *
   * @param slot what is at fault
   * @param key which control or finish, where that is at fault; else empty
   * @param refusal what is wrong and what would be right
   */
  record Breach(Slot slot, String key, Refusal refusal) {
    Breach(Slot slot, String key, String message) {
      this(slot, key, new Refusal(message));
    }
  }

  /**
   * Checks a session.
   *
   * @throws Refusal at the first rule that it breaks
   */
  public static void check(Work work, Scene scene) {
    breach(work, scene)
        .ifPresent(
            breach -> {
              throw breach.refusal();
            });
  }

  static Optional<Breach> breach(Work work, Scene scene) {
    return KnownNames.breach(work, scene)
        .or(() -> future(work, scene))
        .or(() -> place(work, scene))
        .or(() -> controls(work, scene))
        .or(() -> FinishRules.breach(work, scene))
        .or(() -> mask(work, scene));
  }

  static Optional<Breach> future(Work work, Scene scene) {
    LocalDateTime end = work.date().atStartOfDay().plusMinutes(work.endMinute());
    if (scene.ahead() || !end.isAfter(scene.now())) {
      return Optional.empty();
    }
    String message =
        "The session would end at %s on %s, which is still to come: it is %s on %s. Log work once it"
            + " is done; for another day say which, such as on yesterday.";
    return Optional.of(
        new Breach(
            Slot.START,
            "",
            message.formatted(
                MinuteOfDay.told(work.endMinute()),
                work.date(),
                Wording.time(scene.now().toLocalTime()),
                scene.today())));
  }

  /** What is done outdoors alone has no figure for a room. */
  private static Optional<Breach> place(Work work, Scene scene) {
    Operation operation = scene.reference().operation(work.operation());
    boolean room = !scene.placeNamed(work.place(), work.date()).orElseThrow().outdoors();
    return room && operation.where() == Operation.Where.OUTDOORS
        ? Optional.of(
            new Breach(
                Slot.PLACE,
                "",
                "%s is work for outdoors: it has no figure for a room, and %s is one. Say outdoors."
                    .formatted(Wording.capital(Saying.name(operation)), work.place())))
        : Optional.empty();
  }

  private static Optional<Breach> controls(Work work, Scene scene) {
    Place place = scene.placeNamed(work.place(), work.date()).orElseThrow();
    ControlRules rules = new ControlRules(scene.reference(), work.operation(), place);
    return work.controls().stream()
        .filter(key -> !scene.recorded() || serves(key, work, scene))
        .flatMap(
            key ->
                rules
                    .objection(key)
                    .map(refusal -> new Breach(Slot.CONTROL, key, refusal))
                    .stream())
        .findFirst();
  }

  private static boolean serves(String control, Work work, Scene scene) {
    return scene.reference().control(control).rowFor(work.operation()).isPresent();
  }

  private static Optional<Breach> mask(Work work, Scene scene) {
    return work.mask()
        .map(MaskUse::respirator)
        .filter(name -> !scene.holdsRespirator(name))
        .map(name -> new Breach(Slot.MASK, "", respiratorNotHeld(name, scene.respirators())));
  }

  static Refusal respiratorNotHeld(String name, List<String> held) {
    return held.isEmpty()
        ? new Refusal(
            "The book holds no respirator \"%s\" yet, nor any other. Leave \"wearing %s\" out, or add it."
                .formatted(name, name),
            new Action.AddRespirator(name, Scheme.OSHA, "air-purifying", "half mask"))
        : new Refusal(
            "The book holds no respirator \"%s\". It holds %s."
                .formatted(name, Wording.list(held, "and")));
  }
}
