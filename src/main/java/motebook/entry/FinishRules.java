package motebook.entry;

import java.util.List;
import java.util.Optional;
import motebook.entry.WorkRules.Breach;
import motebook.model.Action;
import motebook.model.Amount;
import motebook.model.Refusal;
import motebook.model.Work;
import motebook.reference.Finish;
import motebook.reference.Finishes;
import motebook.reference.Operation;

/** The rules that finishes are known, and used at work that finishes are used at. */
final class FinishRules {
  private FinishRules() {}

  static Optional<Breach> breach(Work work, Scene scene) {
    return work.amounts().stream().findFirst().flatMap(first -> breach(first, work, scene));
  }

  private static Optional<Breach> breach(Amount first, Work work, Scene scene) {
    Operation operation = scene.reference().operation(work.operation());
    if (!operation.finishes()) {
      return Optional.of(new Breach(Slot.FINISH, first.finish(), notUsed(operation, scene)));
    }
    Finishes finishes = scene.finishes().get();
    return work.amounts().stream()
        .map(Amount::finish)
        .filter(key -> !finishes.holds(key) || !finishes.finish(key).inUseOn(work.date()))
        .findFirst()
        .map(key -> new Breach(Slot.FINISH, key, fault(key, finishes, scene)));
  }

  private static Refusal fault(String key, Finishes finishes, Scene scene) {
    return finishes.holds(key)
        ? retired(finishes.finish(key))
        : new Refusal(unknown(key, finishes, scene));
  }

  private static Refusal retired(Finish finish) {
    return new Refusal(
        "%s was retired on %s.".formatted(finish.name(), finish.retiredOn().orElseThrow()),
        new Action.ReplaceFinish(finish.name()));
  }

  private static String notUsed(Operation operation, Scene scene) {
    List<String> users =
        scene.reference().operations().stream()
            .filter(Operation::finishes)
            .map(Saying::name)
            .toList();
    return "No finish is used at %s: amounts belong to %s. Leave the amounts out, or log them as a session of their own."
        .formatted(Saying.name(operation), Wording.list(users, "and"));
  }

  private static String unknown(String key, Finishes finishes, Scene scene) {
    List<String> known = finishes.inUseOn(scene.today()).stream().map(Saying::finish).toList();
    return "\"%s\" is no finish. Known are %s.".formatted(key, Wording.list(known, "and"));
  }
}
