package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import motebook.model.Figures;
import motebook.reference.Limit;
import motebook.reference.Reference;
import motebook.reference.WoodClass;

/** What a set of limits comes to, in a few words, so that nobody chooses by its name alone. */
public final class LimitFigures {
  private LimitFigures() {}

  /** Every set with its figures in force on a day, in the order of the table. */
  public static Map<String, String> on(LocalDate day) {
    Map<String, String> all = new LinkedHashMap<>();
    Reference.shipped().limitSets().forEach(set -> all.put(set, of(set, day)));
    return all;
  }

  /**
   * The figures of a set in force on a day: {@code 1 mg/m³ inhalable, most woods; 0.5 red cedar}.
   */
  public static String of(String set, LocalDate day) {
    List<Limit> limits = limits(set).stream().filter(limit -> limit.validOn(day)).toList();
    return limits.isEmpty() ? "none in force on " + day : told(limits, false);
  }

  /** All figures of a set, those that end or begin on a day with that day. */
  public static String of(String set) {
    return told(limits(set), true);
  }

  private static List<Limit> limits(String set) {
    return Reference.shipped().limits().stream().filter(limit -> limit.set().equals(set)).toList();
  }

  private static String told(List<Limit> limits, boolean dated) {
    List<String> parts = new ArrayList<>();
    Optional<Limit> before = Optional.empty();
    for (Limit limit : limits) {
      boolean again = before.map(Limit::fraction).equals(Optional.of(limit.fraction()));
      String unit = again ? " " : " mg/m³ " + word(limit.fraction()) + ", ";
      parts.add(
          Figures.plain(limit.mgPerM3())
              + unit
              + (limit.judges() ? wood(limit) : "shown only")
              + (dated ? dates(limit, limits) : ""));
      before = Optional.of(limit);
    }
    return String.join("; ", parts);
  }

  // A first day is told only where an earlier edition stands beside it.
  private static String dates(Limit limit, List<Limit> all) {
    String until = limit.validTo().map(day -> " until " + day).orElse("");
    boolean later = all.stream().anyMatch(other -> other.validTo().isPresent());
    return until.isEmpty() && later
        ? limit.validFrom().map(day -> " from " + day).orElse("")
        : until;
  }

  private static String wood(Limit limit) {
    Set<WoodClass> left = EnumSet.allOf(WoodClass.class);
    left.removeAll(limit.woodClasses());
    if (left.isEmpty()) {
      return "all wood";
    }
    // The class that is left out has a figure of its own in the same set.
    return left.size() == 1
        ? "most woods"
        : words(limit.woodClasses().stream().filter(c -> c != WoodClass.UNKNOWN).toList());
  }

  private static String words(Collection<WoodClass> classes) {
    return classes.stream().sorted().map(LimitFigures::word).collect(Collectors.joining(" and "));
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
