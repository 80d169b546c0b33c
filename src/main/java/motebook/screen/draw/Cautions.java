package motebook.screen.draw;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import motebook.reference.Caution;
import motebook.report.LeftOut;
import motebook.report.LimitText;
import motebook.report.ProtectionWords;
import motebook.report.Wording;
import motebook.screen.state.DayPage;

/** The cautions that a day calls for, in as many rows as there are for them. */
final class Cautions {
  private Cautions() {}

  /** The rows that they take when each is said in full. */
  static int wanted(DayPage page, int columns) {
    return full(page, columns).size();
  }

  /** What comes before all else, each said in full however small the screen is. */
  static List<String> alarms(DayPage page, int columns) {
    return ProtectionWords.alarms(page.report()).stream()
        .flatMap(alarm -> Fit.wrap("! " + alarm, columns).stream())
        .toList();
  }

  private static List<String> full(DayPage page, int columns) {
    List<String> lines = new ArrayList<>();
    sentences(page).forEach(sentence -> lines.addAll(Fit.wrap(sentence, columns)));
    return lines;
  }

  private static List<String> sentences(DayPage page) {
    List<String> all = new ArrayList<>();
    LeftOut.sentences(page.report().leftOut()).stream().map("! "::concat).forEach(all::add);
    int before = all.size();
    page.cautions().stream().map(Caution::sentence).map("! "::concat).forEach(all::add);
    int aside = page.report().cautions().size() - (all.size() - before);
    if (aside > 0) {
      all.add(
          "! "
              + aside
              + (aside == 1 ? " caution" : " cautions")
              + " set aside for this day (notes, Ctrl-O)");
    }
    partlyCredited(page).ifPresent(said -> all.add(0, said));
    page.report()
        .uncovered()
        .ifPresent(
            dust -> {
              List<String> said = new ArrayList<>(LimitText.uncovered(dust));
              Collections.rotate(said, -1); // what to do first: there may be one row for it
              all.addAll(0, said.stream().map("! "::concat).toList());
            });
    all.addAll(0, LimitText.overBeside(page.report()).stream().map("! "::concat).toList());
    all.addAll(0, ProtectionWords.alarms(page.report()).stream().map("! "::concat).toList());
    return all;
  }

  // Where no mask of the day counts, the gauge itself says so.
  private static Optional<String> partlyCredited(DayPage page) {
    boolean none = Wording.uncredited(page.report()).isPresent();
    return page.report().sessions().stream()
        .filter(line -> !none && !line.credit().dust().objections().isEmpty())
        .findFirst()
        .map(
            line ->
                "! Mask not credited in "
                    + Wording.span(line.source().session().work())
                    + ": "
                    + Wording.brief(line.credit())
                    + " (notes)");
  }

  /**
   * In full where they fit, else the alarms in full and the others in one row each; the last says
   * how many more.
   */
  static List<String> lines(DayPage page, int columns, int rows) {
    List<String> full = full(page, columns);
    if (full.size() <= rows) {
      return full;
    }
    List<String> alarms = alarms(page, columns);
    List<String> lines = new ArrayList<>(alarms.subList(0, Math.min(rows, alarms.size())));
    List<String> all = sentences(page);
    all.subList(0, ProtectionWords.alarms(page.report()).size()).clear();
    int room = rows - lines.size();
    for (int row = 0; row < Math.min(room, all.size()); row++) {
      int more = row == room - 1 ? all.size() - room : 0;
      String rest = more > 0 ? "  notes: " + more + " more" : "";
      lines.add(Fit.into(all.get(row), columns - rest.length()) + rest);
    }
    return lines;
  }
}
