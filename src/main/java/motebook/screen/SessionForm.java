package motebook.screen;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import motebook.entry.Durations;
import motebook.entry.Scene;
import motebook.entry.Serving;
import motebook.entry.SpokenLine;
import motebook.journal.Book;
import motebook.model.Figures;
import motebook.model.MaskUse;
import motebook.model.Person;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Named;
import motebook.reference.Reference;
import motebook.screen.state.Field;
import motebook.screen.state.Form;
import motebook.screen.state.Form.Kind;
import motebook.screen.state.Line;
import motebook.screen.state.Message;
import motebook.screen.state.Reading;
import motebook.screen.state.Reading.Clash;
import motebook.screen.state.Reading.Understood;
import motebook.screen.state.Task;

/** A session by fields: the form says one spoken line, so every rule of the line holds for it. */
final class SessionForm {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

  private final Book book;
  private final Clock clock;
  private final Lines lines;

  SessionForm(Book book, Clock clock, Lines lines) {
    this.book = book;
    this.clock = clock;
    this.lines = lines;
  }

  Message open(Task.OpenForm open) {
    Scene scene = lines.scene(open.person());
    Form form =
        open.session()
            .map(session -> Form.of(Kind.AMEND, session.id(), fields(session.work(), scene)))
            .orElseGet(() -> Form.of(Kind.NEW, 0, blank(open, scene)));
    return new Message.FormOpened(form);
  }

  private List<Field> blank(Task.OpenForm open, Scene scene) {
    LocalDateTime now = LocalDateTime.now(clock).truncatedTo(ChronoUnit.MINUTES);
    boolean today = open.date().equals(now.toLocalDate());
    return fields(
        scene,
        "",
        "",
        today ? "" : open.date().toString(),
        new String[] {"", "", "", scene.place(), "", "", scene.person(), "", ""});
  }

  private List<Field> fields(Work work, Scene scene) {
    Reference reference = scene.reference();
    return fields(
        scene,
        work.minutes() + "m",
        CLOCK.format(work.start()),
        work.date().toString(),
        new String[] {
          spoken(reference.operation(work.operation())),
          work.material().map(key -> spoken(reference.material(Optional.of(key)))).orElse(""),
          String.join(
              " and ",
              work.controls().stream().map(reference::control).map(Named::spoken).toList()),
          work.place(),
          work.mask().map(MaskUse::respirator).orElse(""),
          work.mask().map(SessionForm::worn).orElse(""),
          work.person(),
          work.note(),
          SpokenLine.amounts(work, scene)
        });
  }

  private static String worn(MaskUse mask) {
    String percent = Figures.exact(mask.wornPercent());
    return (mask.checked() ? "checked " : "") + percent + "%";
  }

  private static String spoken(Named row) {
    return row.spoken();
  }

  private List<Field> fields(
      Scene scene, String minutes, String start, String date, String[] rest) {
    Reference reference = scene.reference();
    List<String> places =
        scene.places().apply(scene.now().toLocalDate()).stream().map(Place::name).toList();
    List<String> people = scene.people().stream().map(Person::name).toList();
    return List.of(
        field("minutes", "how long", "40m, 1h20 or 9:00-9:30", "", minutes, List.of()),
        field("operation", "what", "the operation", "", rest[0], names(reference.operations())),
        field("material", "of", "the wood or board", "of", rest[1], names(reference.materials())),
        field(
            "controls",
            "with",
            "what caught the dust; several are joined by \"and\"",
            "with",
            rest[2],
            Serving.controls(rest[0], rest[3], scene)),
        field(
            "finishes",
            "using",
            "how much of which finish, 250ml lacquer; several are joined by \"and\"",
            "using",
            rest[8],
            SpokenLine.exampleAmounts(scene)),
        field("place", "in", "the place", "in", rest[3], places),
        field("mask", "wearing", "the respirator", "wearing", rest[4], scene.respirators()),
        field(
            "worn",
            "how worn",
            "\"checked\" if the seal was; the time worn, 95%",
            "",
            rest[5],
            List.of("checked", "checked 95%", "95%")),
        field(
            "start", "at", "when it began, 9:15; empty: it has just ended", "at", start, List.of()),
        field("date", "on", "the day, empty for today", "on", date, List.of("today", "yesterday")),
        field("person", "by", "who worked", "by", rest[6], people),
        field("note", "note", "anything worth keeping", "note", rest[7], List.of()));
  }

  private static Field field(
      String key, String label, String hint, String lead, String text, List<String> choices) {
    return new Field(key, label, hint, lead, Line.of(text), choices);
  }

  private static List<String> names(List<? extends Named> rows) {
    return rows.stream().map(Named::spoken).toList();
  }

  Message read(Task.ReadForm task) {
    Form form = task.form();
    Optional<Session> amended = book.session(form.session());
    Scene scene = scene(form, task.person());
    Reading reading =
        lines.reading(form.line(), List.of(), amended, () -> SpokenLine.read(form.line(), scene));
    return new Message.FormRead(
        reading,
        Serving.controls(form.text("operation"), form.text("place"), scene),
        starts(form, reading));
  }

  /** A time that is free, where the work would overlap other work at the one that it has. */
  private static List<String> starts(Form form, Reading reading) {
    return reading
        .understood()
        .filter(understood -> Durations.parse(form.text("minutes")).isPresent())
        .flatMap(Understood::clash)
        .flatMap(Clash::free)
        .map(start -> List.of(CLOCK.format(start)))
        .orElse(List.of());
  }

  Message save(Task.SaveForm task) {
    Form form = task.form();
    try {
      Scene scene = scene(form, task.person());
      return save(form, SpokenLine.read(form.line(), scene), scene);
    } catch (Refusal refusal) {
      return new Message.FormRefused(lines.fault(refusal));
    }
  }

  private Scene scene(Form form, String person) {
    Scene scene = lines.scene(person);
    return form.kind() == Kind.AMEND ? scene.ofRecord() : scene;
  }

  private Message save(Form form, Work work, Scene scene) {
    lines.forget();
    return form.kind() == Kind.AMEND
        ? new Message.Amended(book.amend(form.session(), work).work(), SpokenLine.say(work, scene))
        : new Message.Logged(book.log(work).work(), SpokenLine.say(work, scene));
  }
}
