package motebook.desk;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import motebook.model.Amount;
import motebook.reference.Caution;
import motebook.reference.Finishes;

/** The cautions that a day raises: by what was worked, how, and which finishes were used. */
final class DayCautions {
  /** Said of finishing whose amounts nobody told. */
  private static final String UNTOLD_VAPOUR = "finish-vapour";

  /** Where no finish is named, it may be one that dries by oxidation. */
  private static final String OILY_RAGS = "oily-rags";

  private DayCautions() {}

  static List<Caution> of(DayReckoning day) {
    Set<String> keys = new LinkedHashSet<>();
    day.sources().stream()
        .filter(source -> source.operation().dusty())
        .filter(source -> day.isOwn(source) || day.reached(source))
        .forEach(source -> raise(source, day, keys));
    return keys.stream().map(day.shop().reference()::caution).toList();
  }

  private static void raise(Source source, DayReckoning day, Set<String> keys) {
    List<Amount> amounts = source.session().work().amounts();
    keys.addAll(source.material().cautions());
    source.operation().cautions().stream()
        .filter(key -> amounts.isEmpty() || !key.equals(UNTOLD_VAPOUR))
        .forEach(keys::add);
    if (amounts.isEmpty() && source.operation().cautions().contains(UNTOLD_VAPOUR)) {
      keys.add(OILY_RAGS);
    }
    if (!amounts.isEmpty()) {
      Finishes finishes = day.shop().finishes().get();
      amounts.forEach(amount -> keys.addAll(finishes.finish(amount.finish()).cautions()));
    }
  }
}
