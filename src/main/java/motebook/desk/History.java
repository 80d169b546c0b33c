package motebook.desk;

import java.time.LocalDate;
import java.util.List;
import motebook.model.Session;

/** What the book tells of the past. */
public interface History {
  /** Everyone's sessions of some days, both included, by day and start. */
  List<Session> between(LocalDate first, LocalDate last);

  /** The shop as it was on a day; what its masks are credited is not asked for. */
  Shop shop(LocalDate day);
}
