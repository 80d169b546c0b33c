package motebook.desk;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import motebook.desk.VapourReport.OfSession;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Solvent;

/** The vapour of past sessions as the model has it; each person's day is reckoned once. */
final class PastVapour implements VapourAir {
  private final History history;
  private final Supplier<Set<LocalDate>> finishedOn;
  private Optional<Set<LocalDate>> days = Optional.empty();
  private final Map<LocalDate, List<Session>> sessions = new HashMap<>();
  private final Map<LocalDate, DayWork> works = new HashMap<>();
  private final Map<Whose, Optional<Past>> pasts = new HashMap<>();
  private final Map<Session, Optional<Past>> planned = new HashMap<>();

  private record Whose(LocalDate date, String person) {}

  /** What is known of a person's day; what a session asks is found when it is asked for. */
  private record Past(Fumes fumes, List<OfSession> sessions, Map<Session, VapourDemand> demands) {
    Past(Fumes fumes) {
      this(fumes, fumes.sessions(), new HashMap<>());
    }
  }

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
    return past(session)
        .flatMap(
            day ->
                day.sessions.stream()
                    .filter(of -> of.source().session().equals(session))
                    .findFirst())
        .map(PastVapour::ppm)
        .orElse(Map.of());
  }

  @Override
  public VapourDemand demand(Session session) {
    return past(session)
        .map(day -> day.demands.computeIfAbsent(session, day.fumes::demand))
        .orElse(VapourDemand.NOTHING);
  }

  private Optional<Past> past(Session session) {
    LocalDate date = session.work().date();
    if (days.isEmpty()) {
      days = Optional.of(finishedOn.get());
    }
    if (!days.get().contains(date) && session.work().amounts().isEmpty()) {
      return Optional.empty();
    }
    return sessions(date).contains(session)
        ? pasts.computeIfAbsent(new Whose(date, session.work().person()), this::past)
        : planned.computeIfAbsent(session, this::ahead);
  }

  private Optional<Past> past(Whose day) {
    DayWork work =
        works.computeIfAbsent(
            day.date, date -> DayWork.of(date, sessions(date), history.shop(date)));
    return Fumes.of(new DayReckoning(day.person, work)).map(Past::new);
  }

  /** The day with work in it that is not in the book, in place of what it overlaps. */
  private Optional<Past> ahead(Session session) {
    Work work = session.work();
    LocalDate date = work.date();
    Stream<Session> others =
        sessions(date).stream()
            .filter(
                other ->
                    !(other.work().person().equals(work.person()) && other.work().overlaps(work)));
    List<Session> day = Stream.concat(others, Stream.of(session)).toList();
    return Fumes.of(new DayReckoning(date, work.person(), day, history.shop(date))).map(Past::new);
  }

  private List<Session> sessions(LocalDate date) {
    return sessions.computeIfAbsent(date, day -> history.between(day, day));
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
