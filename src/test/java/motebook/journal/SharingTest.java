package motebook.journal;

import static motebook.journal.Shop.MONDAY;
import static motebook.journal.Shop.work;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Work;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book that several programs and threads have open at once. */
class SharingTest {
  private static final int THREADS = 8;
  private static final int EACH = 25;

  @TempDir Path folder;

  /** Runs the task in as many threads, all started at the same moment. */
  private static <T> List<T> together(int threads, Task<T> task) throws Exception {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    CyclicBarrier start = new CyclicBarrier(threads);
    try {
      List<Callable<T>> calls = new ArrayList<>();
      for (int i = 0; i < threads; i++) {
        int number = i;
        calls.add(
            () -> {
              start.await();
              return task.run(number);
            });
      }
      List<T> results = new ArrayList<>();
      for (Future<T> result : pool.invokeAll(calls)) {
        results.add(result.get());
      }
      return results;
    } finally {
      pool.shutdown();
    }
  }

  private interface Task<T> {
    T run(int number) throws Exception;
  }

  private static Work nth(int thread, int n) {
    LocalTime start = LocalTime.MIDNIGHT.plusMinutes(n);
    return work("me", MONDAY.plusDays(thread), start.toString(), 1);
  }

  @Test
  void many_that_begin_the_same_book_at_once_begin_one_book() throws Exception {
    List<List<Object>> seen =
        together(
            THREADS,
            number -> {
              try (Book book = Shop.open(folder)) {
                book.log(nth(number, 0));
                return List.of(
                    book.premises().people(), book.premises().places(MONDAY), book.settings());
              }
            });
    assertThat(new HashSet<>(seen)).hasSize(1);
    try (Book book = Shop.open(folder)) {
      assertThat(book.sessionCount()).isEqualTo(THREADS);
      assertThat(book.verify()).isEmpty();
    }
  }

  @Test
  void no_entry_is_lost_when_many_write_through_their_own_connections() throws Exception {
    Shop.open(folder).close();
    List<Set<Long>> written =
        together(
            THREADS,
            number -> {
              try (Book book = Shop.open(folder)) {
                return logEach(book, number);
              }
            });
    assertAllThere(written);
  }

  @Test
  void no_entry_is_lost_when_many_write_through_one_book() throws Exception {
    List<Set<Long>> written;
    try (Book book = Shop.open(folder)) {
      written = together(THREADS, number -> logEach(book, number));
    }
    assertAllThere(written);
  }

  private static Set<Long> logEach(Book book, int number) {
    Set<Long> ids = new HashSet<>();
    for (int n = 0; n < EACH; n++) {
      ids.add(book.log(nth(number, n)).id());
    }
    return ids;
  }

  private void assertAllThere(List<Set<Long>> written) {
    Set<Long> all = new HashSet<>();
    written.forEach(all::addAll);
    try (Book book = Shop.open(folder)) {
      assertThat(book.sessionsBetween(MONDAY, MONDAY.plusDays(THREADS)))
          .extracting(Session::id)
          .hasSize(THREADS * EACH)
          .containsExactlyInAnyOrderElementsOf(all);
      assertThat(book.changes().history(1000)).hasSize(THREADS * EACH);
      assertThat(book.verify()).isEmpty();
    }
  }

  @Test
  void of_many_that_log_the_same_time_one_is_written_and_the_rest_refused() throws Exception {
    Shop.open(folder).close();
    List<Boolean> written =
        together(
            THREADS,
            number -> {
              try (Book book = Shop.open(folder)) {
                book.log(work("09:00", 30 + number));
                return true;
              } catch (Refusal e) {
                assertThat(e).hasMessageContaining("Overlaps session");
                return false;
              }
            });
    assertThat(written).containsOnlyOnce(true);
  }

  @Test
  void a_screen_notices_what_another_window_wrote_and_not_what_it_wrote_itself() {
    try (Book one = Shop.open(folder);
        Book other = Shop.open(folder)) {
      long before = one.dataVersion();
      one.log(work("09:00", 5));
      assertThat(one.dataVersion()).isEqualTo(before);
      other.log(work("10:00", 5));
      assertThat(one.dataVersion()).isNotEqualTo(before);
      assertThat(one.sessionsOn(MONDAY)).hasSize(2);
    }
  }
}
