package motebook.screen.state;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Something that is filled in field by field.
 *
 * @param kind what it is for
 * @param session number of the session that it changes; 0 where it is a new one
 * @param fields in the order in which they are shown
 * @param at index of the field that is typed in
 * @param entered whether the field was just gone to: what is typed then takes the place of its text
 * @param waiting whether no field takes letters yet, since the key that opened it may have been one
 *     of a text
 * @param reading what was last made of it, possibly of an earlier content
 */
public record Form(
    Kind kind,
    long session,
    List<Field> fields,
    int at,
    boolean entered,
    boolean waiting,
    Optional<Reading> reading) {

  /** What a form is for. */
  public enum Kind {
    NEW,
    AMEND,
    SETTINGS,
    FIRST,
    RESPIRATOR,
    ELEMENT,
    FIT_TEST
  }

  public Form {
    fields = List.copyOf(fields);
  }

  /** A form that is just opened. */
  public static Form of(Kind kind, long session, List<Field> fields) {
    return new Form(kind, session, fields, 0, true, false, Optional.empty());
  }

  /** Whether it describes a session. */
  public boolean isSession() {
    return kind == Kind.NEW || kind == Kind.AMEND;
  }

  /** Whether it describes masks or how they fit. */
  public boolean isGear() {
    return kind == Kind.RESPIRATOR || kind == Kind.ELEMENT || kind == Kind.FIT_TEST;
  }

  /** The field that is typed in. */
  public Field field() {
    return fields.get(at);
  }

  /** What stands in a field. */
  public String text(String key) {
    return fields.stream()
        .filter(field -> field.key().equals(key))
        .map(Field::text)
        .findFirst()
        .orElse("");
  }

  /** With or without a field that takes letters. */
  Form waiting(boolean waits) {
    return new Form(kind, session, fields, at, entered, waits, reading);
  }

  Form on(int index) {
    int where = Math.floorMod(index, fields.size());
    return new Form(kind, session, fields, where, true, false, reading);
  }

  Form changed(UnaryOperator<Field> change) {
    List<Field> changed = new ArrayList<>(fields);
    changed.set(at, change.apply(field()));
    return new Form(kind, session, changed, at, false, false, reading);
  }

  /** Text typed into the field; in one that was just gone to it takes the place of what stands. */
  Form typed(String text) {
    boolean replaces = entered && !text.startsWith(" ");
    return changed(f -> f.with((replaces ? Line.EMPTY : f.line().end()).typed(text)));
  }

  /** With what a field can be. */
  Form offering(String key, List<String> choices) {
    List<Field> offered =
        fields.stream().map(f -> f.key().equals(key) ? f.offering(choices) : f).toList();
    return new Form(kind, session, offered, at, entered, waiting, reading);
  }

  /** A reading has come; one of an earlier content is let go. */
  Form read(Reading fresh) {
    return fresh.text().equals(line())
        ? new Form(kind, session, fields, at, entered, waiting, Optional.of(fresh))
        : this;
  }

  /** Something is wrong; the field at fault is gone to. */
  Form refused(Fault fault) {
    Reading refusal = new Reading(line(), Optional.empty(), Optional.of(fault), List.of());
    int where = fault.from() < 0 ? at : fieldAt(fault.from());
    return new Form(
        kind, session, fields, where, entered || where != at, waiting, Optional.of(refusal));
  }

  /** Something is wrong with a field. */
  Form refused(String key, String sentence) {
    int index = 0;
    while (index < fields.size() - 1 && !fields.get(index).key().equals(key)) {
      index++;
    }
    return on(index).refused(new Fault(sentence, -1, -1));
  }

  /** What was made of exactly this content, if that is known already. */
  public Optional<Reading> current() {
    return reading.filter(r -> r.text().equals(line()));
  }

  /** The same session as one spoken line. */
  public String line() {
    StringBuilder line = new StringBuilder();
    for (Field field : said()) {
      line.append(line.length() > 0 ? " " : "").append(phrase(field));
    }
    return line.toString();
  }

  private static String phrase(Field field) {
    return field.lead().isEmpty() ? field.text() : field.lead() + " " + field.text();
  }

  // A line begins with how long and ends with the note.
  private List<Field> said() {
    return fields.stream()
        .filter(field -> !field.text().isEmpty())
        .sorted(Comparator.comparingInt(Form::rank))
        .toList();
  }

  private static int rank(Field field) {
    return switch (field.key()) {
      case "minutes" -> 0;
      case "note" -> 2;
      default -> 1;
    };
  }

  private int fieldAt(int index) {
    int from = 0;
    for (Field field : said()) {
      from += phrase(field).length() + 1;
      if (index < from) {
        return fields.indexOf(field);
      }
    }
    return at;
  }
}
