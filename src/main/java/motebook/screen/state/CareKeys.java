package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import java.util.Optional;
import motebook.screen.state.Notice.Tone;

/** The keys of masks and filters. */
final class CareKeys {
  private static final int SOME = 8;

  static final List<Binding> ALL =
      List.of(
          on(Key.Name.ENTER, "Enter", "settle it", "settle what it asks for", CareKeys::settle),
          on('r', "mask", "add a respirator", s -> add(s, Form.Kind.RESPIRATOR)),
          on('e', "element", "add an element to a mask", s -> add(s, Form.Kind.ELEMENT)),
          on('t', "fit test", "write down a fit test", s -> add(s, Form.Kind.FIT_TEST)),
          on(
              Key.Name.DELETE,
              "Del",
              "damaged",
              "damaged, soiled or hard to breathe: take it off, after a question",
              CareKeys::damaged),
          on(Key.Name.LEFT, "←", "", "the page before", s -> page(s, -1)),
          on(Key.Name.DOWN, "↓", "", "the one below", s -> point(s, 1)),
          on(Key.Name.UP, "↑", "", "the one above", s -> point(s, -1)),
          on(Key.Name.PAGE_DOWN, "PgDn", "", "some further down", s -> point(s, SOME)),
          on(Key.Name.PAGE_UP, "PgUp", "", "some further up", s -> point(s, -SOME)),
          on(Key.Name.RIGHT, "→", "next page", "due, masks, shop filters", s -> page(s, 1)));

  private CareKeys() {}

  static Step open(State state) {
    return open(state, CareSheet.Tab.DUE);
  }

  static Step open(State state, CareSheet.Tab tab) {
    return Step.to(state.with(state.pages().care().on(tab)).with(Focus.CARE), new Task.ReadCare());
  }

  private static Step page(State state, int by) {
    return Step.to(state.with(state.pages().care().next(by)));
  }

  private static Step point(State state, int by) {
    CareSheet care = state.pages().care();
    return Step.to(state.with(care.pointing(care.chosen() + by)));
  }

  static Step add(State state, Form.Kind kind) {
    String mask = state.pages().care().row().map(CareRow::mask).orElse("");
    return Step.to(state, new Task.OpenGear(kind, mask, state.sheet().person(), Optional.empty()));
  }

  private static Step settle(State state) {
    return state
        .pages()
        .care()
        .row()
        .flatMap(CareRow::next)
        .map(action -> Offer.of(action, state))
        .orElseGet(() -> Step.to(state.saying("Nothing is asked for here.", Tone.DONE)));
  }

  private static Step damaged(State state) {
    return state
        .pages()
        .care()
        .row()
        .flatMap(CareRow::worn)
        .map(element -> Step.to(state.asking(new Question.Damaged(element))))
        .orElseGet(() -> Step.to(state.saying("That is for an element on a mask.", Tone.DONE)));
  }
}
