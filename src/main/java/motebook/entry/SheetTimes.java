package motebook.entry;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import motebook.model.Refusal;
import motebook.model.Text;

/** Times of day and durations as sheets write them; each text is read once. */
final class SheetTimes {
  private static final int DAY = 24 * 60;
  private static final Pattern SECONDS = Pattern.compile("(?<=\\d:\\d\\d):\\d\\d(?:[.,]\\d+)?");
  private static final Pattern NUMBER = Pattern.compile("\\d{1,5}(?:[.,]\\d{1,6})?");

  private final Optional<Integer> minutesPerUnit;
  private final Map<String, Integer> clocks = new HashMap<>();
  private final Map<String, Integer> lengths = new HashMap<>();

  /**
   * Reads times.
   *
   * @param minutesPerUnit of durations that are bare numbers, as their header says
   */
  SheetTimes(Optional<Integer> minutesPerUnit) {
    this.minutesPerUnit = minutesPerUnit;
  }

  /**
   * The minute of the day, 0 to 1440, that a cell holds.
   *
   * @throws Refusal if it holds none
   */
  int clock(String cell) {
    return clocks.computeIfAbsent(cell, SheetTimes::parseClock);
  }

  private static int parseClock(String cell) {
    String text = withoutSeconds(cell);
    if (text.equals("24:00")) {
      return DAY;
    }
    Line line = Line.of(text);
    return Clock.at(line, 0)
        .filter(found -> found.to() == line.size())
        .map(found -> minuteOf(found.time()))
        .orElseThrow(
            () ->
                new Refusal(
                    "\"%s\" is no time: write it as 9:15 or 2:30pm."
                        .formatted(Wording.shortened(text))));
  }

  private static int minuteOf(LocalTime time) {
    return time.getHour() * 60 + time.getMinute();
  }

  private static String withoutSeconds(String cell) {
    return SECONDS.matcher(Text.clean(cell)).replaceFirst("");
  }

  /**
   * The minutes that a cell holds.
   *
   * @throws Refusal if it holds none
   */
  int length(String cell) {
    return lengths.computeIfAbsent(cell, this::parseLength);
  }

  private int parseLength(String cell) {
    String text = withoutSeconds(cell);
    if (NUMBER.matcher(text).matches()) {
      int unit = minutesPerUnit.orElseThrow(() -> noUnit(text));
      return new BigDecimal(text.replace(',', '.'))
          .multiply(BigDecimal.valueOf(unit))
          .setScale(0, RoundingMode.HALF_UP)
          .intValueExact();
    }
    OptionalInt minutes = Durations.parse(text);
    return minutes.orElseThrow(
        () ->
            new Refusal(
                "\"%s\" is no duration: write it as 40m or 1h20."
                    .formatted(Wording.shortened(text))));
  }

  private static Refusal noUnit(String text) {
    return new Refusal(
        "\"%s\" has no unit: write %sm, or head the column minutes or hours."
            .formatted(text, text));
  }
}
