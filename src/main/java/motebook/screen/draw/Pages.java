package motebook.screen.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import motebook.desk.DayReport;
import motebook.report.Ink;
import motebook.report.LeftOut;
import motebook.report.LimitText;
import motebook.report.ProtectionWords;
import motebook.report.VapourText;
import motebook.report.WordPart;
import motebook.report.Wording;
import motebook.screen.state.Act;
import motebook.screen.state.Acts;
import motebook.screen.state.Binding;
import motebook.screen.state.Bindings;
import motebook.screen.state.Focus;
import motebook.screen.state.State;
import motebook.screen.state.WordsSheet;

/** The pages of text that lie over the day: the keys, and what the day calls for. */
final class Pages {
  private static final int LABEL = 11;
  private static final int DEEP = 4;
  private static final Map<Focus, String> PARTS = new LinkedHashMap<>();

  static {
    PARTS.put(Focus.DAY, "On the day");
    PARTS.put(Focus.WEEK, "On the week");
    PARTS.put(Focus.FORM, "In a form");
    PARTS.put(Focus.PROMPT, "When a short question is answered");
    PARTS.put(Focus.FAVOURITES, "In the list of favourites");
    PARTS.put(Focus.FOUND, "In a list of what was found");
    PARTS.put(Focus.CARE, "On masks and filters");
    PARTS.put(Focus.PLAN, "On the page of plans");
    PARTS.put(Focus.EVIDENCE, "On the page of evidence");
    PARTS.put(Focus.NOTES, "On what a day calls for");
    PARTS.put(Focus.WORDS, "On the page of words");
    PARTS.put(Focus.HELP, "On pages like this one");
  }

  private static final String LINE =
      "The line is open on every page: what is typed goes into it, and nothing is written before"
          + " Enter. Esc closes it; then the letters below go to the page, and none of them changes"
          + " the book. Esc again, or a digit, opens it.";

  private Pages() {}

  /** The page as plain lines. */
  static List<String> text(State state) {
    return paragraphs(state).stream().map(Entry::text).map(Plainly::of).toList();
  }

  /** Draws a page between two rows, from the line it was scrolled to. */
  static void draw(Canvas canvas, State state, int top, int end) {
    List<Entry> entries = lines(paragraphs(state), canvas.columns() - 2);
    int first = Math.max(0, Math.min(state.sheet().top(), entries.size() - (end - top)));
    for (int row = top; row < end && first + row - top < entries.size(); row++) {
      Entry entry = entries.get(first + row - top);
      canvas.text(row, 1, entry.text(), entry.role());
    }
    if (first + end - top < entries.size()) {
      canvas.ending(end - 1, canvas.columns() - 1, " ↓ more", Role.KEY);
    }
  }

  private static List<Entry> paragraphs(State state) {
    return switch (state.focus()) {
      case HELP -> helping(state.where().back());
      case WORDS -> words(state.pages().words());
      default -> notes(state);
    };
  }

  /** A paragraph: columns before its first line and before the others. */
  private record Entry(String text, Role role, int first, int others) {
    Entry(String text, Role role) {
      this(text, role, 0, 0);
    }

    /** It in lines of a width. */
    List<Entry> wrapped(int width) {
      List<Entry> lines = new ArrayList<>();
      for (String line : Fit.wrap(text, width - Math.max(first, others))) {
        int before = lines.isEmpty() ? first : others;
        lines.add(new Entry(" ".repeat(before) + line, role));
      }
      return text.isEmpty() ? List.of(this) : lines;
    }
  }

  private static List<Entry> lines(List<Entry> paragraphs, int width) {
    return paragraphs.stream().flatMap(paragraph -> paragraph.wrapped(width).stream()).toList();
  }

  /** The help as plain lines. */
  static List<String> help(Focus from) {
    return helping(from).stream().map(Entry::text).toList();
  }

