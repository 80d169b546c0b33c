package motebook.screen;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.journal.Book;
import motebook.journal.Settings;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Surroundings.Indoors;
import motebook.model.Units;
import motebook.reference.Limit;
import motebook.reference.Reference;
import motebook.report.Measures;
import motebook.screen.state.Field;
import motebook.screen.state.Form;
import motebook.screen.state.Line;
import motebook.screen.state.Message;

/** The owner's settings by fields; the few that matter at first are those of the first run. */
final class SettingsForm {
  private static final List<String> YES_NO = List.of("yes", "no");

  private final Book book;
  private final Clock clock;

  SettingsForm(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  Optional<Message> openFirst() {
    boolean untouched = !book.hasSessions() && book.history(1).isEmpty();
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
    return book.place(settings.place(), LocalDate.now(clock))
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
            limitSets()),
        field(
            "units",
            "units",
            "metric (m, m³/min) or us (ft, cfm); dust is always in mg/m³",
            word(units),
            List.of("metric", "us")),
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

  private static List<String> limitSets() {
    return Reference.shipped().limits().stream().map(Limit::set).distinct().toList();
  }

  private static String word(Units units) {
    return units == Units.US ? "us" : "metric";
  }

  private List<Field> further(Settings settings) {
    List<String> places = book.places(LocalDate.now(clock)).stream().map(Place::name).toList();
    return List.of(
        field(
            "place", "usual place", "where work is done unless you say", settings.place(), places),
        field(
            "gap",
            "longest gap",
            "minutes between two sessions that count as spent in the room",
            Integer.toString(settings.gapMinutes()),
            List.of()),
        field(
            "conversion",
            "inhalable/total",
            "inhalable per total dust, for limits written in total dust, 1 to 10",
            motebook.report.Figures.plain(settings.totalConversion()),
            List.of()));
  }

  private static Field field(
      String key, String label, String hint, String text, List<String> choices) {
    return new Field(key, label, hint, "", Line.of(text), choices);
  }

  Message save(Form form) {
    SettingsWish wish = new SettingsWish(form, book.settings());
    try {
      return new Message.Changed(wish.grant(book, LocalDate.now(clock)));
    } catch (SettingsWish.Unmet unmet) {
      return new Message.FieldRefused(unmet.key(), unmet.getMessage());
    } catch (Refusal refusal) {
      return new Message.FieldRefused(form.field().key(), refusal.getMessage());
    }
  }
}
