package motebook.science;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Finds values that a rule leaves where they are.
 *
 * <p>It begins with small shares of each move, which lead towards the rest that is nearest to the
 * start where there are several; then, from the last few steps, it reckons the mixture of them that
 * would have moved least, and goes on from there (Anderson 1965, J ACM 12:547, from memory). Where
 * that leads to no rest, as it may where values pull hard against each other, it begins anew with
 * small shares alone, then ever smaller ones: slow, but a rule that pushes back is followed to rest
 * by a share that is small enough.
 */
final class FixedPoint {
  private static final int FIRST_STEPS = 25;
  private static final double FIRST_SHARE = 0.2;
  private static final int MIXED_STEPS = 200;
  private static final int REMEMBERED = 10;
  private static final double[] SHARES = {0.1, 0.05, 0.02};
  private static final int MOVES = 200;
  private static final double RIDGE = 1e-12;

  private final UnaryOperator<RealVector> rule;
  private final Deque<RealVector> moves = new ArrayDeque<>();
  private final Deque<RealVector> goals = new ArrayDeque<>();
  private RealVector last;

  FixedPoint(UnaryOperator<RealVector> rule) {
    this.rule = rule;
  }

  /**
   * Follows the rule until nothing moves farther than a distance, as long as can be waited for.
   *
   * @return the values that the rule made of the last ones
   */
  RealVector from(RealVector start, double still) {
    Optional<RealVector> found = mixed(start, still);
    for (int i = 0; found.isEmpty() && i < SHARES.length; i++) {
      found = steadily(start, still, SHARES[i]);
    }
    return found.orElse(last);
  }

  private Optional<RealVector> steadily(RealVector start, double still, double share) {
    RealVector here = start;
    for (int step = 0; step < MOVES / share; step++) {
      RealVector goal = rule.apply(here);
      RealVector move = goal.subtract(here);
      if (move.getLInfNorm() < still) {
        return Optional.of(goal);
      }
      here = here.combine(1, share, move);
    }
    last = here;
    return Optional.empty();
  }

  private Optional<RealVector> mixed(RealVector start, double still) {
    RealVector here = start;
    for (int step = 0; step < MIXED_STEPS; step++) {
      RealVector goal = rule.apply(here);
      RealVector move = goal.subtract(here);
      if (move.getLInfNorm() < still) {
        return Optional.of(goal);
      }
      here =
          step < FIRST_STEPS
              ? here.combine(1, FIRST_SHARE, move)
              : goal.subtract(mixture(move, goal));
      remember(move, goal);
    }
    return Optional.empty();
  }

  private void remember(RealVector move, RealVector goal) {
    moves.addLast(move);
    goals.addLast(goal);
    if (moves.size() > REMEMBERED) {
      moves.removeFirst();
      goals.removeFirst();
    }
  }

  /** What the earlier steps take off the goal. */
  private RealVector mixture(RealVector move, RealVector goal) {
    Array2DRowRealMatrix moved = differences(moves, move);
    RealMatrix square = moved.multiplyTransposed(moved);
    double ridge = RIDGE * (square.getTrace() + Double.MIN_NORMAL);
    square =
        square.add(
            MatrixUtils.createRealIdentityMatrix(square.getRowDimension()).scalarMultiply(ridge));
    RealVector weights =
        new CholeskyDecomposition(square, 1e-9, 0).getSolver().solve(moved.operate(move));
    return differences(goals, goal).preMultiply(weights);
  }

  /** How far each earlier one lies from now, a row each. */
  private static Array2DRowRealMatrix differences(Deque<RealVector> earlier, RealVector now) {
    double[][] rows =
        earlier.stream().map(then -> now.subtract(then).toArray()).toArray(double[][]::new);
    return new Array2DRowRealMatrix(rows, false);
  }
}
