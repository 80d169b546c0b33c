package motebook.desk;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.journal.Settings;
import motebook.model.Amount;
import motebook.model.Element;
import motebook.model.FitRecord;
import motebook.model.Gear;
import motebook.model.MaskUse;
import motebook.model.OwnFigure;
import motebook.model.OwnFigures;
import motebook.model.Place;
import motebook.model.Respirator;
import motebook.model.Retirement;
import motebook.model.Scheme;
import motebook.model.Session;
import motebook.model.ShopFilter;
import motebook.model.Upkeep;
import motebook.model.Work;
import motebook.reference.Reference;
import motebook.reference.Solvent;
import motebook.reference.Solvents;
import motebook.report.CreditText;
import motebook.report.Invocation;

/** Masks, filters and a past of many days for the tests of this package, built up word by word. */
final class Workshop implements History {
  static final LocalDate DAY = Shops.DAY;

  final List<Respirator> respirators = new ArrayList<>();
  final List<Element> elements = new ArrayList<>();
  final List<ShopFilter> filters = new ArrayList<>();
  final List<Upkeep> upkeep = new ArrayList<>();
  final List<FitRecord> fit = new ArrayList<>();
  private final List<Session> sessions = new ArrayList<>();
  private final Map<Session, Map<Solvent, VapourAir.Ppm>> vapours = new HashMap<>();
  private String limits = "acgih";
  private int cleanerRunOn;
  private OwnFigures figures = OwnFigures.SHIPPED;

  Workshop limits(String set) {
    limits = set;
    return this;
  }

  Workshop chose(OwnFigure figure, double value) {
    figures = figures.with(figure, value);
    return this;
  }

  Workshop cleanerRunsOn(int minutes) {
    cleanerRunOn = minutes;
    return this;
  }

  Workshop mask(String name, Scheme scheme, String kind, String facepiece) {
    respirators.add(
        new Respirator(
            respirators.size() + 1,
            name,
            scheme,
            kind,
            facepiece,
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty()));
    return this;
  }

  /** A half mask by OSHA's rules. */
  Workshop halfMask() {
    return mask("half mask", Scheme.OSHA, "air-purifying", "half mask");
  }

  /** An element that was opened and put on on a day. */
  Workshop element(String mask, String elementClass, LocalDate on) {
    return element(mask, elementClass, on, false, OptionalDouble.empty(), OptionalDouble.empty());
  }

  Workshop element(
      String mask,
      String elementClass,
      LocalDate on,
      boolean pair,
      OptionalDouble hours,
      OptionalDouble mg) {
    elements.add(
        new Element(
            elements.size() + 1,
            elementClass + " " + elements.size(),
            mask,
            elementClass,
            pair,
            on,
            Optional.of(on),
            Optional.empty(),
            hours,
            mg,
            OptionalDouble.empty(),
            Optional.empty()));
    return this;
  }

  Workshop add(Element element) {
    elements.add(element);
    return this;
  }

  Workshop change(int index, LocalDate on) {
    Element old = elements.get(index);
    elements.set(index, old.retired(new Retirement(on, Retirement.CHANGED)));
    Element fresh = old.successor(on);
    elements.add(
        new Element(
            elements.size() + 1,
            fresh.name(),
            fresh.respirator(),
            fresh.elementClass(),
            fresh.pair(),
            on,
            fresh.opened(),
            Optional.empty(),
            fresh.limitHours(),
            fresh.limitMg(),
            fresh.carbonGrams(),
            Optional.empty()));
    return this;
  }

  Workshop fit(FitRecord record) {
    fit.add(record);
    return this;
  }

  /** A fit test by taste that was passed. */
  Workshop tasted(String mask, String person, LocalDate on) {
    return fit(
        new FitRecord.FitTest(
            fit.size() + 1, mask, person, on, new FitRecord.Qualitative("saccharin", true)));
  }

  /** A measured fit test. */
  Workshop measured(String mask, String person, LocalDate on, Double... factors) {
    return fit(
        new FitRecord.FitTest(
            fit.size() + 1, mask, person, on, new FitRecord.Quantitative(List.of(factors))));
  }

