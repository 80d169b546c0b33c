package motebook.screen.state;

import java.util.List;
import java.util.Optional;

/** Every key that works, by what it acts on; the row of keys and the help are drawn from it. */
public final class Bindings {
  private Bindings() {}

  /** The keys that work, in the order in which they are shown. */
  public static List<Binding> of(Focus focus) {
    return switch (focus) {
      case DAY -> DayKeys.ALL;
      case WEEK -> WeekKeys.ALL;
      case LINE -> LineKeys.ALL;
      case FORM -> FormKeys.ALL;
      case PROMPT -> PromptKeys.ALL;
      case QUESTION -> QuestionKeys.ALL;
      case FAVOURITES -> FavouriteKeys.ALL;
      case FOUND -> FoundKeys.ALL;
      case CARE -> CareKeys.ALL;
      case EVIDENCE -> EvidenceKeys.ALL;
      case PLAN -> PlanKeys.ALL;
      case NOTES -> PageKeys.NOTES;
      case HELP -> PageKeys.HELP;
      case WORDS -> PageKeys.WORDS;
    };
  }

  /** What a key does, if it does something. */
  public static Optional<Binding> of(Focus focus, Key key) {
    return of(focus).stream().filter(binding -> binding.keys().contains(key)).findFirst();
  }
}
