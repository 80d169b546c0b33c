package motebook.entry;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import motebook.model.Amount;
import motebook.model.Figures;
import motebook.model.MaskUse;
import motebook.model.Work;
import motebook.reference.Finish;
import motebook.reference.Finishes;
import motebook.reference.Named;
import motebook.reference.Reference;

/** A session as a full line, which reads as the same session again. */
final class Saying {
  private Saying() {}

  /** The name it is said by: the listed one or, where that holds a joint, its key with spaces. */
  static String name(Named row) {
    return Token.all(row.name()).stream().anyMatch(Token::joint) ? row.spoken() : row.name();
  }

  /** A finish by its key with spaces; the owner's own by the name that the owner gave it. */
  static String finish(Finish row) {
    return row.own() ? row.name() : row.spoken();
  }

  static String line(Work work, Scene scene) {
    StringBuilder line = new StringBuilder(Durations.written(work.minutes()));
    line.append(' ').append(job(work, scene));
    line.append(" in ").append(work.place());
    work.mask().ifPresent(mask -> line.append(" wearing ").append(worn(mask)));
    line.append(" by ").append(work.person());
    line.append(" at ").append(Wording.time(work.start()));
    line.append(" on ").append(work.date());
    return work.note().isEmpty() ? line.toString() : line + " note " + work.note();
  }

  private static String job(Work work, Scene scene) {
    Reference reference = scene.reference();
    StringBuilder job = new StringBuilder(name(reference.operation(work.operation())));
    work.material().ifPresent(key -> job.append(" of ").append(material(key, reference)));
    if (!work.controls().isEmpty()) {
      job.append(" with ").append(controls(work.controls(), reference));
    }
    if (!work.amounts().isEmpty()) {
      job.append(" using ").append(amounts(work.amounts(), scene.finishes().get()));
    }
    return job.toString();
  }

  static String body(Work work, Scene scene, boolean withCheck) {
    StringBuilder body = new StringBuilder(job(work, scene));
    if (!work.place().equals(scene.place())) {
      body.append(" in ").append(work.place());
    }
    work.mask()
        .map(
            mask -> new MaskUse(mask.respirator(), withCheck && mask.checked(), mask.wornPercent()))
        .ifPresent(mask -> body.append(" wearing ").append(worn(mask)));
    return body.toString();
  }

  private static String material(String key, Reference reference) {
    return name(reference.material(Optional.of(key)));
  }

  private static String controls(List<String> keys, Reference reference) {
    return keys.stream()
        .map(key -> reference.control(key).spoken())
        .collect(Collectors.joining(" and "));
  }

  static String amounts(List<Amount> amounts, Finishes finishes) {
    return amounts.stream()
        .map(it -> Amounts.written(it.millilitres()) + " " + finish(finishes.finish(it.finish())))
        .collect(Collectors.joining(" and "));
  }

  private static String worn(MaskUse mask) {
    String checked = mask.checked() ? " checked" : "";
    // said even at 100 where the name itself ends like a share of the time
    boolean all = mask.wornPercent() == 100 && !mask.respirator().endsWith("%");
    return mask.respirator() + checked + (all ? "" : " " + percent(mask.wornPercent()));
  }

  private static String percent(double share) {
    return Figures.exact(share) + "%";
  }
}
