package motebook.desk;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import motebook.desk.VapourReport.OfSession;
import motebook.model.Session;
import motebook.reference.Solvent;

/** The vapour of past sessions as the model has it; each person's day is reckoned once. */
final class PastVapour implements VapourAir {
  private final History history;
  private final Supplier<Set<LocalDate>> finishedOn;
  private Optional<Set<LocalDate>> days = Optional.empty();
  private final Map<String, Optional<VapourReport>> reports = new HashMap<>();

  /**
   * The vapour of a past.
   *
   * @param history its sessions, and the shop with no mask counted
   * @param finishedOn the days on which an amount of a finish was used; asked for once
   */
  PastVapour(History history, Supplier<Set<LocalDate>> finishedOn) {
    this.history = history;
    this.finishedOn = finishedOn;
  }

  @Override
  public Map<Solvent, Ppm> during(Session session) {
    LocalDate date = session.work().date();
    if (days.isEmpty()) {
      days = Optional.of(finishedOn.get());
    }
    return days.get().contains(date)
        ? report(date, session.work().person())
            .flatMap(vapour -> vapour.during(session))
            .map(PastVapour::ppm)
            .orElse(Map.of())
        : Map.of();
  }

  private Optional<VapourReport> report(LocalDate date, String person) {
    return reports.computeIfAbsent(
        date + " " + person,
        any ->
            Fumes.of(
                new DayReckoning(date, person, history.between(date, date), history.shop(date))));
  }

  // What is not estimated was there all the same.
  private static Map<Solvent, Ppm> ppm(OfSession session) {
    Map<Solvent, Ppm> ppm = new LinkedHashMap<>();
    session.unmeasured().forEach(solvent -> ppm.put(solvent, new Ppm(0, 0)));
    session
        .meanPpm()
        .forEach((solvent, mean) -> ppm.put(solvent, new Ppm(mean, mean * session.upper())));
    return ppm;
  }
}
