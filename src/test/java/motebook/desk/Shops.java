package motebook.desk;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import motebook.journal.Settings;
import motebook.model.Amount;
import motebook.model.Place;
import motebook.model.Session;
import motebook.model.Surroundings;
import motebook.model.VapourLimits;
import motebook.model.Work;
import motebook.reference.Reference;

/** Sessions and shops for the tests of this package, built up word by word. */
final class Shops {
  static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  static final Surroundings.Indoors DEFAULT_SHOP = room(100, 1, 3, 6);

  private final List<Session> sessions = new ArrayList<>();
  private Surroundings.Indoors shop = DEFAULT_SHOP;
  private Settings settings = new Settings("me", "shop", "acgih", 1.5, 30);
  private CreditRule credits =
      session -> session.work().mask().map(MaskRule::unknown).orElse(Credit.NONE);

  static Surroundings.Indoors room(double volume, double closed, double open, double speed) {
    return new Surroundings.Indoors(
        volume, closed, open, speed, OptionalDouble.empty(), OptionalDouble.empty(), 0);
  }

  static Surroundings.Indoors withCleaner(Surroundings.Indoors room, double flow, int runOn) {
    return new Surroundings.Indoors(
        room.volumeM3(),
        room.airChangesPerHour(),
        room.openAirChangesPerHour(),
        room.airSpeedMPerMin(),
        OptionalDouble.of(flow),
        OptionalDouble.of(flow),
        runOn);
  }

  Shops in(Surroundings.Indoors room) {
    shop = room;
    return this;
  }

  Shops limits(String set) {
    settings = new Settings("me", "shop", set, 1.5, 30);
    return this;
  }

  Shops heldAgainst(VapourLimits figures) {
    settings = settings.withVapourLimits(figures);
    return this;
  }

  Shops crediting(CreditRule rule) {
    credits = rule;
    return this;
  }

  Shops did(
      String person, String place, String start, int minutes, String what, String... controls) {
    String[] words = what.split(" of ", 2);
    return did(
        new Work(
            person,
            place,
            DAY,
            LocalTime.parse(start),
            minutes,
            words[0],
            words.length > 1 ? Optional.of(words[1]) : Optional.empty(),
            List.of(controls),
            Optional.empty(),
            ""));
  }

  /** The same with finishes: {@code "200 oil-varnish"}, millilitres and key. */
  Shops used(String person, String place, String start, int minutes, String... amounts) {
    Work work = new Shops().did(person, place, start, minutes, "finishing").sessions.get(0).work();
    return did(work.using(Stream.of(amounts).map(Shops::amount).toList()));
  }

  private static Amount amount(String said) {
    String[] words = said.split(" ", 2);
    return new Amount(words[1], Double.parseDouble(words[0]));
  }

  Shops did(Work work) {
    sessions.add(new Session(sessions.size() + 1, work));
    return this;
  }

  Shops me(String start, int minutes, String what, String... controls) {
    return did("me", "shop", start, minutes, what, controls);
  }

  List<Session> sessions() {
    return List.copyOf(sessions);
  }

  DayReport report() {
    return Day.report(reckoning("me"));
  }

  DayReport report(Learned learned) {
    return Day.report(reckoning("me", learned));
  }

  DayReckoning reckoning(String person) {
    return reckoning(person, Learned.NOTHING);
  }

  DayReckoning reckoning(String person, Learned learned) {
    return new DayReckoning(DAY, person, sessions, shop().with(learned));
  }

  Shop shop() {
    List<Place> places =
        List.of(
            new Place(1, "shop", shop),
            new Place(2, "yard", new Surroundings.Outdoors(15)),
            new Place(3, "barn", room(400, 2, 6, 10)));
    return Shop.of(Reference.shipped(), settings, places, credits);
  }
}
