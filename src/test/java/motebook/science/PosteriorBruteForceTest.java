package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import motebook.science.LognormalSum.Term;
import motebook.science.Observation.Share;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The posterior against one by importance sampling: both ends and the middle within 5 %. */
class PosteriorBruteForceTest {
  private static final double ERROR = Math.log1p(0.15 * 0.15);
  private static final double[] TYPICAL = {25, 8, 3, 1.5, 1, 0.7, 0.5, 0.3};
  private static final int DRAWS = 400_000;
  private static final double FIVE_PERCENT = 0.05;

  /** What an operation adds, with a part of its own for the day and for each session. */
  private static Share share(int operation, double typical, String day, String session) {
    return new Share(
        typical, common(operation), Map.of("own " + operation + day, 0.6, session, 0.221));
  }

  // The operation's figure between 9 and 62, the sanding family's materials, the air model.
  private static Map<String, Double> common(int operation) {
    Map<String, Double> common = new HashMap<>();
    common.put("model", Math.pow(Math.log(2), 2));
    common.put("operation " + operation, operation % 3 == 0 ? 0.344 : 0.2);
    if (operation % 2 == 0) {
      common.put("material", 0.15);
    }
    return common;
  }

  private static Map<String, Double> later(int operation) {
    Map<String, Double> parts = common(operation);
    parts.put("another day " + operation, 0.6);
    return parts;
  }

  /** A sample over some operations, in a ratio to what they typically add together. */
  private static Observation over(int operations, double ratio, boolean below, String day) {
    List<Share> shares =
        IntStream.range(0, operations)
            .mapToObj(i -> share(i, TYPICAL[i], day, day + " session " + i))
            .collect(Collectors.toList());
    double sum = shares.stream().mapToDouble(Share::typical).sum();
    return new Observation(day, Math.log(ratio * sum), ERROR, below, shares);
  }

  @ParameterizedTest(name = "{0} operations, {1} of the estimate, below: {2}")
  @CsvSource({
    "1, 0.0333, false",
    "1, 10, false",
    "1, 0.1, true",
    "1, 1, true",
    "2, 0.0333, false",
    "2, 0.3, false",
    "2, 1, false",
    "2, 10, false",
    "2, 0.1, true",
    "3, 0.0333, false",
    "3, 1, false",
    "3, 10, false",
    "3, 0.0333, true",
    "3, 1, true",
    "5, 0.0333, false",
    "5, 3, false",
    "5, 0.1, true",
    "8, 0.0333, false",
    "8, 0.3, false",
    "8, 1, false",
    "8, 10, false",
    "8, 0.0333, true",
    "8, 0.5, true"
  })
  void one_sample_over_some_operations(int operations, double ratio, boolean below) {
    matches(List.of(over(operations, ratio, below, "day")), FIVE_PERCENT);
  }

  static Stream<Arguments> several() {
    List<Share> sanding = List.of(share(0, 25, "a", "s1"));
    List<Share> again = List.of(share(0, 20, "a", "s2"));
    List<Share> both = List.of(share(0, 15, "a", "s1"), share(1, 6, "a", "s3"));
    List<Share> others = List.of(share(1, 8, "b", "s4"), share(2, 3, "b", "s5"));
    return Stream.of(
        Arguments.of(
            "two that differ on one day, one on another",
            List.of(
                of("a", 4, false, sanding), of("a", 12, false, again), of("b", 2, false, others))),
        Arguments.of(
            "one over two sessions, one of which has a result of its own",
            List.of(of("a", 3, false, both), of("a", 1, false, sanding))),
        Arguments.of(
            "low ones, one of them below detection",
            List.of(of("a", 0.9, false, both), of("b", 0.6, true, others))),
        Arguments.of(
            "full shifts on three days",
            List.of(over(4, 0.2, false, "a"), over(4, 0.1, false, "b"), over(3, 0.4, false, "c"))),
        Arguments.of(
            "one high, one low, one below detection",
            List.of(over(3, 2, false, "a"), over(2, 0.3, false, "b"), over(3, 0.3, true, "c"))));
  }

  private static Observation of(String day, double result, boolean below, List<Share> shares) {
    return new Observation(day, Math.log(result), ERROR, below, shares);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("several")
  void several_samples(String what, List<Observation> observations) {
    assertThat(what).isNotEmpty();
    matches(observations, FIVE_PERCENT);
  }

  // Eighty times apart on two days: no normal has the shape of what is left.
  @Test
  void results_that_contradict_each_other_come_within_a_sixth() {
    matches(
        List.of(over(3, 8, false, "a"), over(2, 0.1, false, "b"), over(3, 0.3, true, "c")),
        1 / 6.0);
  }

  private static void matches(List<Observation> observations, double margin) {
    BruteForce brute = new BruteForce(observations, DRAWS);
    assertThat(brute.effectiveDraws()).as("draws that count").isGreaterThan(5_000);
    Posterior posterior = Posterior.of(observations);
    // each operation on another day
    for (int i = 0; i < TYPICAL.length; i++) {
      Map<String, Double> parts = later(i);
      Term after = posterior.applied(new Term(TYPICAL[i], parts));
      close(
          "operation " + i,
          LognormalSum.of(List.of(after)),
          brute.ofSum(Map.of(parts, TYPICAL[i])),
          margin);
    }
    for (String day :
        observations.stream().map(Observation::group).distinct().collect(Collectors.toList())) {
      sampledDay(day, observations, posterior, brute, margin);
    }
  }

  /** All that was sampled on a day, and an operation more that was not. */
  private static void sampledDay(
      String day,
      List<Observation> observations,
      Posterior posterior,
      BruteForce brute,
      double margin) {
    Map<Map<String, Double>, Double> typical = new LinkedHashMap<>();
    List<Observation> ofDay =
        observations.stream().filter(o -> o.group().equals(day)).collect(Collectors.toList());
    for (Observation o : ofDay) {
      for (Share share : o.shares()) {
        typical.put(parts(share), share.typical());
      }
    }
    typical.put(later(7), 2.0);
    List<Map<String, Double>> things = new ArrayList<>(typical.keySet());
    List<Term> terms =
        things.stream()
            .map(parts -> posterior.applied(new Term(typical.get(parts), parts)))
            .collect(Collectors.toList());
    List<ObservedSum.Result> results = new ArrayList<>();
    for (Observation o : ofDay) {
      int[] places = o.shares().stream().mapToInt(s -> things.indexOf(parts(s))).toArray();
      double[] shifts =
          Arrays.stream(places)
              .mapToDouble(p -> Math.log(terms.get(p).typical() / typical.get(things.get(p))))
              .toArray();
      results.add(new ObservedSum.Result(o, places, shifts));
    }
    double[] medians = terms.stream().mapToDouble(Term::typical).toArray();
    Estimate sum =
        posterior
            .sums(terms.stream().map(Term::doubts).collect(Collectors.toList()), results)
            .map(sums -> sums.sum(medians))
            .orElseGet(() -> LognormalSum.of(terms));
    close("day " + day, sum, brute.ofSum(typical), margin);
  }

  private static Map<String, Double> parts(Share share) {
    Map<String, Double> all = new HashMap<>(share.common());
    all.putAll(share.own());
    return all;
  }

  private static void close(String what, Estimate estimate, double[] brute, double margin) {
    double[] ours = {estimate.low90(), estimate.central(), estimate.high90()};
    for (int i = 0; i < ours.length; i++) {
      assertThat(ours[i] / brute[i]).as(what + ", end " + i).isBetween(1 - margin, 1 + margin);
    }
  }
}
