package motebook.science;

import org.hipparchus.linear.RealVector;

/**
 * How much something changes with each part, or rests on each of some independent normals.
 *
 * @param common by what all groups share
 * @param own by what one group has alone
 */
record Slope(RealVector common, RealVector own) {
  double dot(Slope other) {
    return common.dotProduct(other.common) + own.dotProduct(other.own);
  }

  Slope plus(double weight, Slope other) {
    return new Slope(common.combine(1, weight, other.common), own.combine(1, weight, other.own));
  }

  Slope times(double factor) {
    return new Slope(common.mapMultiply(factor), own.mapMultiply(factor));
  }
}
