package motebook.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import motebook.model.Session;

/**
 * How a day stands to limits.
 *
 * @param judged the limit that it is judged by; empty where none applies, or none covers the dust
 * @param advisory the advisory limit beside a legal one
 * @param shown limits of the chosen set that are shown and judge nothing
 * @param uncovered the dust that no limit covers; empty where there is none
 * @param longDay the day against a limit lowered for its length; empty up to 8 h
 * @param nights work over midnight, on the day on which it begins and on the one on which it ends
 */
public record DayLimits(
    Optional<HeldLimit> judged,
    Optional<HeldLimit> advisory,
    List<HeldLimit> shown,
    Optional<Uncovered> uncovered,
    Optional<LongDay> longDay,
    List<NightShift> nights) {

  public DayLimits {
    shown = List.copyOf(shown);
    nights = List.copyOf(nights);
  }

  /** All that stands beside the limit that judges. */
  public List<HeldLimit> beside() {
    return Stream.concat(advisory.stream(), shown.stream()).toList();
  }

  /** Holds a day against its limits. */
  static DayLimits of(
      DayReckoning day, Optional<HeldLimit> judged, Function<LocalDate, List<Session>> sessions) {
    return new DayLimits(
        judged,
        HeldLimit.advisory(day),
        HeldLimit.shown(day),
        Uncovered.of(day),
        LongDay.of(day, judged),
        NightShift.of(day, sessions));
  }
}
