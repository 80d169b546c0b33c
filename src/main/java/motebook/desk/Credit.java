package motebook.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import motebook.science.Protection;

/**
 * What a respirator counts for during one session, against dust and against vapour apart.
 *
 * @param wornShare share of the session that it was worn, 0 to 1
 * @param dust against wood dust
 * @param vapour against the vapour of the session; empty where there was none
 * @param notes what must be known beside it
 */
public record Credit(double wornShare, Verdict dust, Optional<Verdict> vapour, List<String> notes) {
  /** No mask on the face. */
  public static final Credit NONE = of(1, 0);

  public Credit {
    notes = List.copyOf(notes);
  }

  /** A factor against dust with nothing against it. */
  public static Credit of(double apf, double wornShare) {
    return new Credit(wornShare, Verdict.of(apf), Optional.empty(), List.of());
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

  /** Why the mask's own factor is not credited, what would mend it, and the factor then. */
  public Optional<String> refused() {
    Set<String> told = new LinkedHashSet<>();
    Optional<String> ofDust = dust.refused();
    Optional<String> ofVapour = vapour.flatMap(Verdict::refused);
    if (vapour.isEmpty() || ofDust.equals(ofVapour)) {
      ofDust.ifPresent(told::add);
    } else {
      ofDust.ifPresent(why -> told.add("Against dust: " + why));
      ofVapour.ifPresent(why -> told.add("Against vapour: " + why));
    }
    return told.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", told));
  }

  /** Every reason, each once, those against dust first. */
  public List<Objection> objections() {
    Set<Objection> all = new LinkedHashSet<>(dust.objections());
    vapour.ifPresent(verdict -> all.addAll(verdict.objections()));
    return new ArrayList<>(all);
  }
}