  Workshop filter(
      String name, String on, LocalDate from, OptionalDouble clean, OptionalDouble change) {
    filters.add(
        new ShopFilter(
            filters.size() + 1,
            name,
            on,
            "shop",
            from,
            clean,
            change,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty()));
    return this;
  }

  Workshop gauged(String name, String on, LocalDate from, double clean, double change) {
    filters.add(
        new ShopFilter(
            filters.size() + 1,
            name,
            on,
            "shop",
            from,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.of(clean),
            OptionalDouble.of(change),
            Optional.empty()));
    return this;
  }

  Workshop did(Upkeep.What what, String filter, LocalDate on) {
    upkeep.add(
        new Upkeep(upkeep.size() + 1, filter, on, Optional.empty(), what, OptionalDouble.empty()));
    return this;
  }

  Workshop read(String filter, LocalDate on, double reading) {
    upkeep.add(
        new Upkeep(
            upkeep.size() + 1,
            filter,
            on,
            Optional.empty(),
            Upkeep.What.GAUGE,
            OptionalDouble.of(reading)));
    return this;
  }

  /** A session with a mask that was checked and worn all the time. */
  Session wore(
      LocalDate day, String start, int minutes, String mask, String what, String... controls) {
    return session(
        "me", day, start, minutes, what, Optional.of(new MaskUse(mask, true, 100)), controls);
  }

  /** A session in which an amount was used, such as {@code 100 lacquer}; worn where a mask is. */
  Session used(LocalDate day, String start, int minutes, String mask, String amount) {
    String[] words = amount.split(" ", 2);
    Work work =
        new Work(
            mask.isEmpty() ? "Ana" : "me",
            "shop",
            day,
            LocalTime.parse(start),
            minutes,
            "finishing",
            Optional.empty(),
            List.of(),
            mask.isEmpty() ? Optional.empty() : Optional.of(new MaskUse(mask, true, 100)),
            List.of(new Amount(words[1], Double.parseDouble(words[0]))),
            "");
    Session session = new Session(sessions.size() + 1, work);
    sessions.add(session);
    return session;
  }

  Session session(
      String person,
      LocalDate day,
      String start,
      int minutes,
      String what,
      Optional<MaskUse> mask,
      String... controls) {
    String[] words = what.split(" of ", 2);
    Work work =
        new Work(
            person,
            "shop",
            day,
            LocalTime.parse(start),
            minutes,
            words[0],
            words.length > 1 ? Optional.of(words[1]) : Optional.empty(),
            List.of(controls),
            mask,
            "");
    Session session = new Session(sessions.size() + 1, work);
    sessions.add(session);
    return session;
  }

  /** Vapour that was there during a session, ppm. */
  Workshop vapour(Session session, String solvent, double typical, double high) {
    vapours
        .computeIfAbsent(session, any -> new HashMap<>())
        .put(Solvents.shipped().find(solvent).orElseThrow(), new VapourAir.Ppm(typical, high));
    return this;
  }

  Gear gear() {
    return new Gear(respirators, elements, filters, upkeep, fit);
  }

  Care care(LocalDate today) {
    return new Care(
        gear(),
        this,
        session -> vapours.getOrDefault(session, Map.of()),
        CareRules.of(figures),
        today);
  }

  Credit credit(Session session) {
    return care(session.work().date()).credits().credit(session);
  }

  /** Why a credit is refused, as a person reads it. */
  static String refused(Credit credit) {
    return CreditText.done(Invocation.USUAL).refused(credit).orElseThrow();
  }

  ElementStanding standing(int index, LocalDate today) {
    return care(today).standing(elements.get(index));
  }

  @Override
  public List<Session> between(LocalDate first, LocalDate last) {
    return sessions.stream()
        .filter(s -> !s.work().date().isBefore(first) && !s.work().date().isAfter(last))
        .sorted(
            java.util.Comparator.comparing((Session s) -> s.work().date())
                .thenComparing(s -> s.work().start()))
        .toList();
  }

  @Override
  public Shop shop(LocalDate day) {
    return Shop.of(
        Reference.shipped(),
        new Settings("me", "shop", limits, 1.5, 30),
        List.of(new Place(1, "shop", Shops.withCleaner(Shops.DEFAULT_SHOP, 10, cleanerRunOn))),
        CreditRule.OUTSIDE_ONLY);
  }
}
