package motebook.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import motebook.science.Protection;

/**
 * What a respirator counts for during one session, against dust and against vapour apart.
 *
 * @param wornShare share of the session that it was worn, 0 to 1
 * @param dust against wood dust
 * @param vapour against the vapour of the session; empty where there was none
 * @param notes what must be known beside it
 * @param mending what would make it count for more, tried out when it is asked for
 */
public record Credit(
    double wornShare,
    Verdict dust,
    Optional<Verdict> vapour,
    List<String> notes,
    Supplier<Optional<Remedy>> mending) {
  /** No mask on the face. */
  public static final Credit NONE = of(1, 0);

  public Credit {
    notes = List.copyOf(notes);
  }

  /** A factor against dust with nothing against it. */
  public static Credit of(double apf, double wornShare) {
    return new Credit(wornShare, Verdict.of(apf), Optional.empty(), List.of(), Optional::empty);
  }

  /** The factor credited against dust, 1 where there is none. */
  public double apf() {
    return dust.apf();
  }

  /** The share of what is outside that reaches the wearer. */
  public double insideShare() {
    return Protection.insideShare(apf(), wornShare);
  }

  /** The factor credited against vapour, 1 where there is none. */
  public double vapourApf() {
    return vapour.map(Verdict::apf).orElse(1.0);
  }

  /** The share of the vapour outside that reaches the wearer. */
  public double vapourInsideShare() {
    return Protection.insideShare(vapourApf(), wornShare);
  }

  /** The same with a way to find what would make it count for more, which is asked once. */
  Credit mendedBy(Supplier<Optional<Remedy>> found) {
    return new Credit(wornShare, dust, vapour, notes, new Once<>(found));
  }

  private static final class Once<T> implements Supplier<T> {
    private final Supplier<T> found;
    private T value;

    Once(Supplier<T> found) {
      this.found = found;
    }

    @Override
    public synchronized T get() {
      if (value == null) {
        value = found.get();
      }
      return value;
    }
  }

  /** What would make it count for more; empty where nothing that could be entered does. */
  public Optional<Remedy> remedy() {
    return mending.get();
  }

  /**
   * What is to be told of it, each once: the reasons in the order to mend them, then those that
   * nothing mends; where another mask is what mends, nothing more of this one.
   */
  public List<Objection> toTell() {
    Set<Objection> all = new LinkedHashSet<>();
    remedy().ifPresent(one -> one.steps().forEach(step -> all.add(step.against())));
    if (all.stream().noneMatch(Objection::ofTheMask)) {
      all.addAll(objections());
    }
    return new ArrayList<>(all);
  }

  /** Every reason, each once, those against dust first. */
  public List<Objection> objections() {
    Set<Objection> all = new LinkedHashSet<>(dust.objections());
    vapour.ifPresent(verdict -> all.addAll(verdict.objections()));
    return new ArrayList<>(all);
  }
}
