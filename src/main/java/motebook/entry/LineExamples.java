package motebook.entry;

import java.util.Arrays;
import java.util.List;

/** What of a line is no name: how its parts are joined, how long it took and when it began. */
public final class LineExamples {

  /** Durations that are written in different ways; each opens a line. */
  public static final List<Example> DURATIONS =
      List.of(
          new Example("40m", "40 minutes; also 40 min, 40 minutes"),
          new Example("2h", "two hours; also 2 hrs, 2 hours"),
          new Example("1h20", "an hour and 20 minutes; also 1h20m, 1 hr 20, 1:20"),
          new Example("1.5h", "an hour and a half; also 1,5h"),
          new Example("half an hour", "in words; also an hour and a half, a quarter of an hour"),
          new Example("twenty minutes", "numbers in words"),
          new Example("9:00-9:30", "from when to when; also 9am to 9:30"));

  /** When the work began, said behind the duration. */
  public static final List<Example> TIMES =
      List.of(
          new Example("at 9:15", "when it began; without it the work has just ended"),
          new Example("at 2:30pm", "on the 12-hour clock; also at 2 pm"),
          new Example("on yesterday at 9:15", "a day before; then the time must be said"),
          new Example("on monday at 9:15", "the last Monday, today included"),
          new Example("on 2026-03-02 at 9:15", "a date"));

  private LineExamples() {}

  /**
   * Words that a line may hold.
   *
   * @param said the words
   * @param means what they say
   */
  public record Example(String said, String means) {}

  /** How the parts are joined, such as {@code with} before a control. */
  public static List<Example> joints() {
    return Arrays.stream(Slot.values())
        .filter(slot -> !slot.joint().isEmpty())
        .map(slot -> new Example(slot.joint(), before(slot)))
        .toList();
  }

  private static String before(Slot slot) {
    String what = slot == Slot.FINISH ? "an amount of a finish" : slot.one();
    return "before " + what + (slot.repeats() ? "; \"and\" before a further one" : "");
  }
}
