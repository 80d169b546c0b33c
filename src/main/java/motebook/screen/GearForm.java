package motebook.screen;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import motebook.desk.Allowed;
import motebook.entry.Days;
import motebook.journal.Book;
import motebook.model.Action;
import motebook.model.Action.AddElement;
import motebook.model.Action.AddRespirator;
import motebook.model.Action.RecordFitTest;
import motebook.model.Element;
import motebook.model.FitRecord.FitTest;
import motebook.model.FitRecord.Method;
import motebook.model.FitRecord.Qualitative;
import motebook.model.FitRecord.Quantitative;
import motebook.model.Person;
import motebook.model.Refusal;
import motebook.model.Respirator;
import motebook.model.Retirement;
import motebook.model.Scheme;
import motebook.model.Text;
import motebook.reference.ElementClass;
import motebook.reference.Masks;
import motebook.reference.ProtectionFactor;
import motebook.reference.ProtectionFactor.Seal;
import motebook.reference.Reference;
import motebook.screen.state.Field;
import motebook.screen.state.Form;
import motebook.screen.state.Line;
import motebook.screen.state.Message;
import motebook.screen.state.Task;

/** A respirator, an element or a fit test by fields. */
final class GearForm {
  private static final String NAME = "name";
  private static final String MASK = "mask";
  private static final String PERSON = "person";
  private static final String DATE = "date";
  private static final String UNTIL = "until";
  private static final List<String> DAYS = List.of("today", "yesterday");

  private final Book book;
  private final Clock clock;
  private final Masks masks = Masks.shipped();
  private final Allowed allowed = new Allowed(masks, Reference.shipped());