  /** The keys, those of the page that one comes from first. */
  private static List<Entry> helping(Focus from) {
    List<Entry> page = new ArrayList<>();
    List<Focus> order = new ArrayList<>(PARTS.keySet());
    if (order.remove(from)) {
      keys(page, PARTS.get(from), Bindings.told(from));
    }
    page.add(new Entry("", Role.PLAIN));
    page.add(new Entry("The line", Role.TITLE));
    page.add(plain(LINE));
    keys(page, "While something stands in the line", Bindings.line());
    words(page);
    keys(page, "On every page, while the line is empty or closed", Bindings.everywhere());
    order.forEach(focus -> keys(page, PARTS.get(focus), Bindings.told(focus)));
    keys(page, "While a question stands", Bindings.question());
    page.add(new Entry("", Role.PLAIN));
    page.add(new Entry("The air", Role.TITLE));
    page.add(
        plain(
            "Columns are filled with fine dust and, above it, coarse dust; equal steps up are"
                + " equal factors. Fine dust stays in the air long after the tool has stopped. The"
                + " dots are what was breathed at the face, outside the mask."));
    page.add(
        plain(
            "(90 %): of ten days like this one, nine lie between the two figures. The dashed line"
                + " is the limit; the line \"mask on\" under the sessions is solid where a mask was"
                + " worn throughout, dashed where it was worn for a part of the session."));
    page.add(plain("rough: a figure behind it was back-calculated or judged, not measured."));
    return page;
  }

  /** The kind of words that is shown, and what others there are. */
  private static List<Entry> words(WordsSheet words) {
    List<Entry> page = new ArrayList<>();
    List<String> others =
        words.parts().stream().map(WordPart::key).filter(k -> !k.equals(words.key())).toList();
    for (WordPart part : words.part().stream().toList()) {
      page.add(new Entry(part.title() + ": " + part.how(), Role.TITLE));
      part.words().forEach(word -> word(word, page));
      page.add(new Entry("Other words: " + String.join(", ", others), Role.QUIET));
    }
    return page.isEmpty() ? List.of(new Entry("Reading the tables …", Role.QUIET)) : page;
  }

  private static void word(WordPart.Word word, List<Entry> page) {
    List<String> lines = word.lines();
    page.add(new Entry(lines.get(0), Role.PLAIN, 0, DEEP));
    lines.stream().skip(1).forEach(l -> page.add(new Entry(l.strip(), Role.QUIET, DEEP, DEEP)));
  }

  private static void keys(List<Entry> page, String title, List<Binding> bindings) {
    if (!page.isEmpty()) {
      page.add(new Entry("", Role.PLAIN));
    }
    page.add(new Entry(title, Role.TITLE));
    for (Binding binding : bindings) {
      page.add(plain(label(binding.label()) + binding.help()));
    }
  }

  private static void words(List<Entry> page) {
    page.add(new Entry("", Role.PLAIN));
    page.add(new Entry("Words in the line, alone, and then Enter", Role.TITLE));
    for (Act act : Acts.ALL) {
      page.add(plain("  " + String.join(", ", act.words()) + ": " + act.help()));
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
    LeftOut.sentences(report.leftOut()).forEach(s -> page.add(new Entry("! " + s, Role.WARNING)));
    ProtectionWords.alarms(report).forEach(a -> page.add(new Entry("! " + a, Role.WARNING)));
    ProtectionWords.needs(report).forEach(needs -> page.add(plain("Mask: " + needs + ".")));
    report.cautions().forEach(c -> page.add(new Entry("! " + c.sentence(), Role.WARNING)));
    MaskNotes.of(report).forEach(line -> page.add(plain(line)));
    LimitText.besides(report).forEach(line -> page.add(plain(line)));
    report.remarks().forEach(remark -> page.add(plain(remark)));
    report
        .vapour()
        .ifPresent(
            vapour ->
                VapourText.of(vapour, report, Ink.PLAIN).forEach(line -> page.add(plain(line))));
    if (report.minutesBetween() > 0) {
      page.add(
          plain(
              report.minutesBetween() + " min between sessions are counted as spent in the room."));
    }
  }
}
