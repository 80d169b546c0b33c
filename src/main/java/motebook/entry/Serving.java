package motebook.entry;

import java.util.List;
import motebook.model.Refusal;
import motebook.model.Work;
import motebook.reference.Control;

/** Which controls there are to choose from for a job. */
public final class Serving {
  private Serving() {}

  /**
   * The controls that serve an operation in a place, as they are said; every control where the two
   * are not known yet.
   *
   * @param operation as it was typed
   * @param place as it was typed; empty for the usual one
   */
  public static List<String> controls(String operation, String place, Scene scene) {
    try {
      Work work = Timed.read(operation + (place.isEmpty() ? "" : " in " + place), scene);
      return scene
          .placeNamed(work.place(), work.date())
          .map(where -> new ControlRules(scene.reference(), work.operation(), where).usable())
          .orElseGet(() -> all(scene));
    } catch (Refusal notYetKnown) {
      return all(scene);
    }
  }

  private static List<String> all(Scene scene) {
    return scene.reference().controls().stream().map(Control::spoken).toList();
  }
}
