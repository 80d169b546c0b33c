package motebook.journal;

import static motebook.journal.Shop.CLOCK;
import static motebook.journal.Shop.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StoreTest {
  @TempDir Path folder;
  private Store store;
  private People people;

  @BeforeEach
  void open() {
    Shop.open(folder).close();
    store = Connections.open(Shop.file(folder), Connections.PATIENCE);
    people = new People(store);
  }

  @AfterEach
  void close() {
    store.close();
  }

  private Changes changes() {
    return new Changes(store, CLOCK, new Copies(store));
  }

  @Test
  void the_first_error_is_the_one_thrown_and_nothing_is_written() {
    RuntimeException first = new RuntimeException("first");
    assertThatThrownBy(
            () ->
                changes()
                    .make(
                        Deed.added(Deed.Subject.PERSON, "", "Added two"),
                        () -> {
                          people.add("Ana");
                          throw first;
                        }))
        .isSameAs(first)
        .hasNoSuppressedExceptions();
    assertThat(people.all()).hasSize(1);
    assertThat(changes().history(9)).isEmpty();
  }

  @Test
  void an_error_while_rolling_back_is_kept_beside_the_first() {
    RuntimeException first = new RuntimeException("first");
    assertThatThrownBy(
            () ->
                store.atomically(
                    () -> {
                      store.run("roll-back");
                      throw first;
                    }))
        .isSameAs(first)
        .satisfies(e -> assertThat(e.getSuppressed()).hasSize(1));
  }

  @Test
  void a_transaction_within_a_transaction_is_a_fault_of_the_program() {
    assertThatThrownBy(() -> store.atomically(() -> store.atomically(() -> "inner")))
        .isInstanceOf(IllegalStateException.class);
    assertThat(people.all()).hasSize(1);
  }

  @Test
  void a_full_disk_is_told_and_nothing_is_half_written() {
    List<String> before = Shop.content(folder);
    store.script("PRAGMA max_page_count = 1");
    AtomicInteger written = new AtomicInteger();
    Logging logging =
        new Logging(store, new Sessions(store, Clock.systemUTC()), people, new Places(store));
    assertThatThrownBy(
            () ->
                changes()
                    .make(
                        Deed.added(Deed.Subject.SESSION, "", "Many"),
                        () -> {
                          for (int n = 0; ; n++) {
                            logging.log(
                                work("me", Shop.MONDAY.plusDays(n), "09:00", 5), Shop.BERLIN);
                            written.incrementAndGet();
                          }
                        }))
        .isInstanceOf(BookTrouble.class)
        .hasMessageContainingAll(Shop.file(folder).toString(), "is full", "Make room");
    assertThat(written.get()).isPositive();
    assertThat(Shop.content(folder)).isEqualTo(before);
    store.script("PRAGMA max_page_count = 100000");
    changes()
        .make(
            Deed.added(Deed.Subject.SESSION, "", "One"),
            () -> logging.log(work("09:00", 5), Shop.BERLIN));
    assertThat(changes().history(9)).extracting(Change::what).containsExactly("One");
    assertThat(Checkup.problems(store)).isEmpty();
  }
}
