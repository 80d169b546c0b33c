package motebook.science;

/**
 * A prediction as a straight line in the parts.
 *
 * @param level where all parts are 0
 * @param slope by the parts
 */
record Line(double level, Slope slope) {}
