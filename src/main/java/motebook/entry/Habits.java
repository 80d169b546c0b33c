package motebook.entry;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import motebook.model.Refusal;
import motebook.model.Work;

/**
 * What somebody usually does, from their own sessions: it completes a line before the names do.
 *
 * <p>A habit weighs the more the more often and the later it was done, and three times on the
 * weekday of today. A seal check is never taken over: it belongs to one donning.
 */
public final class Habits {
  /** Habits that are offered at once. */
  private static final int MOST = 5;

  /** Lines that can be called back. */
  private static final int RECENT = 50;

  private static final double HALF_LIFE_DAYS = 30;
  private static final double SAME_WEEKDAY = 3;

  private final List<String> lines;
  private final List<String> bodies;
  private final List<String> recent;

  private Habits(List<String> lines, List<String> bodies, List<String> recent) {
    this.lines = lines;
    this.bodies = bodies;
    this.recent = recent;
  }

  /** Nobody's. */
  public static final Habits NONE = new Habits(List.of(), List.of(), List.of());

  /**
   * The habits in some sessions of one person.
   *
   * @param past the sessions, newest first
   * @param scene the scene in which they will be said again
   */
  public static Habits of(List<Work> past, Scene scene) {
    Map<String, Double> lines = new LinkedHashMap<>();
    Map<String, Double> bodies = new LinkedHashMap<>();
    Set<String> recent = new LinkedHashSet<>();
    for (Work work : past) {
      double weight = weight(work.date(), scene.today());
      lines.merge(SpokenLine.again(work, scene), weight, Double::sum);
      bodies.merge(SpokenLine.body(work, scene), weight, Double::sum);
      recent.add(SpokenLine.again(work, scene));
    }
    return new Habits(ranked(lines), ranked(bodies), recent.stream().limit(RECENT).toList());
  }

  private static double weight(LocalDate date, LocalDate today) {
    double age = Math.max(0, ChronoUnit.DAYS.between(date, today));
    double weekday = date.getDayOfWeek() == today.getDayOfWeek() ? SAME_WEEKDAY : 1;
    return weekday * Math.pow(0.5, age / HALF_LIFE_DAYS);
  }

  // The sort is stable: of equal weights the newer one comes first.
  private static List<String> ranked(Map<String, Double> weights) {
    return weights.entrySet().stream()
        .sorted(Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder()))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** The lines said last, newest first, each once. */
  public List<String> recent() {
    return recent;
  }

  /**
   * What a line could become by habit, best first: whole lines for an empty one, the work for one
   * that holds a duration, and its end for one that has begun to say the work.
   *
   * @return lines that each begin with what was typed, whatever its case
   */
  public List<String> complete(String typed) {
    if (typed.isBlank()) {
      return lines.stream().limit(MOST).toList();
    }
    return begun(typed).map(begun -> ends(typed, begun)).orElse(List.of());
  }

  /** What is said of the work behind the duration; empty where there is no duration yet. */
  private static Optional<String> begun(String typed) {
    try {
      Line line = Line.of(typed);
      int words = Stretch.of(line).to();
      if (words < line.size()) {
        return Optional.of(typed.substring(line.originalFrom(words)));
      }
      return line.endsInGap() ? Optional.of("") : Optional.empty();
    } catch (Refusal noDurationYet) {
      return Optional.empty();
    }
  }

  private List<String> ends(String typed, String begun) {
    String wanted = begun.toLowerCase(Locale.ROOT);
    List<String> found = new ArrayList<>();
    for (String body : bodies) {
      boolean longer = body.length() > begun.length();
      if (longer && body.toLowerCase(Locale.ROOT).startsWith(wanted)) {
        found.add(typed + body.substring(begun.length()));
      }
    }
    return found.stream().limit(MOST).toList();
  }
}
