package motebook.science;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.function.UnaryOperator;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Finds values that a rule leaves where they are.
 *
 * <p>From the last few steps it reckons the mixture of them that would have moved least, and goes
 * on from there (Anderson 1965, J ACM 12:547, from memory): slow creeping and swinging past the
 * place both come to rest in a few steps.
 */
final class FixedPoint {
  private static final int STEPS = 400;
  private static final int REMEMBERED = 10;
  private static final int PLAIN = 15;
  private static final double FIRST_SHARE = 0.4;
  private static final double LEAST_SHARE = 0.05;
  private static final double PROGRESS = 0.9;
  private static final double RIDGE = 1e-12;

  private final UnaryOperator<RealVector> rule;
  private final Deque<RealVector> moves = new ArrayDeque<>();
  private final Deque<RealVector> goals = new ArrayDeque<>();

  FixedPoint(UnaryOperator<RealVector> rule) {
    this.rule = rule;
  }

  /**
   * Follows the rule until nothing moves farther than a distance, for some hundred steps at most.
   *
   * @return the values that the rule made of the last ones
   */
  RealVector from(RealVector start, double still) {
    RealVector here = start;
    double share = FIRST_SHARE;
    double least = Double.POSITIVE_INFINITY;
    int plain = 0;
    int since = 0;
    for (int step = 0; step < STEPS; step++) {
      RealVector goal = rule.apply(here);
      RealVector move = goal.subtract(here);
      double moved = move.getLInfNorm();
      if (moved < still) {
        return goal;
      }
      since = moved < PROGRESS * least ? 0 : since + 1;
      least = Math.min(least, moved);
      if (since > REMEMBERED) { // the mixture leads nowhere: some plain steps, ever shorter ones
        moves.clear();
        goals.clear();
        plain = PLAIN;
        since = -PLAIN;
        share = Math.max(LEAST_SHARE, share / 2);
        least = moved;
      }
      here =
          plain-- > 0 || moves.isEmpty()
              ? here.combine(1, share, move)
              : goal.subtract(mixture(move, goal));
      remember(move, goal);
    }
    return here;
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
    RealMatrix moved = differences(moves, move);
    RealMatrix square = moved.transposeMultiply(moved);
    double ridge = RIDGE * (square.getTrace() + Double.MIN_NORMAL);
    square =
        square.add(
            MatrixUtils.createRealIdentityMatrix(square.getRowDimension()).scalarMultiply(ridge));
    RealVector weights =
        new CholeskyDecomposition(square, 1e-9, 0).getSolver().solve(moved.preMultiply(move));
    return differences(goals, goal).operate(weights);
  }

  private static RealMatrix differences(Deque<RealVector> earlier, RealVector now) {
    RealMatrix differences = new Array2DRowRealMatrix(now.getDimension(), earlier.size());
    int column = 0;
    for (Iterator<RealVector> each = earlier.iterator(); each.hasNext(); column++) {
      differences.setColumnVector(column, now.subtract(each.next()));
    }
    return differences;
  }
}
