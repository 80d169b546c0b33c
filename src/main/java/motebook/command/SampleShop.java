package motebook.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import motebook.desk.Week;

/**
 * The invented shop of sample-log/: twelve weeks of lines, moved by whole weeks so that the last
 * one is the week before today's.
 */
final class SampleShop {
  private static final int WEEKS = 12;
  private static final LocalDate FIRST_MONDAY = LocalDate.of(2026, 1, 5);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|[^ ]+");
  private static final Pattern DATE = Pattern.compile("\\b2026-\\d\\d-\\d\\d\\b");

  private final long daysLater;

  SampleShop(LocalDate today) {
    LocalDate lastMonday = Week.monday(today).minusWeeks(1);
    daysLater = ChronoUnit.DAYS.between(FIRST_MONDAY.plusWeeks(WEEKS - 1), lastMonday);
  }

  /** The last working day of the sample. */
  LocalDate lastWorkingDay() {
    return FIRST_MONDAY.plusWeeks(WEEKS - 1).plusDays(4 + daysLater);
  }

  /** The commands that set the scene, each split into its words; quotes hold words together. */
  List<List<String>> commands() {
    return Stream.of("shop.txt", "gear.txt")
        .flatMap(name -> lines(name).stream())
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .map(SampleShop::words)
        .toList();
  }

  private static List<String> words(String line) {
    return WORD.matcher(line)
        .results()
        .map(word -> word.group(1) == null ? word.group() : word.group(1))
        .toList();
  }

  /** The lines of all weeks. */
  List<String> spokenLines() {
    List<String> lines = new ArrayList<>();
    IntStream.rangeClosed(1, WEEKS)
        .mapToObj(week -> lines("week-%02d.txt".formatted(week)))
        .forEach(lines::addAll);
    return lines;
  }

  private List<String> lines(String name) {
    try (InputStream in = SampleShop.class.getResourceAsStream("/sample-log/" + name)) {
      if (in == null) {
        throw new IllegalStateException("the sample " + name + " is not in the program");
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return Arrays.stream(text.split("\n", -1)).map(this::moved).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String moved(String line) {
    return DATE.matcher(line)
        .replaceAll(date -> LocalDate.parse(date.group()).plusDays(daysLater).toString());
  }
}
