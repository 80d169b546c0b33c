package motebook.screen;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import motebook.desk.Choice;
import motebook.desk.Choices;
import motebook.desk.Unlikely;
import motebook.entry.Quantities;
import motebook.journal.Book;
import motebook.journal.Settings;
import motebook.model.Names;
import motebook.model.Refusal;
import motebook.model.Surroundings;
import motebook.model.Surroundings.Indoors;
import motebook.model.Text;
import motebook.model.Units;
import motebook.report.Measures;
import motebook.report.UnlikelyText;
import motebook.screen.state.Field;
import motebook.screen.state.Form;

/** What a form of settings asks for: all of it is checked before anything is written. */
final class SettingsWish {
  private static final List<String> EQUIPMENT = List.of("collector", "tool-vacuum");

  private final Form form;
  private final Settings before;
  private final Predicate<String> work;

  /**
   * What a form asks for.
   *
   * @param work whether a text reads like work that was meant for the line
   */
  SettingsWish(Form form, Settings before, Predicate<String> work) {
    this.form = form;
    this.before = before;
    this.work = work;
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
   * Writes what has changed, as one change of the book; says what that was.
   *
   * @throws Unmet where a field cannot be understood; nothing is written then
   */
  String grant(Book book, LocalDate today) {
    String name = name();
    Settings after = settings();
    Optional<Indoors> is = room(book, after, today);
    String done = String.join(", ", changed(name, after, is.isPresent()));
    if (done.isEmpty()) {
      return "Nothing was changed.";
    }
    book.change(after, name, is.map(room -> any -> room), "Changed the settings: " + done);
    return "Changed: " + done + ". Ctrl-Z takes it back.";
  }

  /** The first field that cannot be granted; nothing is written. */
  Optional<Unmet> unmet(Book book, LocalDate today) {
    try {
      name();
      room(book, settings(), today);
      return Optional.empty();
    } catch (Unmet unmet) {
      return Optional.of(unmet);
    }
  }

  private String name() {
    return checked(
        "person",
        text -> {
          String name = Names.check("person", text);
          if (!name.equals(before.person()) && work.test(name)) {
            throw new Refusal(
                "\"" + name + "\" reads like work, not like a name. Esc leads to the line.");
          }
          return name;
        });
  }

  private Optional<Indoors> room(Book book, Settings after, LocalDate today) {
    Optional<Indoors> was = indoors(book, after.place(), today);
    Optional<Indoors> is = was.map(this::shop).filter(room -> !was.get().equals(room));
    is.ifPresent(room -> refuseUnlikely(was.get(), room));
    return is;
  }

  private void refuseUnlikely(Indoors was, Indoors is) {
    List<Unlikely> unlikely = new ArrayList<>(Unlikely.of(is));
    unlikely.removeAll(Unlikely.of(was));
    unlikely.stream()
        .findFirst()
        .ifPresent(
            one -> {
              throw new Unmet(
                  one.kind() == Unlikely.Kind.CLEANER ? "cleaner" : "size",
                  UnlikelyText.of(one, units())
                      + " If that is right, type place change with --yes in a shell.");
            });
  }

  private List<String> changed(String name, Settings after, boolean room) {
    List<String> changed = new ArrayList<>();
    if (!name.equals(before.person())) {
      changed.add("name");
    }
    Choices.ALL.stream()
        .filter(choice -> !choice.told(before).equals(choice.told(after)))
        .forEach(choice -> changed.add(label(choice)));
    if (room) {
      changed.add(after.place());
    }
    return changed;
  }

  private String label(Choice choice) {
    return form.fields().stream()
        .filter(field -> field.key().equals(choice.key()))
        .map(Field::label)
        .findFirst()
        .orElse(choice.key());
  }

  private static Optional<Indoors> indoors(Book book, String place, LocalDate today) {
    Optional<Surroundings> found = book.premises().place(place, today).map(p -> p.surroundings());
    return found.filter(Indoors.class::isInstance).map(Indoors.class::cast);
  }

  private Settings settings() {
    List<String> equipment = new ArrayList<>(before.equipment());
    equipment.removeAll(EQUIPMENT);
    EQUIPMENT.stream().filter(key -> checked(key, SettingsWish::yes)).forEach(equipment::add);
    Settings wanted = before.withEquipment(equipment);
    for (String key : keys()) {
      wanted = chosen(wanted, Choices.of(key));
    }
    return wanted;
  }

  private Set<String> keys() {
    Set<String> keys = new LinkedHashSet<>(List.of("limits", "units"));
    if (form.kind() != Form.Kind.FIRST) {
      keys.addAll(SettingsForm.FURTHER.keySet());
    }
    return keys;
  }

  private Settings chosen(Settings settings, Choice choice) {
    return checked(choice.key(), text -> choice.set(settings, text));
  }

  private Units units() {
    return checked("units", text -> Choices.of("units").set(before, text)).units();
  }

  private <T> T checked(String key, Function<String, T> reader) {
    try {
      return reader.apply(form.text(key));
    } catch (Refusal refusal) {
      throw new Unmet(key, refusal.getMessage());
    }
  }

  static boolean yes(String text) {
    return switch (Text.folded(text)) {
      case "yes", "y" -> true;
      case "no", "n", "" -> false;
      default -> throw new Refusal("Say yes or no.");
    };
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
