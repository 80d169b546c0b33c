package motebook.desk;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import motebook.reference.Finish;
import motebook.reference.Solvent;

/**
 * What the vapour outside a mask in one session asks of it.
 *
 * @param asking the solvents that a mask must hold back or keep out; what lies below a tenth of all
 *     its limits asks nothing
 * @param aboveIdlh those that may be immediately dangerous to life or health, for which no mask of
 *     this book is enough
 * @param finishes what gives off the vapour
 * @param worstPpm the best estimate of some solvents together over their worst 15 minutes, ppm
 */
public record VapourDemand(
    Set<Solvent> asking,
    List<Solvent> aboveIdlh,
    List<Finish> finishes,
    ToDoubleFunction<Predicate<Solvent>> worstPpm) {
  /** Of clean air. */
  public static final VapourDemand NOTHING =
      new VapourDemand(Set.of(), List.of(), List.of(), counted -> 0);
}
