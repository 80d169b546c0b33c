package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import java.util.stream.Stream;

/** The keys of a page of text that lies over the day. */
final class PageKeys {
  private static final int SOME = 8;

  static final List<Binding> ALL =
      List.of(
          on(Key.Name.ESCAPE, "Esc", "close", "close this page", PageKeys::close),
          on(Key.Name.DOWN, "↓", "further", "further down", s -> scroll(s, 1)),
          on(Key.Name.UP, "↑", "", "further up", s -> scroll(s, -1)),
          on(Key.Name.PAGE_DOWN, "PgDn", "", "a piece further down", s -> scroll(s, SOME)),
          on(Key.Name.PAGE_UP, "PgUp", "", "a piece further up", s -> scroll(s, -SOME)),
          on(Key.Name.ENTER, "Enter", "", "close this page", PageKeys::close),
          on(Key.Name.F1, "F1", "", "close this page", PageKeys::close),
          on('?', "", "close this page", PageKeys::close));

  /** Those of what a day calls for. */
  static final List<Binding> NOTES =
      Stream.concat(
              Stream.of(on(Key.Name.ENTER, "Enter", "do it", "take up the first", PageKeys::take)),
              ALL.stream().filter(binding -> !binding.label().equals("Enter")))
          .toList();

  /** Those of the page of words. */
  static final List<Binding> WORDS =
      Stream.concat(
              Stream.of(
                  on(Key.Name.RIGHT, "→", "next kind", "the next kind of words", s -> kind(s, 1)),
                  on(Key.Name.LEFT, "←", "", "the kind of words before", s -> kind(s, -1))),
              ALL.stream())
          .toList();

  private PageKeys() {}

  private static Step kind(State state, int by) {
    State turned = state.with(state.pages().with(state.pages().words().next(by)));
    return Step.to(turned.with(turned.sheet().from(0)));
  }

  private static Step take(State state) {
    return state
        .sheet()
        .current()
        .flatMap(page -> page.report().nextStep())
        .map(step -> Offer.of(step.action(), state))
        .orElseGet(() -> close(state));
  }

  /** Closes what lies over a page. */
  static Step close(State state) {
    return Step.to(state.focus().isPage() ? state.under() : state.home());
  }

  private static Step scroll(State state, int by) {
    return Step.to(state.with(state.sheet().from(state.sheet().top() + by)));
  }
}
