package motebook.desk;

import java.util.List;
import java.util.Optional;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Control;
import motebook.reference.Material;
import motebook.reference.Operation;
import motebook.reference.Reference;
import motebook.science.Doubts;
import motebook.science.LognormalSum;
import motebook.science.Part;
import motebook.science.Posterior;

/**
 * A session as a source of dust: how much it makes and how sure that is.
 *
 * @param session the session
 * @param kind what kind of work it is
 * @param mgPerMin typical emission of inhalable dust, mg/min
 * @param doubts of the emission; parts of equal names are shared
 */
public record Source(Session session, Kind kind, double mgPerMin, Doubts doubts) {
  /** The name of the doubt about the air model, one for all sources. */
  static final String MODEL = "model";

  /** The name of the doubt about the air at the face outdoors, one for all sources there. */
  static final String OUTDOORS = "outdoors";

  private static final String OWN = "own";

  /** The source that a session is, outdoors or in a room. */
  public static Source of(Session session, boolean outdoors, Reference reference) {
    Kind kind = Kind.of(session.work(), outdoors, reference);
    return new Source(session, kind, kind.mgPerMin(), Doubts.NONE).with(kind.doubts());
  }

  /** The same with other doubts of its kind, and its own. */
  private Source with(Doubts ofKind) {
    return new Source(
        session,
        kind,
        mgPerMin,
        kind.own().isPresent() ? ofKind.and(own(), kind.own().getAsDouble()) : ofKind);
  }

  /**
   * The name of its own doubt: one for each person, day, operation, material and control, so that
   * splitting a session changes nothing.
   */
  String own() {
    Work work = session.work();
    return String.join(
        "|",
        OWN,
        work.person(),
        work.date().toString(),
        work.operation(),
        material().key(),
        atSource().map(Control.Row::id).orElse(""));
  }

  /** The name of what a sampled session has of its own within the day. */
  String stretch() {
    return String.join("|", OWN, "session", Long.toString(session.id()));
  }

  /** The logarithm by which its emission was moved from the published one. */
  double moved() {
    return Math.log(mgPerMin / kind.mgPerMin());
  }

  /** What is done. */
  public Operation operation() {
    return kind.operation();
  }

  /** To what, or the row for an unnamed one. */
  public Material material() {
    return kind.material();
  }

  /** Whether a limit of wood dust says enough about its dust. */
  boolean coveredByLimit() {
    return material().coveredByLimit();
  }

  /** Its controls, in the order said. */
  public List<Control> controls() {
    return kind.controls();
  }

  /** The row of its best control at the source, if it has one. */
  public Optional<Control.Row> atSource() {
    return kind.atSource();
  }

  /** The name of the doubt about an operation's figure. */
  static String part(Operation operation) {
    return "operation " + operation.key();
  }

  /** Whether a part is one of a single day. */
  static boolean isOwn(String part) {
    return part.startsWith(OWN + "|");
  }

  /** The same source with another emission, mg/min. */
  Source emitting(double otherMgPerMin) {
    return new Source(session, kind, otherMgPerMin, doubts);
  }

  /**
   * The same source by what was learned.
   *
   * @param ofKind of the doubts of its kind
   * @param parts of its own, where samples bear on it
   * @param own whether its own doubt of the day is among them
   */
  Source learned(Posterior.Outcome ofKind, List<Part> parts, boolean own) {
    double shift = ofKind.shift() + parts.stream().mapToDouble(Part::shift).sum();
    Source shifted = emitting(mgPerMin * Math.exp(shift));
    Doubts all = ofKind.doubts();
    for (Part part : parts) {
      all = all.and(part);
    }
    return own ? new Source(session, kind, shifted.mgPerMin, all) : shifted.with(all);
  }

  /** Something that goes with the emission, and is as sure. */
  LognormalSum.Term term(double typical) {
    return new LognormalSum.Term(typical, doubts);
  }

  /** Whether any row used is graded C or D. */
  public boolean rough() {
    return kind.rough();
  }

  /** By the session's number alone: hashing all that a source holds costs more than its air. */
  @Override
  public int hashCode() {
    return Long.hashCode(session.id());
  }

  @Override
  public boolean equals(Object other) {
    return this == other || (other instanceof Source that && session.equals(that.session));
  }

  /** Whether one of its controls has the key. */
  boolean uses(String control) {
    return session.work().controls().contains(control);
  }

  /** Whether it was in a place. */
  boolean in(String place) {
    return session.work().place().equals(place);
  }

  int from() {
    return session.work().startMinute();
  }

  int to() {
    return session.work().endMinute();
  }
}
