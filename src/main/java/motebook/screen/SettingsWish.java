package motebook.screen;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import motebook.entry.Quantities;
import motebook.journal.Book;
import motebook.journal.Settings;
import motebook.model.Names;
import motebook.model.Refusal;
import motebook.model.Surroundings;
import motebook.model.Surroundings.Indoors;
import motebook.model.Text;
import motebook.model.Units;
import motebook.reference.Limit;
import motebook.reference.Reference;
import motebook.report.Measures;
import motebook.screen.state.Form;

/** What a form of settings asks for: all of it is checked before anything is written. */
final class SettingsWish {
  private static final List<String> EQUIPMENT = List.of("collector", "tool-vacuum");

  private final Form form;
  private final Settings before;

  SettingsWish(Form form, Settings before) {
    this.form = form;
    this.before = before;
  }

  /** A field that cannot be granted. */
  static final class Unmet extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final String key;

    Unmet(String key, String sentence) {
      super(sentence);
      this.key = key;
    }

    String key() {
      return key;
    }
  }

  /**
   * Writes what has changed; says what that was.
   *
   * @throws Unmet where a field cannot be understood; nothing is written then
   */
  String grant(Book book, LocalDate today) {
    String name = checked("person", text -> Names.check("person", text));
    Settings after = settings();
    Optional<Indoors> was = indoors(book, after.place(), today);
    Optional<Indoors> is = was.map(this::shop);
    List<String> done = new ArrayList<>();
    if (!name.equals(before.person())) {
      book.renamePerson(before.person(), name);
      done.add("name");
    }
    if (!after.equals(before)) {
      book.change(after.withPerson(name), "Changed the settings");
      done.add("settings");
    }
    if (!is.equals(was)) {
      book.changePlace(
          after.place(), any -> is.get(), Optional.empty(), "Changed the place " + after.place());
      done.add(after.place());
    }
    return done.isEmpty()
        ? "Nothing was changed."
        : "Changed: " + String.join(", ", done) + ". u takes it back.";
  }

  private static Optional<Indoors> indoors(Book book, String place, LocalDate today) {
    Optional<Surroundings> found = book.place(place, today).map(p -> p.surroundings());
    return found.filter(Indoors.class::isInstance).map(Indoors.class::cast);
  }

  private Settings settings() {
    List<String> equipment = new ArrayList<>(before.equipment());
    equipment.removeAll(EQUIPMENT);
    EQUIPMENT.stream().filter(key -> checked(key, SettingsWish::yes)).forEach(equipment::add);
    Settings first =
        before
            .withLimitSet(checked("limits", SettingsWish::limitSet))
            .withUnits(units())
            .withEquipment(equipment);
    return form.kind() == Form.Kind.FIRST ? first : further(first);
  }

  private Settings further(Settings settings) {
    return settings
        .withPlace(form.text("place"))
        .withGapMinutes(checked("gap", SettingsWish::minutes))
        .withTotalConversion(
            checked("conversion", text -> Quantities.plain("The conversion", text)));
  }

  private <T> T checked(String key, Function<String, T> reader) {
    try {
      return reader.apply(form.text(key));
    } catch (Refusal refusal) {
      throw new Unmet(key, refusal.getMessage());
    }
  }

  private static boolean yes(String text) {
    return switch (Text.folded(text)) {
      case "yes", "y" -> true;
      case "no", "n", "" -> false;
      default -> throw new Refusal("Say yes or no.");
    };
  }

  private static String limitSet(String text) {
    return Reference.shipped().limits().stream()
        .map(Limit::set)
        .filter(set -> Text.folded(set).equals(Text.folded(text)))
        .findFirst()
        .orElseThrow(
            () ->
                new Refusal(
                    "There are no limits named \""
                        + Text.clean(text)
                        + "\"; → goes through those that there are."));
  }

  private Units units() {
    return checked(
        "units",
        text ->
            switch (Text.folded(text)) {
              case "metric" -> Units.METRIC;
              case "us" -> Units.US;
              default -> throw new Refusal("Units are metric or us.");
            });
  }

  private static int minutes(String text) {
    if (!text.matches("\\d{1,4}")) {
      throw new Refusal("The longest gap is a whole number of minutes, such as 30.");
    }
    return Integer.parseInt(text);
  }

  private Indoors shop(Indoors was) {
    return new Indoors(
        checked("size", text -> volume(text, was)),
        was.airChangesPerHour(),
        was.openAirChangesPerHour(),
        was.airSpeedMPerMin(),
        checked("cleaner", text -> cleaner(text, was)),
        was.fanFlowM3PerMin(),
        was.cleanerRunOnMinutes());
  }

  // A figure that was left as it was shown is not rounded to what was shown.
  private double volume(String text, Indoors was) {
    boolean same = text.isEmpty() || text.equals(Measures.volume(was.volumeM3(), before.units()));
    return same ? was.volumeM3() : Quantities.roomM3("The shop size", text, units());
  }

  private OptionalDouble cleaner(String text, Indoors was) {
    OptionalDouble flow = was.cleanerFlowM3PerMin();
    if (text.isEmpty() || Text.folded(text).equals("none") || Text.folded(text).equals("no")) {
      return OptionalDouble.empty();
    }
    boolean same =
        flow.isPresent() && text.equals(Measures.flow(flow.getAsDouble(), before.units()));
    return same
        ? flow
        : OptionalDouble.of(Quantities.flowM3PerMin("The air cleaner", text, units()));
  }
}
