package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import motebook.model.MaskUse;
import motebook.model.Session;
import motebook.model.Text;
import motebook.model.Work;
import motebook.reference.Finishes;
import motebook.reference.Masks;
import motebook.reference.Reference;
import motebook.science.FilterLoading;
import motebook.science.LognormalSum.Term;

/** Who wore which respirator in what dust, up to a day; read from the book as far back as asked. */
final class WearLog {
  private final History history;
  private final Masks masks;
  private final LocalDate last;
  private List<Session> sessions = List.of();
  private final Map<String, List<Session>> worn = new HashMap<>();
  private final IdentityHashMap<Session, Wear> wears = new IdentityHashMap<>();
  private final Map<LocalDate, DayWork> works = new HashMap<>();
  private LocalDate readFrom;

  /** A log that ends with a day. */
  WearLog(History history, Masks masks, LocalDate last) {
    this.history = history;
    this.masks = masks;
    this.last = last;
    this.readFrom = last.plusDays(1);
  }

  LocalDate last() {
    return last;
  }

  /** Everyone's sessions from a day to the last one, by day and start. */
  List<Session> sessionsFrom(LocalDate first) {
    read(first);
    return sessions.subList(firstOn(first), sessions.size());
  }

  private void read(LocalDate first) {
    if (first.isBefore(readFrom)) {
      // in a list of its own: who still goes through the old one is not disturbed
      List<Session> all = new ArrayList<>(history.between(first, readFrom.minusDays(1)));
      all.addAll(sessions);
      sessions = List.copyOf(all);
      readFrom = first;
      worn.clear();
      sessions.forEach(this::putAway);
    }
  }

  private void putAway(Session session) {
    session
        .work()
        .mask()
        .ifPresent(
            mask ->
                worn.computeIfAbsent(Text.folded(mask.respirator()), any -> new ArrayList<>())
                    .add(session));
  }

  private int firstOn(LocalDate day) {
    return firstOn(day, sessions);
  }

  /** The place of the first session that is not before a day. */
  private static int firstOn(LocalDate day, List<Session> sorted) {
    int low = 0;
    int high = sorted.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (sorted.get(middle).work().date().isBefore(day)) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The sessions with a respirator on the face from a day to the last one. */
  List<Wear> of(String respirator, LocalDate first) {
    return of(respirator, first, last.plusDays(1));
  }

  /** The sessions with a respirator on the face from a day to the one before another. */
  List<Wear> of(String respirator, LocalDate first, LocalDate end) {
    read(first);
    List<Session> all = worn.getOrDefault(Text.folded(respirator), List.of());
    int from = firstOn(first, all);
    return all.subList(from, Math.max(from, firstOn(end, all))).stream()
        .map(session -> wears.computeIfAbsent(session, this::wear))
        .toList();
  }

  static boolean wore(Session session, String respirator) {
    return session
        .work()
        .mask()
        .filter(mask -> Text.folded(mask.respirator()).equals(Text.folded(respirator)))
        .isPresent();
  }

  /**
   * Whether oil may have been in the air of a session: an oil finish was used in its place at the
   * same time. Whether it was sprayed the book does not know.
   */
  boolean oil(Session session) {
    Work work = session.work();
    return on(work.date()).stream()
        .map(Session::work)
        .filter(other -> !other.amounts().isEmpty() && other.place().equals(work.place()))
        .filter(other -> together(other, work))
        .anyMatch(this::oily);
  }

  private static boolean together(Work one, Work other) {
    return one.startMinute() < other.endMinute() && other.startMinute() < one.endMinute();
  }

  private boolean oily(Work work) {
    Finishes finishes = shop(work.date()).finishes().get();
    return work.amounts().stream().anyMatch(used -> finishes.finish(used.finish()).oil());
  }

  Shop shop(LocalDate day) {
    return history.shop(day);
  }

  private Wear wear(Session session) {
    Work work = session.work();
    double share = work.mask().map(MaskUse::wornPercent).orElseThrow() / 100;
    double litresPerMin =
        masks.litresPerMin(Reference.shipped().operation(work.operation()).workRate());
    return new Wear(
        session, work.minutes() * share, litresPerMin, () -> load(session, litresPerMin, share));
  }

  private Wear.Load load(Session session, double litresPerMin, double share) {
    Work work = session.work();
    DayReckoning day =
        new DayReckoning(work.person(), works.computeIfAbsent(work.date(), this::workOf));
    // 1 mg·min/m³ outside, breathed at that rate for the share of the time that it was on
    double mgPerMgMin = FilterLoading.mg(1, litresPerMin, share / 60);
    List<Term> mg = new ArrayList<>();
    Portion typical = Portion.NONE;
    for (Map.Entry<Source, Portion> part : day.during(day.sourceOf(session)).entrySet()) {
      Portion load = part.getValue().times(mgPerMgMin);
      mg.add(part.getKey().term(load.inhalable()));
      typical = typical.plus(load);
    }
    return new Wear.Load(mg, typical);
  }

  private DayWork workOf(LocalDate day) {
    return DayWork.of(day, on(day), history.shop(day));
  }

  private List<Session> on(LocalDate day) {
    List<Session> fromThen = sessionsFrom(day);
    return fromThen.subList(0, firstOn(day.plusDays(1), fromThen));
  }
}
