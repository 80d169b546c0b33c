package motebook.screen.state;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Every key that works, by what it acts on; the row of keys and the help are drawn from it. */
public final class Bindings {
  private static final Set<Key.Name> SCROLLING = EnumSet.of(Key.Name.PAGE_UP, Key.Name.PAGE_DOWN);
  private static final Set<Key.Name> OVER =
      EnumSet.of(
          Key.Name.PAGE_UP,
          Key.Name.PAGE_DOWN,
          Key.Name.UP,
          Key.Name.DOWN,
          Key.Name.LEFT,
          Key.Name.RIGHT,
          Key.Name.F1,
          Key.Name.ESCAPE);

  private Bindings() {}

  /** The keys that work in a state, in the order in which they are shown. */
  public static List<Binding> of(State state) {
    if (state.asked().isPresent()) {
      return QuestionKeys.ALL;
    } else if (state.focus().isFilledIn()) {
      return page(state.focus());
    }
    List<Binding> keys = new ArrayList<>();
    if (state.timed()) {
      keys.add(WatchKeys.STOP);
    }
    if (state.typing()) {
      add(keys, ofLine(state.focus()));
      add(keys, beside(state.focus()));
      add(keys, LineKeys.ALL);
    } else {
      boolean open = state.where().open();
      List<Binding> page = page(state.focus());
      if (!open) {
        add(keys, page.stream().filter(Binding::isLetter).toList());
        add(keys, BaseKeys.letters(state.focus()));
      }
      add(keys, page.stream().filter(binding -> !binding.isLetter()).toList());
      add(keys, open ? LineKeys.EMPTY : LineKeys.CLOSED);
      if (!state.line().text().isEmpty()) {
        add(keys, List.of(LineKeys.CLEAR));
      }
      add(keys, state.focus().liesOver() ? List.of() : BaseKeys.PAGES);
      add(keys, BaseKeys.EVERYWHERE);
    }
    return keys;
  }

  /** The keys that would work in a state if the line were closed: those of the page. */
  public static List<Binding> closed(State state) {
    return of(state.opening(false));
  }

  // What a page does with a key goes before what is done with it everywhere.
  private static void add(List<Binding> keys, List<Binding> further) {
    for (Binding binding : further) {
      boolean free =
          keys.stream().allMatch(other -> Collections.disjoint(other.keys(), binding.keys()));
      if (free) {
        keys.add(binding);
      }
    }
  }

  // What a page does while something is typed: all of it scrolls, and what lies over another page
  // is gone through and closed by the keys that it shows.
  private static List<Binding> beside(Focus focus) {
    return page(focus).stream()
        .filter(
            binding ->
                binding.keys().stream()
                    .map(Key::name)
                    .anyMatch(focus.liesOver() ? OVER::contains : SCROLLING::contains))
        .toList();
  }

  /** What a key does in a state, if it does something. */
  public static Optional<Binding> of(State state, Key key) {
    return of(state).stream().filter(binding -> binding.keys().contains(key)).findFirst();
  }

  /** The keys of a page itself, the letters that it takes where the line is closed among them. */
  public static List<Binding> page(Focus focus) {
    return switch (focus) {
      case DAY -> DayKeys.ALL;
      case WEEK -> WeekKeys.ALL;
      case FORM -> FormKeys.ALL;
      case PROMPT -> PromptKeys.ALL;
      case FAVOURITES -> FavouriteKeys.ALL;
      case FOUND -> FoundKeys.ALL;
      case CARE -> CareKeys.ALL;
      case EVIDENCE -> EvidenceKeys.ALL;
      case PLAN -> PlanKeys.ALL;
      case NOTES -> PageKeys.NOTES;
      case HELP -> PageKeys.ALL;
      case WORDS -> PageKeys.WORDS;
    };
  }

  /** The keys of a page, that which it has of its own for a typed line among them. */
  public static List<Binding> told(Focus focus) {
    List<Binding> keys = new ArrayList<>(page(focus));
    keys.addAll(ofLine(focus));
    return keys;
  }

  private static List<Binding> ofLine(Focus focus) {
    return focus == Focus.PLAN ? List.of(PlanKeys.COMPARE) : List.of();
  }

  /** The keys of the line while something stands in it. */
  public static List<Binding> line() {
    return LineKeys.ALL;
  }

  /** The keys that answer a question. */
  public static List<Binding> question() {
    return QuestionKeys.ALL;
  }

  /** The keys that work on every page while the line is empty or closed. */
  public static List<Binding> everywhere() {
    List<Binding> keys = new ArrayList<>(LineKeys.EMPTY);
    LineKeys.CLOSED.stream().filter(binding -> !keys.contains(binding)).forEach(keys::add);
    keys.addAll(BaseKeys.PAGES);
    keys.addAll(BaseKeys.EVERYWHERE);
    keys.add(WatchKeys.STOP);
    keys.addAll(BaseKeys.LETTERS);
    return keys;
  }
}
