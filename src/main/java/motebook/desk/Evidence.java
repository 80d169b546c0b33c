package motebook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import motebook.journal.Settings;
import motebook.model.Sample;
import motebook.reference.Operation;
import motebook.reference.Reference;
import motebook.science.Estimate;
import motebook.science.Fit;
import motebook.science.Observation;

/**
 * The question "what do the measurements say": each sample beside what was estimated, and each
 * operation before and after.
 *
 * @param samples in the order of the book
 * @param operations those that the samples bear on, most changed first
 * @param groups the statistics of each person's work of one kind on three days or more
 */
public record Evidence(List<Line> samples, List<Lesson> operations, List<ExposureGroup> groups) {
  /**
   * A sample beside the estimate.
   *
   * @param sample the sample
   * @param measured what it stands for
   * @param agreement how it agrees with the estimate; none where nothing that makes dust was logged
   */
  public record Line(Sample sample, Measured measured, Optional<Agreement> agreement) {}

  /**
   * How a sample agrees with all else that is known.
   *
   * @param estimatedMgPerM3 the estimate from everything but this sample
   * @param learnedMgPerM3 the estimate from everything
   * @param ratio measured to estimated; for a result below detection the limit of it
   * @param z deviations that the result lies above the estimate; for one below detection only where
   *     more was estimated than the limit of detection
   * @param disagrees whether it lies so far off that one of the two must be looked at
   */
  public record Agreement(
      double estimatedMgPerM3, double learnedMgPerM3, double ratio, double z, boolean disagrees) {
    static Agreement of(Measured measured, Observation seen, Fit fit) {
      double estimated = Math.exp(fit.without());
      return new Agreement(
          estimated,
          Math.exp(fit.predicted()),
          measured.mgPerM3() / estimated,
          fit.z(seen),
          fit.disagrees(seen));
    }
  }

  /**
   * What was learned of an operation: one session of it without a control in the default shop, on a
   * wood of factor 1.
   *
   * @param operation the operation
   * @param before mg/m³ inhalable by the published figures
   * @param after the same by what was learned
   */
  public record Lesson(Operation operation, Estimate before, Estimate after) {
    /** How much the middle has moved, as a logarithm. */
    double moved() {
      return Math.log(after.central() / before.central());
    }
  }

  /**
   * Answers from all samples of a book and what they taught.
   *
   * @param reckon a sample's person's day by what was learned
   */
  static Evidence of(
      List<Sample> samples,
      Learned learned,
      Reference reference,
      Settings settings,
      Function<Sample, DayReckoning> reckon) {
    Set<String> sampled = learned.operations();
    List<Lesson> lessons = new ArrayList<>();
    for (Operation operation : reference.operations()) {
      if (sampled.contains(operation.key())) {
        lessons.add(lesson(Kind.of(operation, reference), learned));
      }
    }
    lessons.sort((a, b) -> Double.compare(Math.abs(b.moved()), Math.abs(a.moved())));
    return new Evidence(
        samples.stream()
            .map(sample -> new Line(sample, Measured.of(sample), learned.agreement(sample)))
            .toList(),
        List.copyOf(lessons),
        ExposureGroup.of(samples, learned, reference, settings, reckon));
  }

  private static Lesson lesson(Kind kind, Learned learned) {
    return new Lesson(
        kind.operation(),
        Teaching.estimate(kind, Learned.NOTHING),
        Teaching.estimate(kind, learned));
  }
}
