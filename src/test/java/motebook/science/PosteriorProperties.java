package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import motebook.science.Observation.Share;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** What holds for every update. */
class PosteriorProperties {

  /** Days of one to three samples of one source each, with shared and own parts. */
  private static List<Observation> singles(Random random, int days) {
    List<Observation> all = new ArrayList<>();
    for (int day = 0; day < days; day++) {
      int samples = 1 + random.nextInt(3);
      for (int i = 0; i < samples; i++) {
        all.add(single(random, "day " + day));
      }
    }
    return all;
  }

  private static Observation single(Random random, String day) {
    Map<String, Double> common = new HashMap<>();
    common.put("model", 0.5);
    int operation = random.nextInt(4);
    common.put("operation " + operation, 0.2 + operation);
    if (random.nextBoolean()) {
      common.put("control", 0.7);
    }
    Share share =
        new Share(
            5 * Math.exp(random.nextGaussian()),
            common,
            Map.of("own " + operation + day, 0.4 + operation / 10.0));
    return new Observation(
        day, random.nextGaussian(), 0.02 + random.nextDouble(), false, List.of(share));
  }

  @Property(tries = 60)
  void single_sources_are_updated_as_by_one_dense_system(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 12) int days) {
    List<Observation> observations = singles(new Random(seed), days);
    TreeMap<String, Double> variances = new TreeMap<>();
    observations.forEach(o -> variances.putAll(parts(o)));
    List<String> names = List.copyOf(variances.keySet());
    RealMatrix precision = new Array2DRowRealMatrix(names.size(), names.size());
    RealVector pull = new ArrayRealVector(names.size());
    for (int i = 0; i < names.size(); i++) {
      precision.setEntry(i, i, 1 / variances.get(names.get(i)));
    }
    for (Observation o : observations) {
      RealVector row = new ArrayRealVector(names.size());
      parts(o).keySet().forEach(name -> row.setEntry(names.indexOf(name), 1));
      precision = precision.add(row.outerProduct(row).scalarMultiply(1 / o.variance()));
      double off = o.log() - Math.log(o.shares().get(0).typical());
      pull = pull.add(row.mapMultiply(off / o.variance()));
    }
    RealMatrix covariance = new LUDecomposition(precision).getSolver().getInverse();
    RealVector mean = covariance.operate(pull);
    Posterior posterior = Posterior.of(observations);
    for (int i = 0; i < names.size(); i++) {
      Part part = posterior.part(names.get(i)).orElseThrow();
      assertThat(part.shift()).isCloseTo(mean.getEntry(i), within(1e-8));
      for (int j = 0; j <= i; j++) {
        Part other = posterior.part(names.get(j)).orElseThrow();
        assertThat(covariance(part, other)).isCloseTo(covariance.getEntry(i, j), within(1e-9));
      }
    }
  }

  private static Map<String, Double> parts(Observation observation) {
    Map<String, Double> all = new HashMap<>(observation.shares().get(0).common());
    all.putAll(observation.shares().get(0).own());
    return all;
  }

  private static double covariance(Part a, Part b) {
    double sum = 0;
    for (Map.Entry<String, Double> entry : a.loadings().entrySet()) {
      sum += entry.getValue() * b.loadings().getOrDefault(entry.getKey(), 0.0);
    }
    return sum;
  }

  private static List<Observation> mixed(Random random, int days, boolean some) {
    List<Observation> all = new ArrayList<>();
    for (int day = 0; day < days; day++) {
      List<Share> shares = new ArrayList<>();
      for (int i = 0; i <= random.nextInt(4); i++) {
        shares.addAll(single(random, "day " + day).shares());
      }
      all.add(
          new Observation(
              "day " + day,
              2 * random.nextGaussian(),
              0.0225,
              some && random.nextBoolean(),
              shares));
    }
    return all;
  }

  @Property(tries = 100)
  void all_is_finite_and_no_doubt_doubles_with_results_below_detection_too(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 15) int days) {
    List<Observation> observations = mixed(new Random(seed), days, true);
    Posterior posterior = Posterior.of(observations);
    for (Observation o : observations) {
      for (Share share : o.shares()) {
        share
            .common()
            .forEach(
                (name, variance) -> {
                  Part part = posterior.part(name).orElseThrow();
                  assertThat(part.shift()).isFinite();
                  assertThat(covariance(part, part)).isLessThan(2 * variance);
                });
      }
    }
    posterior.fits().values().forEach(fit -> assertThat(fit.without()).isFinite());
  }

  @Property(tries = 40)
  void the_order_of_the_samples_changes_nothing(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 8) int days) {
    List<Observation> observations = mixed(new Random(seed), days, true);
    List<Observation> turned = new ArrayList<>(observations);
    Collections.reverse(turned);
    double one = Posterior.of(observations).part("model").orElseThrow().shift();
    double other = Posterior.of(turned).part("model").orElseThrow().shift();
    assertThat(other).isCloseTo(one, within(1e-5));
  }
}
