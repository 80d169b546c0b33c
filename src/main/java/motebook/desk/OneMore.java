package motebook.desk;

import java.util.ArrayList;
import java.util.List;
import motebook.model.Session;
import motebook.model.Surroundings.Indoors;
import motebook.model.Work;
import motebook.reference.Control;

/** Work done with one control more than it was. */
final class OneMore {
  private OneMore() {}

  /** Whether a control could be used at some work beside those that are. */
  static boolean usable(Control control, Work work, Shop shop) {
    return !work.controls().contains(control.key())
        && control.rowFor(work.operation()).isPresent()
        && (control.actsOn() == Control.ActsOn.SOURCE || actsThere(control, work, shop));
  }

  // Outdoors there is no room to clean, and a cleaner or fan whose flow nobody gave cannot count.
  private static boolean actsThere(Control control, Work work, Shop shop) {
    return shop.place(work.place()).surroundings() instanceof Indoors room
        && switch (control.key()) {
          case Control.AIR_CLEANER -> room.cleanerFlowM3PerMin().isPresent();
          case Control.WINDOW_FAN -> room.fanFlowM3PerMin().isPresent();
          default -> true;
        };
  }

  static Work with(Control control, Work work) {
    List<String> controls = new ArrayList<>(work.controls());
    controls.add(control.key());
    return work.with(controls);
  }

  static Session with(Control control, Session session) {
    return new Session(session.id(), with(control, session.work()));
  }
}
