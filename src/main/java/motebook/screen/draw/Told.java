package motebook.screen.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.model.Figures;
import motebook.report.LeftOut;
import motebook.screen.state.Acts;
import motebook.screen.state.Asked;
import motebook.screen.state.Fault;
import motebook.screen.state.Line;
import motebook.screen.state.Notice.Tone;
import motebook.screen.state.Prompt;
import motebook.screen.state.Reading;
import motebook.screen.state.Reading.Understood;
import motebook.screen.state.State;

/**
 * What there is to say above the line.
 *
 * @param parts lines that may be cut where there is no room
 * @param last lines that must be seen, below the others
 * @param fault what is to be marked in the line
 */
record Told(List<Part> parts, List<Part> last, Optional<Fault> fault) {

  /** One line. */
  record Part(String text, Role role) {}

  private static final Told NOTHING = new Told(List.of(), List.of(), Optional.empty());

  /** What was made of the line. */
  static Told ofLine(State state, int columns) {
    Line line = state.line();
    if (line.blank()) {
      return said("First how long, or from when to when; then what you did.", Role.QUIET, columns);
    }
    return Acts.of(line.text())
        .map(act -> said("Enter: " + act.help() + ".", Role.DONE, columns))
        .or(() -> line.current().map(reading -> ofReading(reading, columns)))
        .orElse(NOTHING);
  }

  private static Told ofReading(Reading reading, int columns) {
    Optional<Fault> fault = reading.fault();
    if (fault.isPresent()) {
      Told told = said(fault.get().sentence(), Role.WRONG, columns);
      return new Told(told.parts, List.of(), fault.filter(f -> f.from() >= 0));
    }
    return reading.understood().map(u -> understood(u, columns)).orElse(NOTHING);
  }

  /** A short question, and what is wrong with its answer. */
  static Told ofPrompt(State state, int columns) {
    Prompt prompt = state.pages().prompt();
    List<Part> asked = parts(prompt.text(), Role.WARNING, columns);
    Told answer = prompt.line().current().map(r -> ofReading(r, columns)).orElse(NOTHING);
    return answer.fault.isPresent() || !answer.parts.isEmpty()
        ? answer
        : new Told(asked, List.of(), Optional.empty());
  }

  /** What was made of a form, in lines. */
  static List<Part> of(Reading reading, int columns) {
    return ofReading(reading, columns).fitting(Integer.MAX_VALUE);
  }

  /** The question that is asked, or what has just happened. */
  static Told ofPage(State state, int columns) {
    return state
        .asked()
        .map(asked -> said(asked.question().text() + answered(asked), Role.WARNING, columns))
        .orElseGet(() -> said(state.notice().text(), role(state.notice().tone()), columns));
  }

  private static String answered(Asked asked) {
    String text = asked.question().text();
    String stop = text.endsWith("?") || text.endsWith(".") ? "" : ".";
    return stop
        + (asked.said().isEmpty()
            ? " Press y, then Enter."
            : asked.yes() ? " Enter: yes." : " Enter: leave it as it is.");
  }

  private static Role role(Tone tone) {
    return switch (tone) {
      case DONE -> Role.DONE;
      case ASKED -> Role.WARNING;
      case WRONG -> Role.WRONG;
    };
  }

  private static Told said(String text, Role role, int columns) {
    return text.isEmpty()
        ? NOTHING
        : new Told(parts(text, role, columns), List.of(), Optional.empty());
  }

  private static List<Part> parts(String text, Role role, int columns) {
    return Fit.wrap(text, columns).stream().map(line -> new Part(line, role)).toList();
  }

  private static Told understood(Understood understood, int columns) {
    List<Part> last = new ArrayList<>();
    understood.clash().ifPresent(clash -> last.addAll(parts(clash.told(), Role.WARNING, columns)));
    last.add(new Part(Fit.into(dose(understood), columns), Role.PLAIN));
    LeftOut.briefly(understood.leftOut())
        .ifPresent(said -> last.addAll(parts(said, Role.WARNING, columns)));
    return new Told(parts(understood.said(), Role.DONE, columns), last, Optional.empty());
  }

  private static String dose(Understood understood) {
    String before =
        understood.doseBefore() == 0
            ? ""
            : " (now " + Figures.rounded(understood.doseBefore()) + ")";
    String chance =
        understood.chanceAfter().isPresent()
            ? "; chance over: " + Figures.chance(understood.chanceAfter().getAsDouble())
            : "";
    String uncovered =
        understood
            .uncovered()
            .map(dust -> "; no limit covers " + (dust.alone() ? "this dust" : "all of it"))
            .orElse("");
    return "day outside "
        + Figures.about(understood.doseAfter())
        + " mg/m³"
        + before
        + chance
        + uncovered;
  }

  /** The rows that all of it takes. */
  int rows() {
    return parts.size() + last.size() + (fault.isPresent() ? 1 : 0);
  }

  /** As much as fits into some rows. */
  List<Part> fitting(int rows) {
    List<Part> lines = new ArrayList<>(parts);
    int most = Math.max(0, rows - last.size());
    if (lines.size() > most) {
      lines = new ArrayList<>(lines.subList(0, most));
      if (most > 0) {
        Part cut = lines.get(most - 1);
        lines.set(most - 1, new Part(cut.text() + " …", cut.role()));
      }
    }
    lines.addAll(last);
    return lines;
  }
}
