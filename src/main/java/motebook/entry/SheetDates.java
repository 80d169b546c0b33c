package motebook.entry;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.model.Refusal;
import motebook.model.Text;

/**
 * Dates as sheets write them: {@code 2026-03-02}, {@code 2.3.2026}, {@code 2 Mar 2026}, and with
 * slashes in the order that was said. Words such as yesterday mean another day tomorrow, so they
 * are none.
 */
final class SheetDates {
  private static final Pattern NUMBERS =
      Pattern.compile("(\\d{1,4})([-./])(\\d{1,2})\\2(\\d{1,4})\\.?");
  private static final DateTimeFormatter WRITTEN =
      new DateTimeFormatterBuilder()
          .parseCaseInsensitive()
          .appendPattern("[d MMM u][d MMMM u][MMM d u][MMMM d u]")
          .toFormatter(Locale.ENGLISH)
          .withResolverStyle(ResolverStyle.STRICT);
  private static final int CENTURY = 2000;
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2199;

  private final Optional<SheetDateOrder> order;
  private final Map<String, LocalDate> known = new HashMap<>();

  SheetDates(Optional<SheetDateOrder> order) {
    this.order = order;
  }

  /**
   * The date that a cell holds.
   *
   * @throws Refusal if it is none, or may be two
   */
  LocalDate read(String cell) {
    return known.computeIfAbsent(cell, this::believable);
  }

  private LocalDate believable(String cell) {
    LocalDate date = parse(cell);
    if (date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR) {
      throw new Refusal(
          "%s is not believable: dates lie between %d and %d."
              .formatted(date, FIRST_YEAR, LAST_YEAR));
    }
    return date;
  }

  private LocalDate parse(String cell) {
    String text = Text.clean(cell);
    Matcher numbers = NUMBERS.matcher(text);
    try {
      return numbers.matches() ? numbered(numbers, text) : written(text);
    } catch (DateTimeException none) {
      throw new Refusal(
          "\"%s\" is no date: write it as 2026-03-02.".formatted(Wording.shortened(text)));
    }
  }

  private LocalDate numbered(Matcher numbers, String text) {
    int first = Integer.parseInt(numbers.group(1));
    int second = Integer.parseInt(numbers.group(3));
    int third = Integer.parseInt(numbers.group(4));
    if (numbers.group(1).length() > 2) {
      return LocalDate.of(first, second, third);
    }
    boolean dayFirst =
        numbers.group(2).equals(".")
            || order.orElseThrow(() -> twoWays(text)) == SheetDateOrder.DAY_FIRST;
    return dayFirst
        ? LocalDate.of(year(third), second, first)
        : LocalDate.of(year(third), first, second);
  }

  private static int year(int said) {
    return said < 100 ? CENTURY + said : said;
  }

  private static Refusal twoWays(String text) {
    return new Refusal(
        "\"%s\" is one day to one person and another to the next: write it as 2026-03-02, or say --dates day-first or --dates month-first."
            .formatted(text));
  }

  private static LocalDate written(String text) {
    String spaced = Text.clean(text.replaceAll("[-.,]", " ")).replaceAll(" (\\d\\d)$", " 20$1");
    return LocalDate.parse(spaced, WRITTEN);
  }
}
