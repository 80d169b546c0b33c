package motebook.screen.plain;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.LocalDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import motebook.screen.state.Focus;
import motebook.screen.state.Key;
import motebook.screen.state.Message;
import motebook.screen.state.State;
import motebook.screen.state.Step;
import motebook.screen.state.Task;
import motebook.screen.state.Update;

/**
 * The screens for ears: a line is typed and what has changed is told in lines. Nothing is drawn and
 * nothing moves, so that a screen reader, or a terminal that only prints, can follow.
 */
public final class Plain {
  private final Function<Task, Optional<Message>> clerk;
  private final Supplier<LocalDateTime> now;
  private final BufferedReader in;
  private final PrintWriter out;
  private State state;

  /**
   * Plain screens.
   *
   * @param clerk does the tasks
   * @param now tells the local time
   */
  public Plain(
      State opening,
      Function<Task, Optional<Message>> clerk,
      Supplier<LocalDateTime> now,
      BufferedReader in,
      PrintWriter out) {
    this.state = opening;
    this.clerk = clerk;
    this.now = now;
    this.in = in;
    this.out = out;
  }

  /**
   * Runs until the person leaves or there is nothing more to read.
   *
   * @throws IOException if what is typed cannot be read
   */
  public void run() throws IOException {
    State before = state;
    follow(Update.open(state));
    tell(Told.opened(before, state));
    while (!state.over()) {
      out.print("> ");
      out.flush();
      String line = in.readLine();
      if (line == null) {
        take(new Message.Pressed(Key.of(Key.Name.CLOSED)));
      } else {
        answer(line);
      }
    }
  }

  private void answer(String line) {
    take(new Message.Ticked(now.get()));
    State before = state;
    if (Typed.asksForHelp(line)) {
      tell(Told.help(state));
      return;
    }
    Optional<String> words = Typed.asksForWords(line);
    if (words.isPresent()) {
      words(words.get());
      return;
    }
    Optional<Typed.Named> named = Typed.named(line, state);
    named.ifPresentOrElse(
        key -> follow(Update.named(state, key.binding(), key.key())),
        () -> Typed.messages(line, state).forEach(this::take));
    take(new Message.Ticked(now.get()));
    tell(Told.changed(before, state));
    returned();
  }

  private void words(String kind) {
    clerk
        .apply(new Task.ReadWords(state.sheet().person()))
        .filter(Message.WordsRead.class::isInstance)
        .map(Message.WordsRead.class::cast)
        .ifPresent(read -> tell(Told.words(read.parts(), kind)));
  }

  // A page that only tells something has been told; nobody need leave it.
  private void returned() {
    if (EnumSet.of(Focus.NOTES, Focus.HELP, Focus.WORDS).contains(state.focus())) {
      take(new Message.Pressed(Key.of(Key.Name.ESCAPE)));
    }
  }

  private void tell(List<String> lines) {
    new ArrayList<>(lines).forEach(out::println);
    out.flush();
  }

  private void take(Message message) {
    follow(Update.update(state, message));
  }

  // Everything asked for is done before anything is told.
  private void follow(Step step) {
    Deque<Message> answers = new ArrayDeque<>();
    take(step, answers);
    while (!answers.isEmpty()) {
      take(Update.update(state, answers.poll()), answers);
    }
  }

  private void take(Step step, Deque<Message> answers) {
    state = step.state();
    for (Task task : step.tasks()) {
      clerk.apply(task).ifPresent(answers::add);
    }
  }
}
