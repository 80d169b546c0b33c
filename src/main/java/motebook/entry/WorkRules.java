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

  private static Optional<Breach> controls(Work work, Scene scene) {
    Place place = scene.placeNamed(work.place(), work.date()).orElseThrow();
    ControlRules rules = new ControlRules(scene.reference(), work.operation(), place);
    return work.controls().stream()
        .flatMap(
            key ->
                rules
                    .objection(key)
                    .map(refusal -> new Breach(Slot.CONTROL, key, refusal))
                    .stream())
        .findFirst();
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
