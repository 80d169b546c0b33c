package motebook.screen.state;

import java.util.Optional;
import motebook.model.Action;
import motebook.model.Action.AddElement;
import motebook.model.Action.AddRespirator;
import motebook.model.Action.RecordFitTest;

/**
 * How an action is offered on the spot: a form where more than a yes is needed, else a question.
 */
final class Offer {
  private Offer() {}

  static Step of(Action action, State state) {
    return form(action)
        .map(open -> Step.to(state, open))
        .orElseGet(() -> Step.to(state.asking(new Question.Settle(action))));
  }

  private static Optional<Task.OpenGear> form(Action action) {
    Optional<Action> wanted = Optional.of(action);
    if (action instanceof RecordFitTest test) {
      return Optional.of(
          new Task.OpenGear(Form.Kind.FIT_TEST, test.respirator(), test.person(), wanted));
    }
    if (action instanceof AddElement add) {
      return Optional.of(new Task.OpenGear(Form.Kind.ELEMENT, add.respirator(), "", wanted));
    }
    return action instanceof AddRespirator
        ? Optional.of(new Task.OpenGear(Form.Kind.RESPIRATOR, "", "", wanted))
        : Optional.empty();
  }
}
