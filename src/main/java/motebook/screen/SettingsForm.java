package motebook.screen;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import motebook.desk.Choice;
import motebook.desk.Choices;
import motebook.desk.LimitFigures;
import motebook.entry.Scene;
import motebook.entry.SpokenLine;
import motebook.journal.Book;
import motebook.journal.Settings;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Surroundings.Indoors;
import motebook.model.Units;
import motebook.report.Measures;
import motebook.screen.state.Acts;
import motebook.screen.state.Field;
import motebook.screen.state.Form;
import motebook.screen.state.Line;
import motebook.screen.state.Message;
import motebook.screen.state.Task;

/** The owner's settings by fields; the few that matter at first are those of the first run. */
final class SettingsForm {
  private static final List<String> YES_NO = List.of("yes", "no");
  private static final String PLACE = "place";

  /** What follows the questions of the first run: the choice, and its name on the form. */
  static final Map<String, String> FURTHER = new LinkedHashMap<>();

  static {
    FURTHER.put(PLACE, "usual place");
    FURTHER.put("longest-gap", "longest gap");
    FURTHER.put("total-conversion", "inhalable/total");
    FURTHER.put("vapour-limits", "vapour limits");
    FURTHER.put("cartridge-safety-fraction", "cartridge share");
    FURTHER.put("cartridge-humidity", "humidity");
    FURTHER.put("opened-gas-months", "opened gas");
    FURTHER.put("fit-months-osha", "fit test, OSHA");
    FURTHER.put("fit-months-uk", "fit test, UK");
    FURTHER.put("training-months", "training");
    FURTHER.put("examination-months", "exhaust, UK");
    FURTHER.put("soon-working-days", "soon, by work");
    FURTHER.put("soon-days", "soon, by date");
  }

  private final Book book;
  private final Clock clock;
  private final Lines lines;

  SettingsForm(Book book, Clock clock, Lines lines) {
    this.book = book;
    this.clock = clock;
    this.lines = lines;
  }

  Optional<Message> openFirst() {
    boolean untouched = !book.hasSessions() && book.changes().history(1).isEmpty();
    return untouched ? Optional.of(open(Form.Kind.FIRST)) : Optional.empty();
  }

  Message open(Form.Kind kind) {
    Settings settings = book.settings();
    List<Field> fields = new ArrayList<>(first(settings, shop(settings)));
    if (kind == Form.Kind.SETTINGS) {
      fields.addAll(further(settings));
    }
    return new Message.FormOpened(Form.of(kind, 0, fields));
  }

  private Optional<Indoors> shop(Settings settings) {
    return book.premises()
        .place(settings.place(), LocalDate.now(clock))
        .map(Place::surroundings)
        .filter(Indoors.class::isInstance)
        .map(Indoors.class::cast);
  }

  private List<Field> first(Settings settings, Optional<Indoors> shop) {
    Units units = settings.units();
    return List.of(
        field("person", "your name", "as you want to be called here", settings.person(), List.of()),
        field(
                "limits",
                "limits",
                "the limits that apply to you, or that you choose",
                settings.limitSet(),
                Choices.of("limits").offered())
            .telling(LimitFigures.on(LocalDate.now(clock))),
        field(
            "units",
            "units",
            "metric (m, m³/min) or us (ft, cfm); dust is always in mg/m³",
            Choices.of("units").told(settings),
            Choices.of("units").offered()),
        field(
            "size",
            "shop size",
            "length x width x height, 6.5 x 5 x 2.6, or the volume; 20 x 16 x 8 ft works too",
            shop.map(room -> Measures.volume(room.volumeM3(), units)).orElse(""),
            List.of()),
        owned(settings, "collector", "collector", "a dust collector on the machines?"),
        owned(settings, "tool-vacuum", "tool vacuum", "a vacuum on the hand tools?"),
        field(
            "cleaner",
            "air cleaner",
            "what it moves: 11 m3/min, 400 cfm; or none",
            shop.filter(room -> room.cleanerFlowM3PerMin().isPresent())
                .map(room -> Measures.flow(room.cleanerFlowM3PerMin().getAsDouble(), units))
                .orElse("none"),
            List.of("none")));
  }

  private static Field owned(Settings settings, String control, String label, String hint) {
    String has = settings.equipment().contains(control) ? "yes" : "no";
    return field(control, label, hint, has, YES_NO);
  }

  private List<Field> further(Settings settings) {
    List<Field> fields = new ArrayList<>();
    for (Map.Entry<String, String> label : FURTHER.entrySet()) {
      Choice choice = Choices.of(label.getKey());
      String bounds = choice.offered().isEmpty() ? ": " + choice.allowed() : "";
      fields.add(
          field(
              choice.key(),
              label.getValue(),
              choice.what() + bounds,
              choice.told(settings),
              choice.key().equals(PLACE) ? places() : choice.offered()));
    }
    return fields;
  }

  private List<String> places() {
    return book.premises().places(LocalDate.now(clock)).stream().map(Place::name).toList();
  }

  private static Field field(
      String key, String label, String hint, String text, List<String> choices) {
    return new Field(key, label, hint, "", Line.of(text), choices);
  }

  /** What is wrong with one answer; empty where it can be granted. */
  Optional<Message> check(Task.CheckField task) {
    SettingsWish wish = wish(task.form());
    return wish.unmet(book, LocalDate.now(clock))
        .filter(unmet -> unmet.key().equals(task.field()))
        .map(unmet -> new Message.FieldRefused(unmet.key(), unmet.getMessage()));
  }

  private SettingsWish wish(Form form) {
    return new SettingsWish(form, book.settings(), this::isWork);
  }

  // What was done may be said with how long it took or, as to a stopwatch, without.
  private boolean isWork(String text) {
    Scene scene = lines.scene("");
    return Acts.of(text).isPresent()
        || Acts.answer(text).isPresent()
        || SpokenLine.refusal(text, scene).isEmpty()
        || SpokenLine.refusal("1m " + text, scene).isEmpty();
  }

  Message save(Form form) {
    SettingsWish wish = wish(form);
    try {
      return new Message.Changed(wish.grant(book, LocalDate.now(clock)));
    } catch (SettingsWish.Unmet unmet) {
      return new Message.FieldRefused(unmet.key(), unmet.getMessage());
    } catch (Refusal refusal) {
      return new Message.FieldRefused(form.field().key(), refusal.getMessage());
    }
  }
}
