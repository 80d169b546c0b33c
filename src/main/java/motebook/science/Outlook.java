package motebook.science;

/**
 * What is thought of some sources at once.
 *
 * @param means middle of what the parts add to the logarithm of each
 * @param covariance of the logarithms
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, written once
record Outlook(double[] means, double[][] covariance) {}
