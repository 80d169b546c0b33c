package motebook.entry;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import motebook.model.Amount;
import motebook.model.MaskUse;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Work;
import motebook.reference.Operation;

/** Makes a session of a reading: fills in what was not said and checks what was. */
final class Assembly {
  private static final int DAY = 24 * 60;
  private static final String YARD = "yard";

  private final Line line;
  private final Stretch stretch;
  private final Reading reading;
  private final Scene scene;

  Assembly(Line line, Stretch stretch, Reading reading, Scene scene) {
    this.line = line;
    this.stretch = stretch;
    this.reading = reading;
    this.scene = scene;
  }

  /**
   * The session, which keeps the rules.
   *
   * @throws Refusal where something is missing, said twice or against a rule
   */
  Work work() {
    LocalDateTime begin = begin();
    int beforeMidnight = DAY - begin.getHour() * 60 - begin.getMinute();
    if (stretch.minutes() > beforeMidnight) {
      throw pastMidnight(begin, beforeMidnight);
    }
    return kept(begin, stretch.minutes());
  }

  private Refusal pastMidnight(LocalDateTime begin, int beforeMidnight) {
    Work first = kept(begin, beforeMidnight);
    Work second = kept(begin.plusMinutes(beforeMidnight), stretch.minutes() - beforeMidnight);
    return line.refusal(
        "The work runs past midnight, and a session belongs to one date. Log it as two: \"%s\" and"
                .formatted(Saying.line(first, scene))
            + " \"%s\".".formatted(Saying.line(second, scene)),
        stretch.from(),
        stretch.to());
  }

  private LocalDateTime begin() {
    Optional<LocalDate> day = reading.said(Said.Day.class).map(Said.Day::date);
    Optional<Said.Start> start = reading.said(Said.Start.class);
    if (start.isPresent() && stretch.start().isPresent()) {
      throw pointing(
          "The start is said twice: \"%s\" and \"%s\". Say it once."
              .formatted(line.typed(stretch.from(), stretch.to()), typed(Slot.START)),
          Slot.START);
    }
    return stretch
        .start()
        .or(() -> start.map(Said.Start::time))
        .map(time -> day.orElseGet(this::assumedDay).atTime(time))
        .map(this::yesterdayIfPastMidnight)
        .orElseGet(() -> byNow(day));
  }

  private LocalDate assumedDay() {
    return scene.today();
  }

  /** Work that ran past midnight and is over began yesterday, unless a date was said. */
  private LocalDateTime yesterdayIfPastMidnight(LocalDateTime begin) {
    boolean past = begin.getHour() * 60 + begin.getMinute() + stretch.minutes() > DAY;
    return past && !scene.ahead() && !reading.has(Slot.DAY) ? begin.minusDays(1) : begin;
  }

  /** Without a time, work has just ended; what is planned begins. */
  private LocalDateTime byNow(Optional<LocalDate> day) {
    if (day.isPresent()) {
      throw pointing(
          "For a date the start must be said too: add it such as at 9:15, or begin the line with"
              + " 9:00-9:30.",
          Slot.DAY);
    }
    LocalDateTime now = scene.now().truncatedTo(ChronoUnit.MINUTES);
    return scene.ahead() ? now : now.minusMinutes(stretch.minutes());
  }

  private Work kept(LocalDateTime begin, int minutes) {
    Work work =
        new Work(
            reading.keys(Slot.PERSON).stream().findFirst().orElse(scene.person()),
            place(begin.toLocalDate()),
            begin.toLocalDate(),
            begin.toLocalTime(),
            minutes,
            Broad.operation(reading).orElseThrow(),
            reading.keys(Slot.MATERIAL).stream().findFirst(),
            controls(),
            mask(),
            Amounts.part(amounts(), (double) minutes / stretch.minutes()),
            line.note());
    WorkRules.breach(work, scene)
        .ifPresent(
            breach -> {
              throw pointing(breach);
            });
    return work;
  }

  private String place(LocalDate day) {
    List<String> named = reading.keys(Slot.PLACE);
    boolean outdoors = reading.said(Said.Outdoors.class).isPresent();
    return outdoors || (named.isEmpty() && outdoorWork())
        ? outdoors(scene.places().apply(day).stream().filter(Place::outdoors).toList())
        : named.stream().findFirst().orElse(scene.place());
  }

