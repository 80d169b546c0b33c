package motebook.screen.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.model.Session;
import motebook.report.DayText;
import motebook.report.Ink;
import motebook.report.LeftOut;
import motebook.report.WeekText;
import motebook.report.Wording;
import motebook.screen.state.DayPage;
import motebook.screen.state.Form;
import motebook.screen.state.Found;
import motebook.screen.state.Line;
import motebook.screen.state.Reading;
import motebook.screen.state.State;
import motebook.screen.state.WeekPage;

/** What a page says, line by line, for ears and for terminals that only print. */
public final class Aloud {
  private static final int WIDE = 10_000;
  private static final int SOME_HITS = 10;

  private Aloud() {}

  /** The page that is shown, as lines without any drawing. */
  public static List<String> page(State state) {
    if (state.question().isPresent()) {
      return List.of(state.question().get().text() + " yes or no");
    }
    return switch (state.focus()) {
      case HELP, NOTES, WORDS -> Pages.text(state);
      case FAVOURITES -> favourites(state);
      case FOUND -> found(state.pages().found());
      case CARE -> care(state);
      case EVIDENCE -> EvidenceView.lines(state.pages().evidence().evidence(), state.program());
      case PLAN -> PlanView.lines(state);
      case FORM -> state.pages().form().map(Aloud::field).orElse(List.of());
      case PROMPT -> List.of(state.pages().prompt().text());
      case DAY -> day(state);
      case WEEK -> week(state);
    };
  }

  /** The keys and words of every page, those of the one that is shown first. */
  public static List<String> help(State state) {
    return Pages.help(state.focus()).stream().map(Plainly::of).toList();
  }

  /** The day's dose alone, where the day itself is known already. */
  public static List<String> dose(State state) {
    List<String> lines = new ArrayList<>();
    state.sheet().current().ifPresent(p -> lines.addAll(DayText.dose(p.report(), Ink.PLAIN)));
    state.sheet().current().flatMap(p -> Wording.verdict(p.report())).ifPresent(lines::add);
    lines.addAll(WatchRow.lines(state, WIDE, WIDE));
    return lines;
  }

  private static List<String> day(State state) {
    Optional<DayPage> page = state.sheet().current();
    if (page.isEmpty()) {
      return List.of("Reading the book.");
    }
    List<String> lines = new ArrayList<>();
    if (page.get().sessions().isEmpty()) {
      lines.add(Wording.date(page.get().date()) + ", " + page.get().person());
      lines.addAll(LeftOut.sentences(page.get().report().leftOut()));
      lines.add(
          page.get().bookEmpty()
              ? "Nothing is in this book yet."
              : "Nothing is logged on this day.");
      lines.add("Say what you did, such as: 40m orbital sanding of oak with tool vacuum");
    } else {
      lines.addAll(DayText.numbered(page.get().report(), Ink.PLAIN, state.program()));
    }
    page.flatMap(p -> Wording.verdict(p.report())).ifPresent(lines::add);
    lines.addAll(WatchRow.lines(state, WIDE, WIDE));
    return lines;
  }

  private static List<String> week(State state) {
    Optional<WeekPage> page = state.week().current(state.sheet().person());
    List<String> lines = new ArrayList<>();
    page.ifPresent(p -> lines.addAll(WeekText.of(p.review(), Ink.PLAIN)));
    return lines;
  }

  private static List<String> favourites(State state) {
    List<String> lines = new ArrayList<>();
    List<motebook.model.Favourite> all =
        state.sheet().page().map(DayPage::favourites).orElse(List.of());
    for (int index = 0; index < all.size(); index++) {
      String key = "F" + (index + 2) + ", ";
      lines.add(key + all.get(index).name() + ": " + all.get(index).line());
    }
    return all.isEmpty() ? List.of("No favourites yet.") : lines;
  }

  private static List<String> found(Found found) {
    if (found.hits().isEmpty()) {
      return List.of("Nothing in the book holds all of these words.");
    }
    List<String> lines = new ArrayList<>();
    lines.add(
        (found.chosen() + 1) + " of " + found.hits().size() + (found.more() ? " or more" : ""));
    found.hits().stream().skip(found.chosen()).limit(SOME_HITS).map(Aloud::hit).forEach(lines::add);
    return lines;
  }

  private static List<String> care(State state) {
    var care = state.pages().care();
    List<String> lines = new ArrayList<>(List.of(care.tab().title()));
    for (var row : care.rows()) {
      String used =
          row.used().isPresent() ? Math.round(100 * row.used().getAsDouble()) + " % used, " : "";
      lines.add((row.pressing() ? "due: " : "") + row.name().strip() + ", " + used + row.told());
    }
    care.row().ifPresent(row -> row.more().forEach(note -> lines.add(note.told())));
    return lines;
  }

  private static String hit(Session session) {
    var work = session.work();
    String material = work.material().map(key -> " of " + key.replace('-', ' ')).orElse("");
    return work.date()
        + " "
        + Wording.span(work)
        + " "
        + work.person()
        + ": "
        + work.operation().replace('-', ' ')
        + material
        + (work.note().isEmpty() ? "" : " (" + work.note() + ")");
  }

  /** The field of a form that is asked for. */
  private static List<String> field(Form form) {
    List<String> lines = new ArrayList<>();
    var field = form.field();
    String holds = field.text().isEmpty() ? "empty" : field.told(field.text());
    lines.add(
        "Field "
            + (form.at() + 1)
            + " of "
            + form.fields().size()
            + ", "
            + field.label()
            + ": "
            + holds
            + " ("
            + field.hint()
            + ")");
    if (!field.choices().isEmpty()) {
      String between = field.told().isEmpty() ? ", " : "; ";
      lines.add(
          "Choices: " + String.join(between, field.choices().stream().map(field::told).toList()));
    }
    return lines;
  }

  /** What was made of what was typed. */
  public static List<String> reading(Line line) {
    return line.current().map(reading -> said(reading)).orElse(List.of());
  }

  /** What was made of a form. */
  public static List<String> reading(Form form) {
    return form.current().map(reading -> said(reading)).orElse(List.of());
  }

  private static List<String> said(Reading reading) {
    return Told.of(reading, WIDE).stream().map(Told.Part::text).toList();
  }
}
