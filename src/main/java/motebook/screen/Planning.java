package motebook.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import motebook.desk.Plans;
import motebook.entry.Scene;
import motebook.entry.SpokenLine;
import motebook.model.Refusal;
import motebook.model.Work;
import motebook.screen.state.Fault;
import motebook.screen.state.Message;
import motebook.screen.state.PlanSheet.PlanLine;
import motebook.screen.state.Reading;
import motebook.screen.state.Task;

/** Reads and reckons what may come to be done; writes nothing. */
final class Planning {
  private final Lines lines;

  Planning(Lines lines) {
    this.lines = lines;
  }

  Message read(Task.ReadPlan plan) {
    Scene scene = lines.scene(plan.person()).planned();
    List<String> completions =
        SpokenLine.complete(plan.text(), scene, lines.habits(lines.scene(plan.person())));
    return new Message.PromptRead(
        new Reading(plan.text(), Optional.empty(), fault(plan.text(), scene), completions));
  }

  private Optional<Fault> fault(String text, Scene scene) {
    return text.isBlank() ? Optional.empty() : SpokenLine.refusal(text, scene).map(lines::fault);
  }

  /** A line that cannot be read is told where it is typed: it is the last. */
  Message plan(Task.Plan plan) {
    Scene scene = lines.scene(plan.person()).planned();
    List<Work> works = new ArrayList<>();
    for (String line : plan.lines()) {
      try {
        works.add(SpokenLine.read(line, scene));
      } catch (Refusal refusal) {
        return new Message.PromptRefused(line, lines.fault(refusal));
      }
    }
    return new Message.Planned(
        IntStream.range(0, works.size())
            .mapToObj(i -> line(plan.lines().get(i), works.get(i), scene))
            .toList(),
        new Plans(works.stream().map(lines.ledger()::plan).toList()));
  }

  private static PlanLine line(String typed, Work work, Scene scene) {
    return new PlanLine(typed, SpokenLine.say(work, scene), SpokenLine.again(work, scene));
  }
}
