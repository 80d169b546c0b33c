package motebook.science;

import java.util.HashMap;
import java.util.Map;

/**
 * Evenly spread standard normal points, always the same: multiples of the roots of the primes
 * modulo 1 (Richtmyer's sequence), taken through the inverse of the normal distribution.
 */
final class NormalPoints {
  private final int count;
  private final Map<Integer, double[][]> byDimension = new HashMap<>();

  NormalPoints(int count) {
    this.count = count;
  }

  /** The points in some dimensions; in none a single one. */
  double[][] in(int dimensions) {
    return byDimension.computeIfAbsent(dimensions, this::made);
  }

  private double[][] made(int dimensions) {
    double[][] points = new double[dimensions == 0 ? 1 : count][dimensions];
    int prime = 1;
    for (int d = 0; d < dimensions; d++) {
      prime = primeAfter(prime);
      double step = Math.sqrt(prime) % 1;
      for (int i = 0; i < count; i++) {
        points[i][d] = Normal.quantile((0.5 + (i + 1) * step) % 1);
      }
    }
    return points;
  }

  private static int primeAfter(int number) {
    int next = number + 1;
    for (int divisor = 2; divisor * divisor <= next; divisor++) {
      if (next % divisor == 0) {
        next++;
        divisor = 1;
      }
    }
    return next;
  }
}