  GearForm(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  Message open(Task.OpenGear open) {
    String person = open.person().isEmpty() ? book.settings().person() : open.person();
    List<Field> fields =
        switch (open.kind()) {
          case RESPIRATOR -> respirator(person, open.wanted());
          case ELEMENT -> element(mask(open), open.wanted());
          default -> fitTest(mask(open), person, open.wanted());
        };
    return new Message.FormOpened(Form.of(open.kind(), 0, fields));
  }

  // The mask that is meant, else the only or the first one there is.
  private String mask(Task.OpenGear open) {
    return open.mask().isEmpty() ? names().stream().findFirst().orElse("") : open.mask();
  }

  private List<String> names() {
    return book.rack().respiratorNames();
  }

  private List<String> people() {
    return book.premises().people().stream().map(Person::name).toList();
  }

  private List<Field> respirator(String person, Optional<Action> wanted) {
    List<ProtectionFactor> all = masks.factors();
    AddRespirator add =
        wanted
            .map(AddRespirator.class::cast)
            .orElse(new AddRespirator("", Scheme.OSHA, "air-purifying", "half mask"));
    return List.of(
        field(
            NAME,
            "name",
            "what you call it; another size is another respirator",
            add.name(),
            List.of()),
        field(
            "facepiece",
            "facepiece",
            "the part on the face",
            add.facepiece(),
            all.stream().map(ProtectionFactor::facepiece).distinct().toList()),
        field(
            "kind",
            "kind",
            "what moves the air",
            add.kind(),
            all.stream().map(ProtectionFactor::kind).distinct().toList()),
        field(
            "scheme",
            "scheme",
            "whose factors and fit tests count",
            add.scheme().key(),
            Arrays.stream(Scheme.values()).map(Scheme::key).toList()),
        field(PERSON, "for", "whose it is; empty: anybody's", person, people()));
  }

  private List<Field> element(String mask, Optional<Action> wanted) {
    Optional<AddElement> add = wanted.map(AddElement.class::cast);
    return List.of(
        field(MASK, "for", "the respirator that it is for", mask, names()),
        field(
            NAME,
            "name",
            "what you call it, such as dust pads",
            add.map(AddElement::name).orElse(""),
            List.of()),
        field(
            "class",
            "class",
            "as on its label",
            add.map(AddElement::elementClass).orElse("P100"),
            masks.classes().stream().map(ElementClass::name).toList()),
        field(
            "pair",
            "pair",
            "two are worn side by side and changed together?",
            "yes",
            List.of("yes", "no")),
        field(DATE, "opened", "the day it was unpacked", day(add.map(AddElement::opened)), DAYS),
        field(
            UNTIL,
            "until",
            "the day the next one took its place; empty while it is on the mask",
            add.flatMap(AddElement::until).map(LocalDate::toString).orElse(""),
            DAYS));
  }

  private String day(Optional<LocalDate> wanted) {
    return wanted
        .filter(day -> !day.equals(LocalDate.now(clock)))
        .map(LocalDate::toString)
        .orElse("today");
  }

  private List<Field> fitTest(String mask, String person, Optional<Action> wanted) {
    Optional<LocalDate> on = wanted.map(RecordFitTest.class::cast).map(RecordFitTest::on);
    return List.of(
        field(MASK, "respirator", "what was worn", mask, names()),
        field(PERSON, "who", "on whose face", person, people()),
        field(DATE, "on", "the day of the test", day(on), DAYS),
        field(
            "result",
            "result",
            "by taste or smell: passed or failed; measured: each factor, 200,180,150",
            "",
            List.of("passed", "failed")),
        field(
            "agent",
            "agent",
            "what was to be tasted or smelled; not for a measured test",
            "saccharin",
            List.of("saccharin", "denatonium benzoate", "irritant smoke", "isoamyl acetate")));
  }

  private static Field field(
      String key, String label, String hint, String text, List<String> choices) {
    return new Field(key, label, hint, "", Line.of(text), choices);
  }

  /** Writes what the form says; a field that cannot be understood is told, and nothing written. */
  Message save(Form form) {
    try {
      String done =
          switch (form.kind()) {
            case RESPIRATOR -> "Added " + book.rack().add(respirator(form)).name();
            case ELEMENT -> "Added " + book.rack().add(element(form)).name();
            default -> noted(fitTest(form));
          };
      return new Message.GearSaved(done + ". Ctrl-Z takes it back.");
    } catch (SettingsWish.Unmet unmet) {
      return new Message.FieldRefused(unmet.key(), unmet.getMessage());
    } catch (Refusal refusal) {
      return new Message.FieldRefused(form.field().key(), refusal.getMessage());
    }
  }

  private static <T> T of(Form form, String key, Function<String, T> reader) {
    try {
      return reader.apply(form.text(key));
    } catch (Refusal refusal) {
      throw new SettingsWish.Unmet(key, refusal.getMessage());
    }
  }

  private Respirator respirator(Form form) {
    String name = of(form, NAME, text -> motebook.model.Names.check("respirator", text));
    Scheme scheme = of(form, "scheme", allowed::scheme);
    String kind = of(form, "kind", text -> allowed.kind(scheme, text));
    String facepiece = of(form, "facepiece", text -> allowed.facepiece(scheme, kind, text));
    List<String> owners =
        form.text(PERSON).isEmpty() ? List.of() : List.of(of(form, PERSON, this::person));
    return new Respirator(
        0,
        name,
        scheme,
        kind,
        facepiece,
        Optional.empty(),
        Optional.empty(),
        owners,
        Optional.empty());
  }

  private Element element(Form form) {
    Respirator mask = of(form, MASK, book.rack()::respirator);
    String key = of(form, "class", text -> allowed.elementClass(mask, text).key());
    LocalDate opened = of(form, DATE, this::day);
    return new Element(
        0,
        of(form, NAME, text -> motebook.model.Names.check("element", text)),
        mask.name(),
        key,
        of(form, "pair", SettingsWish::yes),
        opened,
        Optional.of(opened),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        form.text(UNTIL).isEmpty()
            ? Optional.empty()
            : Optional.of(new Retirement(of(form, UNTIL, this::day), Retirement.CHANGED)));
  }

  private FitTest fitTest(Form form) {
    Respirator mask = of(form, MASK, text -> sealing(book.rack().respirator(text)));
    Method method = of(form, "result", text -> counting(mask, method(text, form)));
    return new FitTest(
        0, mask.name(), of(form, PERSON, this::person), of(form, DATE, this::day), method);
  }

  private Respirator sealing(Respirator mask) {
    if (allowed.seal(mask).filter(Seal.LOOSE::equals).isPresent()) {
      throw new Refusal(
          "\"%s\" is a %s and needs no seal on the face, so no fit test is asked for."
              .formatted(mask.name(), mask.facepiece()));
    }
    return mask;
  }

  private Method counting(Respirator mask, Method method) {
    allowed.requireCounting(mask, method);
    return method;
  }

  private static Method method(String text, Form form) {
    return switch (Text.folded(text)) {
      case "passed" -> new Qualitative(form.text("agent"), true);
      case "failed" -> new Qualitative(form.text("agent"), false);
      default -> new Quantitative(factors(text));
    };
  }

  private static List<Double> factors(String text) {
    try {
      return Arrays.stream(text.strip().split("[,; ]+")).map(Double::valueOf).toList();
    } catch (NumberFormatException notANumber) {
      throw new Refusal(
          "Say passed or failed, or the fit factor of each exercise, like 200,180,150.");
    }
  }

  private String noted(FitTest test) {
    book.fits().note(test);
    return "Written down: " + test.told() + " of " + test.person() + " on " + test.date();
  }

  private String person(String text) {
    return people().stream()
        .filter(name -> Text.folded(name).equals(Text.folded(text)))
        .findFirst()
        .orElseThrow(
            () ->
                new Refusal(
                    "The book knows no person \"%s\". It knows: %s."
                        .formatted(text, String.join(", ", people()))));
  }

  private LocalDate day(String text) {
    LocalDate today = LocalDate.now(clock);
    return text.isEmpty()
        ? today
        : Days.parse(text, today)
            .orElseThrow(
                () ->
                    new Refusal(
                        "\"%s\" is no date: say 2026-03-02, today or yesterday.".formatted(text)));
  }
}
