package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import motebook.entry.MinuteMeans;
import motebook.entry.MinuteMeans.Stretch;
import motebook.model.Session;

/** Cuts what an instrument read into the stretches that become samples. */
public final class SampledStretches {
  /** Shorter stretches say too little of a session to be a sample, min. */
  public static final int SHORTEST = 5;

  private SampledStretches() {}

  /**
   * One stretch for each session that the readings overlap, cut at gaps.
   *
   * @param sessions the person's own of a day
   */
  public static List<Stretch> bySession(
      MinuteMeans means, Function<LocalDate, List<Session>> sessions) {
    List<Stretch> cut = new ArrayList<>();
    for (Stretch stretch : means.stretches()) {
      for (Session session : sessions.apply(stretch.date())) {
        cut.add(stretch.within(session.work().startMinute(), session.work().endMinute()));
      }
    }
    return cut.stream().filter(stretch -> stretch.minutes() >= SHORTEST).toList();
  }

  /** The readings as they are, cut at gaps alone. */
  public static List<Stretch> whole(MinuteMeans means) {
    return means.stretches().stream().filter(s -> s.minutes() >= SHORTEST).toList();
  }
}
