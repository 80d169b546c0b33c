package motebook.entry;

import java.util.Arrays;
import java.util.List;
import motebook.model.Names;
import motebook.model.Text;
import motebook.model.Work;
import motebook.reference.Named;
import motebook.reference.Reference;

/** Writes a session as the line that says it. */
final class Saying {
  private Saying() {}

  /** The listed name of a row, or its key with spaces where that name would hold a joint. */
  static String name(Named row) {
    boolean joined =
        row.name().contains(",")
            || Arrays.stream(Text.folded(row.name()).split(" ", -1))
                .anyMatch(Names.JOINTS::contains);
    return joined ? row.spoken() : row.name();
  }

  /** The names of rows as a person lists them: {@code a, b or c}. */
  static String anyOf(List<String> names) {
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
  }

  /** The full line: nothing is left to be assumed. */
  static String line(Work work, Reference reference) {
    StringBuilder line = new StringBuilder(Durations.written(work.minutes()));
    line.append(' ').append(name(reference.operation(work.operation())));
    work.material()
        .ifPresent(m -> line.append(" of ").append(name(reference.material(work.material()))));
    String joint = " with ";
    for (String control : work.controls()) {
      line.append(joint).append(name(reference.control(control)));
      joint = " and ";
    }
    line.append(" in ").append(work.place());
    work.mask()
        .ifPresent(
            mask ->
                line.append(" wearing ")
                    .append(mask.respirator())
                    .append(mask.checked() ? " checked" : "")
                    .append(mask.wornPercent() == 100 ? "" : " " + percent(mask.wornPercent())));
    line.append(" by ").append(work.person());
    line.append(" at ").append(work.start()).append(" on ").append(work.date());
    return line.append(work.note().isEmpty() ? "" : " note " + work.note()).toString();
  }

  private static String percent(double percent) {
    return percent == Math.rint(percent) ? (long) percent + "%" : percent + "%";
  }
}
