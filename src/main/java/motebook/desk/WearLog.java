package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
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
  private final List<Session> sessions = new ArrayList<>();
  private final Map<Session, Wear> wears = new HashMap<>();
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
    if (first.isBefore(readFrom)) {
      sessions.addAll(0, history.between(first, readFrom.minusDays(1)));
      readFrom = first;
    }
    return sessions.stream().filter(s -> !s.work().date().isBefore(first)).toList();
  }

  /** The sessions with a respirator on the face from a day to the last one. */
  List<Wear> of(String respirator, LocalDate first) {
    return sessionsFrom(first).stream()
        .filter(session -> wore(session, respirator))
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
        new DayReckoning(work.date(), work.person(), on(work.date()), history.shop(work.date()));
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

  private List<Session> on(LocalDate day) {
    return sessionsFrom(day).stream().filter(s -> s.work().date().equals(day)).toList();
  }
}
