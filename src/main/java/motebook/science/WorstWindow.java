package motebook.science;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The stretch of a fixed length over which the mean of what somebody breathes is highest.
 *
 * <p>With {@code F(t) = ∫c} from t to t + w, {@code F'(t) = c(t + w) − c(t)}. Between the knots of
 * c and the same less w, F is smooth; on each such piece the bounds of c at both ends of the window
 * bound F' and so F. A piece whose bound lies above the best window found so far is halved, until
 * none does: what is left out is proven to be no higher.
 *
 * @param fromMinute when it begins
 * @param sum the weighted integral over it
 */
public record WorstWindow(double fromMinute, double sum) {
  // What is not found is less than this part of what is.
  private static final double TOLERANCE = 1e-10;

  /**
   * Something breathed and what it counts.
   *
   * @param air what is breathed of it
   * @param weight ≥ 0
   */
  public record Weighted(BreathedAir air, double weight) {}

  /**
   * The worst window.
   *
   * @param airs what is breathed together
   * @param minutes its length, above 0
   * @param first the earliest minute at which it may begin
   * @param last the latest, not before the first
   */
  public static WorstWindow of(List<Weighted> airs, double minutes, double first, double last) {
    return new Search(airs, minutes).between(first, last);
  }

  private record Search(List<Weighted> airs, double minutes) {
    private record Piece(double from, double to, double atFrom, double atTo) {}

    WorstWindow between(double first, double last) {
      double[] cuts =
          DoubleStream.concat(
                  DoubleStream.of(first, last),
                  airs.stream()
                      .flatMapToDouble(one -> one.air.knots())
                      .flatMap(knot -> DoubleStream.of(knot, knot - minutes))
                      .filter(cut -> first < cut && cut < last))
              .sorted()
              .distinct()
              .toArray();
      WorstWindow best = at(cuts[0]);
      Deque<Piece> open = new ArrayDeque<>();
      for (int i = 1; i < cuts.length; i++) {
        open.push(piece(cuts[i - 1], cuts[i]));
        best = best.or(cuts[i], open.peek().atTo);
      }
      while (!open.isEmpty()) {
        Piece piece = open.pop();
        if (most(piece) > best.sum * (1 + TOLERANCE)) {
          double middle = (piece.from + piece.to) / 2;
          double sum = sum(middle);
          best = best.or(middle, sum);
          open.push(new Piece(piece.from, middle, piece.atFrom, sum));
          open.push(new Piece(middle, piece.to, sum, piece.atTo));
        }
      }
      return best;
    }

    private Piece piece(double from, double to) {
      return new Piece(from, to, sum(from), sum(to));
    }

    private WorstWindow at(double minute) {
      return new WorstWindow(minute, sum(minute));
    }

    private double sum(double minute) {
      double sum = 0;
      for (Weighted one : airs) {
        sum += one.weight * one.air.mgMinPerM3(minute, minute + minutes);
      }
      return sum;
    }

    private double most(Piece piece) {
      Bounds entering = bounds(piece.from + minutes, piece.to + minutes);
      Bounds leaving = bounds(piece.from, piece.to);
      double length = piece.to - piece.from;
      double risen = piece.atFrom + length * Math.max(0, entering.high() - leaving.low());
      double fallen = piece.atTo + length * Math.max(0, leaving.high() - entering.low());
      return Math.min(risen, fallen);
    }

    private Bounds bounds(double from, double to) {
      Bounds sum = Bounds.ZERO;
      for (Weighted one : airs) {
        sum = sum.plus(one.air.bounds(from, to).times(one.weight));
      }
      return sum;
    }
  }

  private WorstWindow or(double minute, double other) {
    return other > sum ? new WorstWindow(minute, other) : this;
  }
}
