package motebook.screen;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoField;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.desk.Allowed;
import motebook.desk.Care;
import motebook.desk.CareClock;
import motebook.desk.Clocks;
import motebook.desk.DueItem;
import motebook.desk.ElementStanding;
import motebook.desk.FilterStanding;
import motebook.journal.Book;
import motebook.model.Action;
import motebook.model.Element;
import motebook.model.Gear;
import motebook.model.Respirator;
import motebook.model.Retirement;
import motebook.model.ShopFilter;
import motebook.reference.Masks;
import motebook.reference.Reference;
import motebook.report.ClocksReport;
import motebook.report.DueText;
import motebook.report.GearReport;
import motebook.screen.state.CarePage;
import motebook.screen.state.CareRow;
import motebook.screen.state.CareRow.Note;
import motebook.screen.state.Message;
import motebook.screen.state.Task;

/** Reads how masks and filters stand, and settles what they ask for. */
final class Keeping {
  private static final String DAMAGED = "damaged, soiled or hard to breathe";

  private final Book book;
  private final Clock clock;
  private final Lines lines;
  private final GearReport words =
      new GearReport(new Allowed(Masks.shipped(), Reference.shipped()));

  Keeping(Book book, Clock clock, Lines lines) {
    this.book = book;
    this.clock = clock;
    this.lines = lines;
  }

  Message read() {
    Gear gear = book.gear();
    Care care = lines.ledger().care(LocalDate.now(clock));
    var due = care.due();
    List<CareRow> dueRows = due.items().stream().map(Keeping::row).toList();
    return new Message.CareRead(
        new CarePage(due, List.of(dueRows, masks(gear, care), filters(gear, care))));
  }

  private static CareRow row(DueItem item) {
    String state = item.state() == DueItem.State.DUE ? "due now" : item.state().key();
    return new CareRow(
        state,
        item.when() + "  " + DueText.named(item),
        OptionalDouble.empty(),
        item.pressing(),
        List.of(Note.of(item.why())),
        Optional.of(item.settle()),
        Optional.empty(),
        mask(item.settle()));
  }

  // The respirator that a form opened by hand is for.
  private static String mask(Action action) {
    if (action instanceof Action.RecordFitTest test) {
      return test.respirator();
    }
    return action instanceof Action.AddElement add ? add.respirator() : "";
  }

  private List<CareRow> masks(Gear gear, Care care) {
    List<CareRow> rows = new ArrayList<>();
    for (Respirator mask : gear.respirators()) {
      if (mask.retired().isEmpty()) {
        rows.add(mask(mask, care));
        gear.elementsOf(mask.name()).stream()
            .filter(element -> element.retired().isEmpty())
            .forEach(element -> rows.add(element(element, care)));
      }
    }
    return rows;
  }

  private CareRow mask(Respirator mask, Care care) {
    return new CareRow(
        mask.name(),
        words.told(mask),
        OptionalDouble.empty(),
        false,
        care.fits(mask).stream().map(Note::of).toList(),
        Optional.empty(),
        Optional.empty(),
        mask.name());
  }

  private CareRow element(Element element, Care care) {
    ElementStanding standing = care.standing(element);
    return new CareRow(
        "  " + element.name(),
        first(standing.first())
            .or(() -> ClocksReport.rule(standing.elementClass()))
            .orElseGet(() -> words.told(element)),
        share(standing.first()),
        over(standing.first()),
        more(
            words.told(element)
                + ClocksReport.rule(standing.elementClass()).map(rule -> ": " + rule).orElse(""),
            standing.clocks()),
        Optional.of(care.next(element)),
        Optional.of(element.name()),
        element.respirator());
  }

  private List<CareRow> filters(Gear gear, Care care) {
    return gear.filters().stream()
        .filter(filter -> filter.inUseOn(LocalDate.now(clock)))
        .map(filter -> filter(filter, care))
        .toList();
  }

  private CareRow filter(ShopFilter filter, Care care) {
    FilterStanding standing = care.standing(filter);
    return new CareRow(
        filter.name(),
        first(standing.first()).orElseGet(() -> words.told(filter)),
        share(standing.first()),
        over(standing.first()),
        more(words.told(filter), standing.clocks()),
        standing.first().map(clock -> care.next(filter, clock)),
        Optional.empty(),
        "");
  }

  private static Optional<String> first(Optional<CareClock> clock) {
    return clock.map(Keeping::told);
  }

  private static String told(CareClock clock) {
    String forecast = Clocks.forecast(clock);
    return Clocks.ended(clock) + (forecast.isEmpty() ? "" : ", " + forecast);
  }

  private static OptionalDouble share(Optional<CareClock> clock) {
    return clock.stream().mapToDouble(CareClock::share).findFirst();
  }

  private static boolean over(Optional<CareClock> clock) {
    return clock.flatMap(CareClock::ranOut).isPresent();
  }

  private static List<Note> more(String itself, List<CareClock> clocks) {
    List<Note> more = new ArrayList<>(List.of(Note.of(itself)));
    clocks.forEach(clock -> more.add(new Note(told(clock), share(Optional.of(clock)))));
    return more;
  }

  Message settle(Task.Settle settle) {
    new Doing(book, LocalDate.now(clock)).done(settle.action());
    return new Message.Settled("Recorded. Ctrl-Z undoes it.");
  }

  Message damaged(Task.Damaged damaged) {
    LocalDate today = LocalDate.now(clock);
    int now = LocalTime.now(clock).get(ChronoField.MINUTE_OF_DAY);
    book.retiring().retire(damaged.element(), new Retirement(today, now, DAMAGED));
    return new Message.Settled(
        "Retired "
            + damaged.element()
            + " ("
            + DAMAGED
            + "). Put a fresh one on before the mask is worn again.");
  }
}
