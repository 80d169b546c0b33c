package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;

/** The keys of the page of evidence. */
final class EvidenceKeys {
  private static final int SOME = 8;

  static final List<Binding> ALL =
      List.of(
          on(Key.Name.DOWN, "↓", "further", "further down", s -> scroll(s, 1)),
          on(Key.Name.UP, "↑", "", "further up", s -> scroll(s, -1)),
          on(Key.Name.PAGE_DOWN, "PgDn", "", "a piece further down", s -> scroll(s, SOME)),
          on(Key.Name.PAGE_UP, "PgUp", "", "a piece further up", s -> scroll(s, -SOME)));

  private EvidenceKeys() {}

  static Step open(State state) {
    return Step.to(state.with(Focus.EVIDENCE), new Task.ReadEvidence());
  }

  private static Step scroll(State state, int by) {
    EvidenceSheet evidence = state.pages().evidence();
    return Step.to(state.with(evidence.from(evidence.top() + by)));
  }
}
