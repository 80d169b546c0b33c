package motebook.screen.state;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import motebook.screen.state.Notice.Tone;

/**
 * The words that name a page or an act. A line that says one of them and nothing else does that;
 * none of them is the exact name of an operation, so none stands in the way of work.
 */
public final class Acts {
  private static final List<String> ANSWERS =
      List.of("yes", "y", "yeah", "yep", "no", "n", "nope", "ok", "okay");

  /** All of them, in the order of the help. */
  public static final List<Act> ALL =
      List.of(
          act("the day", DayKeys::open, "day"),
          act("back to today", DayKeys::today, "today"),
          act("the day before today", s -> daysAgo(s, 1), "yesterday"),
          act("the week of this day", BaseKeys::week, "week"),
          act("masks and filters, and what is due", CareKeys::open, "masks", "due"),
          act(
              "the shop's own filters",
              s -> CareKeys.open(s, CareSheet.Tab.SHOP),
              "filters",
              "shop"),
          act("what work would bring, before it is done", PlanKeys::open, "plan", "plans"),
          act("what measurements taught", EvidenceKeys::open, "evidence", "samples"),
          act("cautions and remarks in full", DayKeys::notes, "notes"),
          act("the lines you say often", BaseKeys::favourites, "favourites", "favorites"),
          act("your own settings", BaseKeys::settings, "settings"),
          act("another day, by its date", s -> BaseKeys.ask(s, Prompt.Kind.GO_TO), "go to", "goto"),
          act("find earlier work", s -> BaseKeys.ask(s, Prompt.Kind.FIND), "find", "search"),
          act("the next person", Acts::person, "person"),
          act("the air of the day's next place", DayKeys::nextPlace, "room", "place"),
          act("log work field by field", DayKeys::form, "form"),
          act("change what is pointed at", Acts::edit, "edit", "change"),
          act("delete what is pointed at, after a question", Acts::delete, "delete", "remove"),
          act("log the same work again, ending now", DayKeys::again, "again", "same again"),
          act("keep the work that is pointed at as a favourite", Acts::keep, "keep"),
          act("set the day's cautions aside; bring them back", DayKeys::cautions, "cautions"),
          act("take back the last change, after a question", DayKeys::undo, "undo"),
          act("start a stopwatch", WatchKeys::start, "start", "stopwatch", "timer"),
          act("pause the stopwatch", s -> WatchKeys.pause(s, false), "pause"),
          act("go on with it", s -> WatchKeys.pause(s, true), "go on", "resume", "continue"),
          act("stop the stopwatch and log what it timed", WatchKeys::stop, "stop"),
          act("add a respirator", s -> CareKeys.add(s, Form.Kind.RESPIRATOR), "add mask"),
          act("add an element to a mask", s -> CareKeys.add(s, Form.Kind.ELEMENT), "add element"),
          act("write down a fit test", s -> CareKeys.add(s, Form.Kind.FIT_TEST), "fit test"),
          act("the words that a line understands", Acts::words, "words"),
          act("the keys and these words", Acts::help, "help", "keys"),
          act("leave; an unfinished line is kept", BaseKeys::leave, "quit", "exit"));

  private Acts() {}

  private static Act act(String help, Function<State, Step> act, String... words) {
    return new Act(List.of(words), help, act);
  }

  /** What a line asks for that says one of the words and nothing else. */
  public static Optional<Act> of(String line) {
    String text = line.strip().toLowerCase(Locale.ROOT).replaceAll(" +", " ");
    return ALL.stream().filter(act -> act.words().contains(text)).findFirst();
  }

  /** The words that begin as a line does. */
  public static List<String> begun(String line) {
    String text = line.toLowerCase(Locale.ROOT);
    return ALL.stream()
        .flatMap(act -> act.words().stream())
        .filter(word -> text.length() > 1 && word.startsWith(text))
        .toList();
  }

  /** What to say to a line that is no work but begins with such a word, or answers nothing. */
  public static Optional<String> answer(String line) {
    String text = line.strip().toLowerCase(Locale.ROOT);
    String first = text.split("[ ,.!?]+", 2)[0];
    if (ANSWERS.contains(first)) {
      return Optional.of(
          "Nothing is being asked. A question is answered by y and then Enter, while it stands.");
    }
    return of(first)
        .filter(act -> !text.equals(first))
        .map(
            act ->
                "Nothing was done. The word \""
                    + first
                    + "\" alone does this: "
                    + act.help()
                    + ". Work is said with how long it took: 40m drilling of oak.");
  }

  private static Step daysAgo(State state, int days) {
    return DayKeys.read(state.with(Focus.DAY), state.sheet().on(state.today().minusDays(days)));
  }

  private static Step person(State state) {
    return state.focus() == Focus.WEEK ? WeekKeys.nextPerson(state) : DayKeys.nextPerson(state);
  }

  private static Step edit(State state) {
    return state.focus() == Focus.DAY ? DayKeys.edit(state) : onTheDay(state, "edit");
  }

  private static Step keep(State state) {
    return state.focus() == Focus.DAY ? DayKeys.keep(state) : onTheDay(state, "keep");
  }

  /** What the page deletes by its key. */
  private static Step delete(State state) {
    return Bindings.page(state.focus()).stream()
        .filter(binding -> binding.keys().contains(Key.of(Key.Name.DELETE)))
        .findFirst()
        .map(binding -> binding.act().by(state, Key.of(Key.Name.DELETE)))
        .orElseGet(() -> onTheDay(state, "delete"));
  }

  private static Step onTheDay(State state, String word) {
    return DayKeys.open(state)
        .then(
            s ->
                Step.to(
                    s.saying(
                        "Point at a session with ↑ and ↓, then say " + word + ".", Tone.DONE)));
  }

  private static Step words(State state) {
    return BaseKeys.words(state, WordsSheet.OPENING.key());
  }

  private static Step help(State state) {
    return Step.to(BaseKeys.opened(state, Focus.HELP));
  }
}
