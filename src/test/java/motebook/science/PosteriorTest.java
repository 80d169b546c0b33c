package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import motebook.science.LognormalSum.Term;
import motebook.science.Observation.Share;
import org.junit.jupiter.api.Test;

/** The update of named parts, against R (src/test/R/learning.R) and hand-made normals. */
class PosteriorTest {
  private static final double ERROR = 0.15 * 0.15;

  private static Observation told(String group, double result, double error, Share... shares) {
    return new Observation(group, Math.log(result), error, false, List.of(shares));
  }

  private static Observation below(String group, double limit, double error, Share... shares) {
    return new Observation(group, Math.log(limit), error, true, List.of(shares));
  }

  private static double mean(Posterior posterior, String part) {
    return posterior.part(part).orElseThrow().shift();
  }

  private static double sd(Posterior posterior, String part) {
    double sum = 0;
    for (double ell : posterior.part(part).orElseThrow().loadings().values()) {
      sum += ell * ell;
    }
    return Math.sqrt(sum);
  }

  @Test
  void the_normal_update_is_that_of_the_teaching_chapter() {
    // kn = 1/tau^2 + n/sigma^2, teaching chapter of the R package glmbayes (read): prior GM 1.0,
    // GSD
    // 2.5, within GSD 2.0, data 2.1, 1.4, 3.0 -> posterior GM 1.839, sd 0.3667 (derived; R 4.2.2
    // integrate() gives 0.609426285 and 0.366736939).
    Share share = new Share(1, Map.of("mean", square(Math.log(2.5))), Map.of());
    double within = square(Math.log(2));
    Posterior posterior =
        Posterior.of(
            List.of(
                told("1", 2.1, within, share),
                told("2", 1.4, within, share),
                told("3", 3.0, within, share)));
    assertThat(mean(posterior, "mean")).isCloseTo(0.609426285, within(1e-9));
    assertThat(Math.exp(mean(posterior, "mean"))).isCloseTo(1.839, within(0.0005));
    assertThat(sd(posterior, "mean")).isCloseTo(0.366736939, within(1e-9));
  }

  @Test
  void one_source_splits_what_it_learns_by_the_doubt_of_each_part() {
    // By hand: the shift of the sum is V/(V + e) of ln(10/25), a part's its share of V.
    Share share = new Share(25, Map.of("a", 0.5, "b", 0.3), Map.of("own", 0.9));
    Posterior posterior = Posterior.of(List.of(told("d", 10, ERROR, share)));
    double shift = Math.log(10 / 25.0) / (1.7 + ERROR);
    assertThat(mean(posterior, "a")).isCloseTo(0.5 * shift, within(1e-10));
    assertThat(mean(posterior, "b")).isCloseTo(0.3 * shift, within(1e-10));
    assertThat(mean(posterior, "own")).isCloseTo(0.9 * shift, within(1e-10));
    assertThat(sd(posterior, "a")).isCloseTo(Math.sqrt(0.5 - 0.25 / (1.7 + ERROR)), within(1e-10));
    Term term = posterior.applied(new Term(25, Map.of("a", 0.5, "b", 0.3, "own", 0.9)));
    assertThat(term.typical()).isCloseTo(25 * Math.exp(1.7 * shift), within(1e-8));
    assertThat(term.variance()).isCloseTo(1.7 * ERROR / (1.7 + ERROR), within(1e-10));
  }

  @Test
  void what_was_not_observed_stays_as_it_was() {
    Posterior posterior =
        Posterior.of(
            List.of(told("d", 10, ERROR, new Share(25, Map.of("a", 0.5, "sure", 0.0), Map.of()))));
    Term other = new Term(3, Map.of("c", 0.4, "sure", 0.0));
    assertThat(posterior.applied(other)).isSameAs(other);
    assertThat(posterior.part("sure")).isEmpty();
    assertThat(Posterior.of(List.of())).isSameAs(Posterior.NONE);
    assertThat(Posterior.NONE.applied(other)).isSameAs(other);
  }

  @Test
  void a_sum_of_learned_terms_has_the_covariance_of_the_parts() {
    // By hand for two terms a + x and a + y after one observation of the first: covariance of a
    // with
    // each from the 2 x 2 update.
    double v = 0.5 + 0.9 + ERROR;
    Posterior posterior =
        Posterior.of(
            List.of(told("d", 10, ERROR, new Share(25, Map.of("a", 0.5), Map.of("x", 0.9)))));
    Term first = posterior.applied(new Term(25, Map.of("a", 0.5, "x", 0.9)));
    Term second = posterior.applied(new Term(4, Map.of("a", 0.5, "y", 0.3)));
    double v11 = 1.4 - 1.4 * 1.4 / v;
    double v22 = 0.8 - 0.5 * 0.5 / v;
    double v12 = 0.5 - 1.4 * 0.5 / v;
    double e1 = first.typical() * Math.exp(v11 / 2);
    double e2 = second.typical() * Math.exp(v22 / 2);
    double variance = (v11 * e1 * e1 + 2 * v12 * e1 * e2 + v22 * e2 * e2) / square(e1 + e2);
    Estimate sum = LognormalSum.of(List.of(first, second));
    assertThat(sum.sigma()).isCloseTo(Math.sqrt(variance), within(1e-10));
    assertThat(sum.central()).isCloseTo((e1 + e2) * Math.exp(-variance / 2), within(1e-8));
  }

  @Test
  void one_result_below_detection_has_the_moments_of_the_truncated_normal() {
    // R 4.2.2: integrate() over dnorm(p, 0, 1.3) * pnorm((log(10/25) - p)/0.15); learning.R.
    Share share = new Share(25, Map.of("p", 1.69), Map.of());
    Posterior posterior = Posterior.of(List.of(below("d", 10, ERROR, share)));
    assertThat(mean(posterior, "p")).isCloseTo(-1.66678197, within(1e-5));
    assertThat(sd(posterior, "p")).isCloseTo(0.647324182, within(1e-5));
  }

