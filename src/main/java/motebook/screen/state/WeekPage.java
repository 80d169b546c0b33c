package motebook.screen.state;

import java.time.LocalDate;
import motebook.desk.WeekReview;
import motebook.desk.Weeks;

/**
 * Everything that is shown of one week of one person.
 *
 * @param weeks the week and those before it
 * @param review what there is to say of the week
 */
public record WeekPage(Weeks weeks, WeekReview review) {
  /** How many weeks are shown. */
  public static final int COUNT = 12;

  /** The first day of the week. */
  public LocalDate monday() {
    return weeks.monday();
  }

  /** Whose. */
  public String person() {
    return weeks.last().person();
  }
}