  private boolean outdoorWork() {
    String operation = Broad.operation(reading).orElseThrow();
    return scene.reference().operation(operation).where() == Operation.Where.OUTDOORS;
  }

  private String outdoors(List<Place> places) {
    Optional<Place> yard =
        places.stream().filter(place -> place.name().equalsIgnoreCase(YARD)).findFirst();
    if (yard.isEmpty() && places.size() != 1) {
      throw pointing(
          places.isEmpty()
              ? "The book has no place outdoors. Add one, or say in which place: in NAME."
              : "Several places are outdoors. Say which: in %s."
                  .formatted(Wording.list(places.stream().map(Place::name).toList(), "or in")),
          Slot.PLACE);
    }
    return yard.orElseGet(() -> places.get(0)).name();
  }

  private List<String> controls() {
    Set<String> said = new LinkedHashSet<>();
    for (Phrase phrase : reading.phrases(Slot.CONTROL).toList()) {
      if (!said.add(key(phrase.said()))) {
        String message = "The control \"%s\" is said twice. Say it once.";
        throw pointing(message.formatted(typed(phrase)), phrase);
      }
    }
    return List.copyOf(said);
  }

  /** Of controls of one name the one that serves the operation; the first where none does. */
  private String meant(Said.Shared shared) {
    String operation = Broad.operation(reading).orElseThrow();
    List<String> keys = shared.controls().stream().map(Vocabulary.Entry::key).toList();
    return keys.stream()
        .filter(key -> scene.reference().control(key).rowFor(operation).isPresent())
        .findFirst()
        .orElse(keys.get(0));
  }

  private List<Amount> amounts() {
    List<Amount> amounts = new ArrayList<>();
    Set<String> said = new HashSet<>();
    for (Phrase phrase : reading.phrases(Slot.FINISH).toList()) {
      if (phrase.said() instanceof Said.Using using) {
        if (!said.add(using.finish())) {
          String message = "The finish \"%s\" is said twice. Add the amounts and say it once.";
          throw pointing(message.formatted(typed(phrase)), phrase);
        }
        amounts.add(amount(using, phrase));
      }
    }
    return amounts;
  }

  private Amount amount(Said.Using using, Phrase phrase) {
    try {
      return new Amount(using.finish(), using.millilitres());
    } catch (Refusal outOfRange) {
      throw pointing(outOfRange.getMessage(), phrase);
    }
  }

  private Optional<MaskUse> mask() {
    try {
      return reading
          .said(Said.Mask.class)
          .map(said -> new MaskUse(said.respirator(), said.checked(), said.percent()));
    } catch (Refusal wrongShare) {
      throw pointing(wrongShare.getMessage(), Slot.MASK);
    }
  }

  private Refusal pointing(WorkRules.Breach breach) {
    return reading
        .phrases(breach.slot())
        .filter(phrase -> !breach.slot().repeats() || key(phrase.said()).equals(breach.key()))
        .findFirst()
        .map(phrase -> line.refusal(breach.refusal(), phrase.nameFrom(), phrase.to()))
        .orElseGet(() -> pointingAtStretch(breach));
  }

  private String key(Said said) {
    if (said instanceof Said.Using using) {
      return using.finish();
    }
    if (said instanceof Said.Shared shared) {
      return meant(shared);
    }
    return said instanceof Said.Name name ? name.key() : "";
  }

  /** A range is where the start was said if it was said at all. */
  private Refusal pointingAtStretch(WorkRules.Breach breach) {
    boolean inRange = breach.slot() == Slot.START && stretch.start().isPresent();
    return inRange
        ? line.refusal(breach.refusal(), stretch.from(), stretch.to())
        : breach.refusal();
  }

  private Refusal pointing(String message, Slot slot) {
    return reading
        .phrases(slot)
        .findFirst()
        .map(phrase -> pointing(message, phrase))
        .orElseGet(() -> new Refusal(message));
  }

  private Refusal pointing(String message, Phrase phrase) {
    return line.refusal(message, phrase.nameFrom(), phrase.to());
  }

  private String typed(Slot slot) {
    return reading.phrases(slot).findFirst().map(this::typed).orElse("");
  }

  private String typed(Phrase phrase) {
    return line.typed(phrase.nameFrom(), phrase.to());
  }
}
