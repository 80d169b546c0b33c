package motebook.screen.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.report.WordPart;
import motebook.screen.draw.Aloud;
import motebook.screen.state.Focus;
import motebook.screen.state.Form;
import motebook.screen.state.Reading;
import motebook.screen.state.State;

/** What there is to tell after a line was typed: what is new, and nothing that was told before. */
final class Told {
  private Told() {}

  /** The first words. */
  static List<String> opened(State before, State after) {
    List<String> lines = new ArrayList<>();
    lines.add("Motebook. Say what you did in one line, or a word; help lists the words.");
    lines.addAll(changed(before, after));
    return lines;
  }

  /** What has changed. */
  static List<String> changed(State before, State after) {
    List<String> lines = new ArrayList<>();
    if (!after.notice().text().isEmpty()) {
      lines.add(after.notice().text());
    }
    lines.addAll(after.over() ? List.of() : shown(before, after));
    return lines;
  }

  private static List<String> shown(State before, State after) {
    if (after.typing() && after.question().isEmpty()) {
      return typed(after);
    }
    return switch (after.focus()) {
      case FORM -> form(before, after);
      case PROMPT -> prompt(after);
      default -> page(before, after);
    };
  }

  private static List<String> page(State before, State after) {
    boolean samePage = before.focus() == after.focus() || before.focus() == Focus.PROMPT;
    boolean sameDay =
        before.sheet().current().isPresent()
            && before.sheet().date().equals(after.sheet().date())
            && before.sheet().person().equals(after.sheet().person());
    boolean known = after.focus() == Focus.DAY && samePage && sameDay;
    return known && !after.notice().text().isEmpty() ? Aloud.dose(after) : Aloud.page(after);
  }

  private static List<String> typed(State state) {
    List<String> lines = new ArrayList<>(Aloud.reading(state.line()));
    boolean fits =
        state
            .line()
            .current()
            .flatMap(Reading::understood)
            .filter(u -> u.clash().isEmpty())
            .isPresent();
    lines.add(
        fits
            ? "An empty line or yes logs it; another line takes its place; no drops it."
            : "Say the line again; no drops it; help lists the words.");
    return lines;
  }

  private static List<String> form(State before, State after) {
    List<String> lines = new ArrayList<>();
    if (before.focus() != Focus.FORM) {
      lines.add(
          "A form, one thing after another: say the answer; an empty line keeps what stands there,"
              + " - empties it; back, save and esc are words."
              + (isFirst(after) ? " All of it can be changed later: settings." : ""));
    }
    Optional<List<String>> said = after.pages().form().map(Aloud::reading);
    said.filter(s -> !s.isEmpty()).ifPresent(lines::addAll);
    lines.addAll(Aloud.page(after));
    return lines;
  }

  private static boolean isFirst(State state) {
    return state.pages().form().map(form -> form.kind() == Form.Kind.FIRST).orElse(false);
  }

  private static List<String> prompt(State state) {
    List<String> wrong = Aloud.reading(state.pages().prompt().line());
    return wrong.isEmpty() ? Aloud.page(state) : wrong;
  }

  /** The keys and words, wherever one is; and what was being asked there. */
  static List<String> help(State state) {
    List<String> lines = new ArrayList<>(Aloud.help(state));
    lines.add("words, anywhere: the words that a line understands.");
    lines.addAll(state.typing() ? typed(state) : List.of());
    boolean asked = state.focus().isFilledIn() || state.question().isPresent();
    lines.addAll(asked ? Aloud.page(state) : List.of());
    return lines;
  }

  /** The words of one kind that a line understands, or which kinds there are. */
  static List<String> words(List<WordPart> parts, String kind) {
    List<String> keys = parts.stream().map(WordPart::key).toList();
    return parts.stream()
        .filter(part -> part.key().equals(kind))
        .findFirst()
        .map(part -> part.lines().stream().map(String::strip).toList())
        .orElse(
            List.of(
                "A line understands words of these kinds: "
                    + String.join(", ", keys)
                    + ". Say words and one of them, such as: words "
                    + keys.get(1)));
  }
}
