package motebook.desk;

import java.util.ArrayList;
import java.util.List;
import motebook.desk.VapourReport.OfSession;
import motebook.reference.Control;

/** What a reader must know beside the figures of a day's vapour. */
final class FumeRemarks {
  private FumeRemarks() {}

  static List<String> of(List<OfSession> sessions) {
    List<String> remarks = new ArrayList<>();
    if (sessions.stream().anyMatch(s -> s.source().uses(Control.AIR_CLEANER))) {
      remarks.add("The air cleaner holds dust back; vapour goes through it and is not lessened.");
    }
    if (sessions.stream().anyMatch(s -> s.source().uses(Control.WINDOW_FAN))) {
      remarks.add(
          "A window fan draws the vapour through itself: only one with its motor out of the air"
              + " stream, rated for it.");
    }
    return remarks;
  }
}
