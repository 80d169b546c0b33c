package motebook.desk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import motebook.entry.NearMiss;
import motebook.journal.Settings;
import motebook.model.Figures;
import motebook.model.OwnFigure;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.model.Units;
import motebook.model.VapourLimits;
import motebook.reference.Control;
import motebook.reference.Reference;

/** All that the owner may choose: one list for the command line and for the screen. */
public final class Choices {
  private static final Settings SHIPPED = new Settings("me", "shop", "acgih", 1.5, 30);

  /** In the order in which they are listed. */
  public static final List<Choice> ALL = all();

  private Choices() {}

  /**
   * The choice that a word stands for, whatever its case.
   *
   * @throws Refusal naming the nearest, if there is none
   */
  public static Choice of(String word) {
    String key = Text.folded(word).replace(' ', '-');
    return ALL.stream()
        .filter(choice -> choice.key().equals(key))
        .findFirst()
        .orElseThrow(() -> unknown(key));
  }

  private static Refusal unknown(String key) {
    List<String> keys = ALL.stream().map(Choice::key).toList();
    List<String> near = new ArrayList<>(NearMiss.words(key, keys));
    keys.stream().filter(known -> known.contains(key) && !near.contains(known)).forEach(near::add);
    return new Refusal(
        "There is no setting \""
            + key
            + "\". "
            + (near.isEmpty() ? "There are: " : "The nearest: ")
            + String.join(", ", near.isEmpty() ? keys : near)
            + ".");
  }

  /** The choice of one figure. */
  public static Choice of(OwnFigure figure) {
    return of(figure.key());
  }

  private static List<Choice> all() {
    List<Choice> all = new ArrayList<>();
    all.add(name("person", "whose book it is", Settings::person, Settings::withPerson));
    all.add(name("place", "where work is done by default", Settings::place, Settings::withPlace));
    all.add(limits());
    all.add(conversion());
    all.add(gap());
    all.add(units());
    all.add(equipment());
    all.add(vapourLimits());
    Arrays.stream(OwnFigure.values()).map(Choices::figure).forEach(all::add);
    return List.copyOf(all);
  }

  /** A pair of what reads a choice and what writes it. */
  private record Both(
      Function<Settings, String> reader, BiFunction<Settings, String, Settings> writer)
      implements Choice.Access {
    @Override
    public String read(Settings settings) {
      return reader.apply(settings);
    }

    @Override
    public Settings write(Settings settings, String value) {
      return writer.apply(settings, value);
    }
  }

  private static Choice name(
      String key,
      String what,
      Function<Settings, String> reader,
      BiFunction<Settings, String, Settings> writer) {
    String allowed = "a " + key + " of the book";
    return new Choice(
        key,
        "",
        what,
        "",
        allowed,
        List.of(),
        Optional.empty(),
        Choice.Form.WORD,
        new Both(reader, writer));
  }

  private static Choice words(
      String key, String what, String basis, Collection<String> words, Choice.Access access) {
    return new Choice(
        key,
        "",
        what,
        basis,
        String.join(", ", words),
        List.copyOf(words),
        Optional.of(access.read(SHIPPED)),
        Choice.Form.WORD,
        access);
  }

  private static Choice number(
      String key, String unit, String what, String basis, String allowed, Choice.Access access) {
    return new Choice(
        key,
        unit,
        what,
        basis,
        allowed,
        List.of(),
        Optional.of(access.read(SHIPPED)),
        Choice.Form.NUMBER,
        access);
  }

  private static Choice limits() {
    return words(
        "limits",
        "the limits that days are held against",
        "",
        Reference.shipped().limitSets(),
        new Both(Settings::limitSet, (s, said) -> s.withLimitSet(limitSet(said))));
  }

  private static String limitSet(String said) {
    Collection<String> sets = Reference.shipped().limitSets();
    String key = Text.folded(said).replace(' ', '-');
    if (!sets.contains(key)) {
      throw new Refusal(
          "There is no set of limits \""
              + Text.clean(said)
              + "\". There are: "
              + sets.stream()
                  .map(set -> set + " (" + LimitFigures.of(set) + ")")
                  .collect(Collectors.joining(", "))
              + ".");
    }
    return key;
  }

  private static Choice conversion() {
    String key = "total-conversion";
    return number(
        key,
        "",
        "inhalable dust per total dust",
        "for limits written in total dust",
        "1 to 10",
        new Both(
            s -> Figures.exact(s.totalConversion()),
            (s, said) -> s.withTotalConversion(Choice.number(key, said))));
  }

  private static Choice gap() {
    String key = "longest-gap";
    return number(
        key,
        "min",
        "between sessions, counted in the room",
        "judgement: who is away longer has left the room",
        "0 to 1440, whole",
        new Both(
            s -> Integer.toString(s.gapMinutes()),
            (s, said) -> s.withGapMinutes(Choice.whole(key, said))));
  }

  private static Choice units() {
    return words(
        "units",
        "of the shop's measures; dust in mg/m³",
        "",
        List.of("metric", "us"),
        new Both(
            s -> s.units().name().toLowerCase(Locale.ROOT), (s, said) -> s.withUnits(unit(said))));
  }

  private static Units unit(String said) {
    return switch (Text.folded(said)) {
      case "metric" -> Units.METRIC;
      case "us" -> Units.US;
      default -> throw new Refusal("Units are metric or us: got \"" + Text.clean(said) + "\".");
    };
  }

  private static Choice equipment() {
    return new Choice(
        "equipment",
        "",
        "the dust controls that the shop owns",
        "",
        "controls with commas between, or none",
        List.of(),
        Optional.of(Choice.NONE),
        Choice.Form.WORDS,
        new Both(
            s -> s.equipment().isEmpty() ? Choice.NONE : String.join(", ", s.equipment()),
            (s, said) -> s.withEquipment(controls(said))));
  }

  private static List<String> controls(String said) {
    return Text.folded(said).equals(Choice.NONE)
        ? List.of()
        : Arrays.stream(said.split(",", -1)).map(Choices::control).distinct().toList();
  }

  private static String control(String said) {
    String name = Text.folded(said).replace('-', ' ').strip();
    List<Control> all = Reference.shipped().controls();
    return all.stream()
        .filter(control -> control.names().stream().map(Text::folded).anyMatch(name::equals))
        .map(Control::key)
        .findFirst()
        .orElseThrow(
            () ->
                new Refusal(
                    "There is no control \""
                        + name
                        + "\". There are: "
                        + String.join(", ", all.stream().map(Control::spoken).distinct().toList())
                        + "."));
  }

  private static Choice vapourLimits() {
    return words(
        "vapour-limits",
        "whose figures vapours are held against",
        "stricter: for each solvent the lower of the two",
        Arrays.stream(VapourLimits.values()).map(VapourLimits::key).toList(),
        new Both(
            s -> s.vapourLimits().key(), (s, said) -> s.withVapourLimits(VapourLimits.of(said))));
  }

  private static Choice figure(OwnFigure figure) {
    String key = figure.key();
    return number(
        key,
        figure.unit(),
        figure.what(),
        figure.basis(),
        figure.allowed(),
        new Both(
            s -> Figures.exact(s.figures().get(figure)),
            (s, said) -> s.withFigures(s.figures().with(figure, Choice.number(key, said)))));
  }
}
