package motebook.screen.draw;

import java.util.ArrayList;
import java.util.List;
import motebook.desk.DayReport;
import motebook.desk.DayReport.SessionLine;
import motebook.report.Ink;
import motebook.report.VapourText;
import motebook.report.Wording;
import motebook.screen.state.Binding;
import motebook.screen.state.Bindings;
import motebook.screen.state.Focus;
import motebook.screen.state.State;

/** The pages of text that lie over the day: the keys, and what the day calls for. */
final class Pages {
  private static final int LABEL = 11;

  private Pages() {}

  /** The page as plain lines. */
  static List<String> text(State state) {
    return (state.focus() == Focus.HELP ? help() : notes(state))
        .stream().map(Entry::text).map(Plainly::of).toList();
  }

  /** Draws a page between two rows, from the line it was scrolled to. */
  static void draw(Canvas canvas, State state, int top, int end) {
    List<Entry> entries =
        lines(state.focus() == Focus.HELP ? help() : notes(state), canvas.columns() - 2);
    int first = Math.max(0, Math.min(state.sheet().top(), entries.size() - (end - top)));
    for (int row = top; row < end && first + row - top < entries.size(); row++) {
      Entry entry = entries.get(first + row - top);
      canvas.text(row, 1, entry.text(), entry.role());
    }
    if (first + end - top < entries.size()) {
      canvas.ending(end - 1, canvas.columns() - 1, " ↓ more", Role.KEY);
    }
  }

  private record Entry(String text, Role role) {}

  private static List<Entry> lines(List<Entry> paragraphs, int width) {
    List<Entry> lines = new ArrayList<>();
    for (Entry paragraph : paragraphs) {
      if (paragraph.text().isEmpty()) {
        lines.add(paragraph);
      }
      Fit.wrap(paragraph.text(), width).forEach(l -> lines.add(new Entry(l, paragraph.role())));
    }
    return lines;
  }

  private static List<Entry> help() {
    List<Entry> page = new ArrayList<>();
    keys(page, "On the day", Focus.DAY);
    keys(page, "In the line", Focus.LINE);
    page.add(plain(label("a-z …") + "every other key types"));
    keys(page, "On the week", Focus.WEEK);
    keys(page, "In a form", Focus.FORM);
    keys(page, "When a short question is answered", Focus.PROMPT);
    keys(page, "In the list of favourites", Focus.FAVOURITES);
    keys(page, "In a list of what was found", Focus.FOUND);
    keys(page, "On masks and filters", Focus.CARE);
    keys(page, "On the page of evidence", Focus.EVIDENCE);
    keys(page, "When yes or no is asked", Focus.QUESTION);
    keys(page, "On pages like this one", Focus.HELP);
    page.add(new Entry("", Role.PLAIN));
    page.add(new Entry("The air", Role.TITLE));
    page.add(
        plain(
            "Columns are filled with fine dust and, above it, coarse dust; equal steps up are"
                + " equal factors. Fine dust stays in the air long after the tool has stopped. The"
                + " dots are what was breathed at the face, outside the mask."));
    page.add(plain("rough: a figure behind it was back-calculated or judged, not measured."));
    return page;
  }

  private static void keys(List<Entry> page, String title, Focus focus) {
    if (!page.isEmpty()) {
      page.add(new Entry("", Role.PLAIN));
    }
    page.add(new Entry(title, Role.TITLE));
    for (Binding binding : Bindings.of(focus)) {
      page.add(plain(label(binding.label()) + binding.help()));
    }
  }

  private static String label(String label) {
    return "  " + Fit.left(label, LABEL);
  }

  private static Entry plain(String text) {
    return new Entry(text, Role.PLAIN);
  }

  private static List<Entry> notes(State state) {
    List<Entry> page = new ArrayList<>();
    page.add(new Entry("What this day calls for", Role.TITLE));
    state.sheet().current().ifPresent(day -> notes(day.report(), page));
    page.add(plain(Wording.ESTIMATES));
    return page;
  }

  private static void notes(DayReport report, List<Entry> page) {
    report.cautions().forEach(c -> page.add(new Entry("! " + c.sentence(), Role.WARNING)));
    report.remarks().forEach(remark -> page.add(plain(remark)));
    report
        .vapour()
        .ifPresent(
            vapour ->
                VapourText.of(vapour, report, Ink.PLAIN).forEach(line -> page.add(plain(line))));
    for (SessionLine line : report.sessions()) {
      line.credit()
          .refused()
          .ifPresent(
              why ->
                  page.add(
                      plain(
                          "The mask is not credited in "
                              + Wording.span(line.source().session().work())
                              + ": "
                              + why)));
    }
    if (report.minutesBetween() > 0) {
      page.add(
          plain(
              report.minutesBetween() + " min between sessions are counted as spent in the room."));
    }
  }
}
