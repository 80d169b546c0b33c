package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import motebook.desk.PlanReport.Help;
import motebook.journal.Flawed;
import motebook.journal.Logged;
import motebook.model.Place;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Control;

/** The question "what would this work bring". */
public final class Plan {
  private final Work work;
  private final List<Session> others;
  private final List<Flawed> leftOut;
  private final Shop shop;
  private final Function<LocalDate, List<Session>> beside;

  private Plan(Work work, Logged others, Shop shop, Function<LocalDate, List<Session>> beside) {
    this.work = work;
    this.others = others.sessions();
    this.leftOut = others.leftOut();
    this.shop = shop;
    this.beside = beside;
  }

  /**
   * Reckons the day with the work in it.
   *
   * @param logged all that is on record of its day
   * @param shop the shop as it is on its day
   * @param beside everybody's sessions of the dates beside it, where the work may go on over
   *     midnight
   */
  public static PlanReport report(
      Work work, Logged logged, Shop shop, Function<LocalDate, List<Session>> beside) {
    List<Session> sessions = logged.sessions();
    List<Session> replaced = sessions.stream().filter(each -> clashes(each, work)).toList();
    List<Session> others = new ArrayList<>(sessions);
    others.removeAll(replaced);
    Plan plan = new Plan(work, new Logged(others, logged.leftOut()), shop, beside);
    DayReport day = plan.day(plan.sessions(work));
    LimitReach reach = LimitReach.of(work, 0, others, shop);
    return new PlanReport(work, replaced, plan.day(sessions), day, reach, plan.helps(day, reach));
  }

  private static boolean clashes(Session session, Work work) {
    return session.work().person().equals(work.person()) && session.work().overlaps(work);
  }

  private DayReport with(Work planned) {
    return Day.report(planned.date(), planned.person(), sessions(planned), shop);
  }

  private DayReport day(List<Session> sessions) {
    Logged logged = new Logged(sessions, leftOut);
    return Day.report(new DayReckoning(work.date(), work.person(), logged, shop), beside);
  }

  private List<Session> sessions(Work planned) {
    return Stream.concat(others.stream(), Stream.of(new Session(PlanReport.NUMBER, planned)))
        .toList();
  }

  // To take off a part of lead paint or arsenic is no help that a figure could tell.
  private List<Help> helps(DayReport day, LimitReach reach) {
    if (reach.state() == LimitReach.State.UNCOVERED) {
      return List.of();
    }
    Foremost foremost = Foremost.of(day);
    double worth = BestChange.WORTH_SAYING * foremost.figure(day);
    return Stream.concat(controls(), outdoors())
        .filter(help -> foremost.figure(help.day()) <= worth && !mustEnd(help.day()))
        .sorted(Comparator.comparingDouble(help -> foremost.figure(help.day())))
        .toList();
  }

  private static boolean mustEnd(DayReport day) {
    return day.vapour().filter(VapourReport::mustEnd).isPresent();
  }

  private Stream<Help> controls() {
    return shop.reference().controls().stream()
        .filter(control -> OneMore.usable(control, work, shop))
        .map(control -> help(OneMore.with(control, work), Optional.of(control)));
  }

  private Stream<Help> outdoors() {
    return shop.place(work.place()).outdoors()
        ? Stream.empty()
        : shop.places().values().stream()
            .filter(Place::outdoors)
            .sorted(Comparator.comparing(Place::name))
            .map(place -> help(carriedTo(place), Optional.empty()));
  }

  /** The work in a place outdoors, without what acts on the air of a room. */
  private Work carriedTo(Place place) {
    List<String> controls =
        work.controls().stream()
            .filter(key -> shop.reference().control(key).actsOn() == Control.ActsOn.SOURCE)
            .toList();
    return work.with(controls).in(place.name());
  }

  private Help help(Work other, Optional<Control> control) {
    return new Help(other, control, with(other));
  }
}
