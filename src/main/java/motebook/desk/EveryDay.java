package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import motebook.model.Session;

/**
 * Every day of everybody estimated anew, a year at a time: while one year is read, those before it
 * are reckoned on the machine's other cores. No more than a few years are held at once.
 */
final class EveryDay {
  private static final int MONTHS = 12;

  private final BiFunction<LocalDate, LocalDate, List<Session>> read;
  private final Function<LocalDate, Shop> shops;
  private final BiFunction<History, LocalDate, CreditRule> credits;

  /**
   * A past to be estimated.
   *
   * @param read everyone's sessions of some days, both included, by day and start
   * @param shops the shop on a day; what its masks are credited is not asked for
   * @param credits what masks count for up to a day, by a past
   */
  EveryDay(
      BiFunction<LocalDate, LocalDate, List<Session>> read,
      Function<LocalDate, Shop> shops,
      BiFunction<History, LocalDate, CreditRule> credits) {
    this.read = read;
    this.shops = shops;
    this.credits = credits;
  }

  /** Tells each estimate, by day and then by who began first. */
  void tell(LocalDate first, LocalDate last, Consumer<DayEstimate> each) {
    int cores = Runtime.getRuntime().availableProcessors();
    ExecutorService pool = Executors.newFixedThreadPool(cores);
    try {
      tell(first, last, each, pool, cores + 1);
    } finally {
      pool.shutdownNow();
    }
  }

  private void tell(
      LocalDate first, LocalDate last, Consumer<DayEstimate> each, Executor pool, int most) {
    Deque<CompletableFuture<List<DayEstimate>>> begun = new ArrayDeque<>();
    Stretch before = new Stretch(first, first.minusDays(1), new TreeMap<>());
    for (LocalDate from = first; !from.isAfter(last); from = before.last.plusDays(1)) {
      LocalDate end = from.plusMonths(MONTHS).minusDays(1);
      Stretch stretch = read(from, end.isAfter(last) ? last : end);
      if (!stretch.days.isEmpty()) {
        Held held = new Held(before, stretch);
        begun.add(CompletableFuture.supplyAsync(held::estimates, pool));
      }
      before = stretch;
      if (begun.size() > most) {
        result(begun.remove()).forEach(each);
      }
    }
    begun.forEach(one -> result(one).forEach(each));
  }

  private static <T> T result(CompletableFuture<T> begun) {
    try {
      return begun.join();
    } catch (CompletionException e) {
      throw e.getCause() instanceof RuntimeException cause ? cause : e;
    }
  }

  private Stretch read(LocalDate first, LocalDate last) {
    NavigableMap<LocalDate, List<Session>> days = new TreeMap<>();
    for (Session session : read.apply(first, last)) {
      days.computeIfAbsent(session.work().date(), any -> new ArrayList<>()).add(session);
    }
    return new Stretch(first, last, days);
  }

  private record Stretch(
      LocalDate first, LocalDate last, NavigableMap<LocalDate, List<Session>> days) {
    void addTo(List<Session> all, LocalDate from, LocalDate to) {
      if (!from.isAfter(to)) {
        days.subMap(from, true, to, true).values().forEach(all::addAll);
      }
    }
  }

  /** A stretch and the one before it, in which most that it looks back at lies. */
  private final class Held implements History {
    private final Stretch before;
    private final Stretch stretch;

    Held(Stretch before, Stretch stretch) {
      this.before = before;
      this.stretch = stretch;
    }

    @Override
    public List<Session> between(LocalDate first, LocalDate last) {
      List<Session> all = new ArrayList<>();
      LocalDate unread = before.first.minusDays(1);
      if (first.isBefore(before.first)) {
        all.addAll(read.apply(first, last.isBefore(unread) ? last : unread));
      }
      before.addTo(all, first, last);
      stretch.addTo(all, first, last);
      return all;
    }

    @Override
    public Shop shop(LocalDate day) {
      return shops.apply(day);
    }

    List<DayEstimate> estimates() {
      CreditRule rule = credits.apply(this, stretch.last);
      List<DayEstimate> estimates = new ArrayList<>();
      stretch.days.forEach(
          (date, sessions) -> {
            DayWork work = DayWork.of(date, sessions, shop(date).crediting(rule));
            sessions.stream()
                .map(session -> session.work().person())
                .distinct()
                .map(person -> DayEstimate.of(new DayReckoning(person, work)))
                .forEach(estimates::add);
          });
      return estimates;
    }
  }
}
