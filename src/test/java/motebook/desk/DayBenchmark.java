package motebook.desk;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import motebook.model.Session;
import motebook.model.Work;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * What a day costs to reckon as the shop fills up; prints the ratio of a full shop to one person.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class DayBenchmark {
  /** How many people work six sessions each in the one room. */
  @Param({"1", "20"})
  public int people;

  private List<Session> sessions;
  private Shop shop;

  /** Fills the shop. */
  @Setup
  public void fill() {
    shop = new Shops().shop();
    sessions = new ArrayList<>();
    for (int p = 0; p < people; p++) {
      for (int s = 0; s < 6; s++) {
        sessions.add(new Session(sessions.size() + 1, work(p, s)));
      }
    }
  }

  private static Work work(int person, int session) {
    return new Work(
        person == 0 ? "me" : "Person " + (char) ('A' + person),
        "shop",
        Shops.DAY,
        LocalTime.of(8 + session, person),
        45,
        session % 2 == 0 ? "orbital-sanding" : "table-saw",
        Optional.of("oak"),
        List.of(),
        Optional.empty(),
        "");
  }

  /** One person's day beside all the others. */
  @Benchmark
  public DayReport day() {
    return Day.report(Shops.DAY, "me", sessions, shop);
  }

  /** Runs the benchmark and prints the ratio. */
  public static void main(String[] arguments) throws RunnerException {
    List<RunResult> results =
        List.copyOf(
            new Runner(new OptionsBuilder().include(DayBenchmark.class.getName()).build()).run());
    double one = results.get(0).getPrimaryResult().getScore();
    double twenty = results.get(1).getPrimaryResult().getScore();
    System.out.printf("a day beside 20 people costs %.1f x a day alone%n", twenty / one);
  }
}
