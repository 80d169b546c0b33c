package motebook.screen.state;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import motebook.desk.Uncovered;
import motebook.journal.Flawed;
import motebook.model.Work;

/**
 * What was made of a line.
 *
 * @param text the line it was made of
 * @param understood what it says, if it says something that could be logged
 * @param fault what is wrong with it, if something is
 * @param completions whole lines that it could become, best first
 */
public record Reading(
    String text, Optional<Understood> understood, Optional<Fault> fault, List<String> completions) {
  public Reading {
    completions = List.copyOf(completions);
  }

  /** The same with a line before all others that it could become. */
  public Reading offering(String first) {
    List<String> all = Stream.concat(Stream.of(first), completions.stream()).distinct().toList();
    return new Reading(text, understood, fault, all);
  }

  /**
   * A line that could be logged.
   *
   * @param work what it says
   * @param said the same, said back in full
   * @param doseBefore headline TWA of the person's day outside the mask as it stands, mg/m³
   * @param doseAfter the same with this work in it, mg/m³
   * @param chanceAfter chance that the day is over its limit with this work in it, 0 to 1
   * @param uncovered the dust of that day that no limit covers; empty where there is none
   * @param leftOut the sessions of that day that cannot be gone by, and are in neither dose
   * @param clash what it overlaps, if it overlaps something
   */
  public record Understood(
      Work work,
      String said,
      double doseBefore,
      double doseAfter,
      OptionalDouble chanceAfter,
      Optional<Uncovered> uncovered,
      List<Flawed> leftOut,
      Optional<Clash> clash) {}

  /**
   * Other work of the same person that shares a minute with a line.
   *
   * @param told what work, and when there would be time, in words
   * @param free the nearest start at which there is time; empty where the day has none
   */
  public record Clash(String told, Optional<LocalTime> free) {}
}