  @Test
  void told_and_below_together_come_close_to_the_whole_posterior() {
    // R 4.2.2: integrate(), learning.R: -0.599831509 and 0.441136797.
    Posterior posterior =
        Posterior.of(
            List.of(
                told("1", 12, ERROR, shared("1")),
                told("2", 30, ERROR, shared("2")),
                below("3", 8, ERROR, shared("3"))));
    assertThat(mean(posterior, "p")).isCloseTo(-0.599831509, within(2e-3));
    assertThat(sd(posterior, "p")).isCloseTo(0.441136797, within(2e-3));
  }

  @Test
  void a_row_of_results_below_detection_comes_close_to_the_whole_posterior() {
    // R 4.2.2: integrate(), learning.R: -2.78334074 and 0.440289945.
    List<Observation> row = new ArrayList<>();
    IntStream.range(0, 12).forEach(i -> row.add(below("" + i, 5, ERROR, shared("" + i))));
    Posterior posterior = Posterior.of(row);
    assertThat(mean(posterior, "p")).isCloseTo(-2.78334074, within(0.02));
    assertThat(sd(posterior, "p")).isCloseTo(0.440289945, within(0.02));
  }

  private static Share shared(String day) {
    return new Share(25, Map.of("p", 1.0), Map.of("own " + day, 0.64));
  }

  @Test
  void a_limit_of_detection_far_above_the_estimate_teaches_nothing() {
    Share share = new Share(2, Map.of("p", 1.0), Map.of());
    Posterior posterior = Posterior.of(List.of(below("d", 1e6, ERROR, share)));
    assertThat(mean(posterior, "p")).isCloseTo(0, within(1e-9));
    assertThat(sd(posterior, "p")).isCloseTo(1, within(1e-9));
  }

  @Test
  void two_sources_in_one_sample_come_close_to_the_whole_posterior() {
    // R 4.2.2, a grid of 3001 x 2401, learning.R: the log of the sum has mean 2.35928 and sd
    // 0.145444, the parts the means -1.22239 and -0.635825.
    Map<String, Double> a = Map.of("a", 1.0);
    Map<String, Double> b = Map.of("b", 0.49);
    Observation sample =
        told("d", 10, ERROR, new Share(15, a, Map.of()), new Share(10, b, Map.of()));
    Posterior posterior = Posterior.of(List.of(sample));
    assertThat(mean(posterior, "a")).isCloseTo(-1.22239, within(5e-3));
    assertThat(mean(posterior, "b")).isCloseTo(-0.635825, within(5e-3));
    Term first = posterior.applied(new Term(15, a));
    Term second = posterior.applied(new Term(10, b));
    double[] shifts = {Math.log(first.typical() / 15), Math.log(second.typical() / 10)};
    Estimate sum =
        posterior
            .sums(
                List.of(first.doubts(), second.doubts()),
                List.of(new ObservedSum.Result(sample, new int[] {0, 1}, shifts)))
            .orElseThrow()
            .sum(new double[] {first.typical(), second.typical()});
    assertThat(Math.log(sum.central())).isCloseTo(2.35928, within(0.005));
    assertThat(sum.sigma()).isCloseTo(0.145444, within(0.003));
    Fit fit = posterior.fits().get(sample);
    assertThat(fit.predicted()).isCloseTo(2.35928, within(1e-3));
    assertThat(Math.sqrt(fit.variance())).isCloseTo(0.145444, within(1e-3));
    Estimate before = LognormalSum.of(List.of(new Term(15, a), new Term(10, b)));
    assertThat(fit.without()).isCloseTo(Math.log(before.central()), within(1e-5));
    assertThat(fit.withoutVariance()).isCloseTo(square(before.sigma()), within(1e-5));
  }

  @Test
  void a_fit_without_an_observation_is_the_prediction_of_the_others() {
    Share share = new Share(1, Map.of("mean", 0.8), Map.of());
    Observation odd = told("3", 40, 0.3, share);
    List<Observation> others = List.of(told("1", 2, 0.3, share), told("2", 3, 0.3, share));
    List<Observation> all = new ArrayList<>(others);
    all.add(odd);
    Fit fit = Posterior.of(all).fits().get(odd);
    Posterior rest = Posterior.of(others);
    assertThat(fit.without()).isCloseTo(mean(rest, "mean"), within(1e-9));
    assertThat(Math.sqrt(fit.withoutVariance())).isCloseTo(sd(rest, "mean"), within(1e-9));
    double far = (Math.log(40) - mean(rest, "mean")) / Math.sqrt(square(sd(rest, "mean")) + 0.3);
    assertThat(fit.z(odd)).isCloseTo(far, within(1e-9));
  }

  @Test
  void below_detection_disagrees_only_where_much_was_predicted() {
    Share share = new Share(20, Map.of("mean", 0.5), Map.of());
    Observation high = below("1", 100, ERROR, share);
    assertThat(Posterior.of(List.of(high)).fits().get(high).z(high)).isZero();
    Observation low = below("1", 0.1, ERROR, share);
    assertThat(Posterior.of(List.of(low)).fits().get(low).z(low))
        .isCloseTo(Math.log(0.1 / 20) / Math.sqrt(0.5 + ERROR), within(1e-6));
  }

  @Test
  void a_mean_of_nothing_is_no_observation() {
    assertThatThrownBy(() -> told("1", 2, ERROR)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Share(0, Map.of(), Map.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static double square(double x) {
    return x * x;
  }
}
