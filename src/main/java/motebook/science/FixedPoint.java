package motebook.science;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Finds values that a rule leaves where they are: of several such rests, the one to which the flow
 * {@code x' = rule(x) − x} leads from the start.
 *
 * <p>The flow is followed by shares of each move, smaller where the moves turn and larger where
 * they hardly change, so that the same start leads to the same rest however the values are
 * numbered. Where the moves shrink, the mixture of the last few steps that would move least is
 * tried (Anderson 1965, J ACM 12:547, from memory) and taken if it is near and moves less. Where
 * that comes to no rest, as it may near a fork of the flow, the flow is followed anew by small even
 * shares: slow, but a rule that pushes back is followed to rest by a share that is small enough.
 */
final class FixedPoint {
  private static final double FIRST_SHARE = 0.2;
  private static final double LARGEST_SHARE = 0.5;
  private static final double[] EVEN_SHARES = {0.1, 0.02};
  private static final double SLOWER = 0.5;
  private static final double FASTER = 1.25;
  private static final double TURNING = 0.6;
  private static final double STEADY = 0.4;
  private static final double STRAIGHT = 0.01;
  private static final double LEAP = 5;
  private static final int STEPS = 500;
  private static final int MOVES = 300;
  private static final int REMEMBERED = 8;
  private static final int SHRUNK = 4;
  private static final double LESS = 0.95;
  private static final double NEAR = 100;
  private static final double RIDGE = 1e-12;

  private final UnaryOperator<RealVector> rule;
  private final Deque<Step> steps = new ArrayDeque<>();

  /** Where the rule was asked, and what it made of that. */
  private record Step(RealVector here, RealVector goal, RealVector move, double length) {
    static Step of(RealVector here, UnaryOperator<RealVector> rule) {
      RealVector goal = rule.apply(here);
      RealVector move = goal.subtract(here);
      return new Step(here, goal, move, move.getNorm());
    }

    boolean still(double distance) {
      return move.getLInfNorm() < distance;
    }
  }

  FixedPoint(UnaryOperator<RealVector> rule) {
    this.rule = rule;
  }

  /**
   * Follows the rule until nothing moves farther than a distance, as long as can be waited for.
   *
   * @return the values that the rule made of the last ones
   */
  RealVector from(RealVector start, double still) {
    Step last = followed(Step.of(start, rule), still);
    for (int i = 0; i < EVEN_SHARES.length && !last.still(still); i++) {
      last = evenly(Step.of(start, rule), still, EVEN_SHARES[i]);
    }
    return last.goal;
  }

  private Step evenly(Step first, double still, double share) {
    Step now = first;
    for (int i = 0; i < MOVES / share && !now.still(still); i++) {
      now = Step.of(now.here.combine(1, share, now.move), rule);
    }
    return now;
  }

  private Step followed(Step first, double still) {
    steps.clear();
    Step now = first;
    double share = FIRST_SHARE;
    double turned = 1;
    for (int i = 0; i < STEPS && !now.still(still); i++) {
      Step before = now;
      Optional<Step> mixed = shrinking(now) ? mixed(now) : Optional.empty();
      if (mixed.isEmpty()) {
        now = Step.of(before.here.combine(1, turned < STRAIGHT ? LEAP : share, before.move), rule);
        turned = now.move.getDistance(before.move) / before.length;
        share = Math.min(LARGEST_SHARE, share * change(turned));
      } else {
        now = mixed.get();
        turned = 1;
      }
      remember(before);
    }
    return now;
  }

  /** By what the next share differs from the last one. */
  private static double change(double turned) {
    return turned > TURNING ? SLOWER : turned < STEADY ? FASTER : 1;
  }

  private void remember(Step step) {
    steps.addLast(step);
    if (steps.size() > REMEMBERED) {
      steps.removeFirst();
    }
  }

  /** Whether the moves became shorter over the last few. */
  private boolean shrinking(Step now) {
    return steps.size() >= SHRUNK && now.length < steps.getFirst().length;
  }

  /** The mixture of the last few steps; where it is no good they are forgotten. */
  private Optional<Step> mixed(Step now) {
    Array2DRowRealMatrix moves = differences(now.move, Step::move);
    RealMatrix square = moves.multiplyTransposed(moves);
    double ridge = RIDGE * (square.getTrace() + Double.MIN_NORMAL);
    square =
        square.add(
            MatrixUtils.createRealIdentityMatrix(square.getRowDimension()).scalarMultiply(ridge));
    RealVector weights =
        new CholeskyDecomposition(square, 1e-9, 0).getSolver().solve(moves.operate(now.move));
    RealVector there = now.goal.subtract(differences(now.goal, Step::goal).preMultiply(weights));
    if (there.getDistance(now.here) < NEAR * now.length) {
      Step step = Step.of(there, rule);
      if (step.length < LESS * now.length) {
        return Optional.of(step);
      }
    }
    steps.clear();
    return Optional.empty();
  }

  /** How far what the earlier steps have lies from what there is now, a row each. */
  private Array2DRowRealMatrix differences(RealVector now, Function<Step, RealVector> of) {
    double[][] rows =
        steps.stream().map(then -> now.subtract(of.apply(then)).toArray()).toArray(double[][]::new);
    return new Array2DRowRealMatrix(rows, false);
  }
}
