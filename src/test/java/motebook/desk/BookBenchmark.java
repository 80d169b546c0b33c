package motebook.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import motebook.journal.Book;
import motebook.journal.LongBook;

/**
 * What a long book and measured samples cost, as ratios of one run: a week of 200,000 sessions in
 * 40 years against the same week of one year; every day of everybody in 40 years reckoned anew with
 * what samples taught, against the time that SQLite needs to read the rows; a day with 300 samples
 * against one with none.
 */
public final class BookBenchmark {
  private static final int LONG = 200_000;
  private static final int YEAR = 4_940;
  private static final int SAMPLES = 250;
  private static final int MANY_SAMPLES = 300;
  private static final int WARM = 8;
  private static final int RUNS = 9;

  private static long reports;

  private BookBenchmark() {}

  /** Runs it, or writes the two books with {@code write FOLDER} for whole commands to be timed. */
  public static void main(String[] arguments) throws IOException {
    boolean write = arguments.length > 1 && arguments[0].equals("write");
    Path folder = write ? Path.of(arguments[1]) : Files.createTempDirectory("books");
    Path longBook = folder.resolve("long.db");
    Path yearBook = folder.resolve("year.db");
    LongBook.write(longBook, LONG, SAMPLES);
    LongBook.write(yearBook, YEAR, SAMPLES);
    if (write) {
      return;
    }
    Path plain = folder.resolve("plain.db");
    Path measured = folder.resolve("measured.db");
    LongBook.write(plain, 2 * YEAR, 0);
    LongBook.write(measured, 2 * YEAR, MANY_SAMPLES);
    compare(
        "a week of a book of 40 years against one year",
        longBook,
        yearBook,
        l -> l.review(LongBook.LAST, "me"));
    compare(
        "a day with 300 samples against none", measured, plain, l -> l.day(LongBook.LAST, "me"));
    history(longBook);
  }

  /** A question that is put to a book anew each time. */
  private interface Question {
    Object ask(Ledger ledger);
  }

  private static void compare(String what, Path one, Path other, Question question) {
    try (Book first = Book.open(one, LongBook.clock());
        Book second = Book.open(other, LongBook.clock())) {
      long[] ofFirst = new long[RUNS];
      long[] ofSecond = new long[RUNS];
      for (int run = -WARM; run < RUNS; run++) {
        long firstTime = time(() -> question.ask(new Ledger(first)));
        long secondTime = time(() -> question.ask(new Ledger(second)));
        if (run >= 0) {
          ofFirst[run] = firstTime;
          ofSecond[run] = secondTime;
        }
      }
      say(what, median(ofFirst), median(ofSecond));
    }
  }

  private static void history(Path file) {
    long[] reckoned = new long[RUNS / 2];
    long[] read = new long[RUNS / 2];
    try (Book book = Book.open(file, LongBook.clock())) {
      for (int run = -WARM / 2; run < read.length; run++) {
        long readTime = time(() -> LongBook.readThrough(file));
        long reckonedTime =
            time(
                () ->
                    new Ledger(book)
                        .everyDay(LocalDate.of(1900, 1, 1), LongBook.LAST, estimate -> reports++));
        if (run >= 0) {
          read[run] = readTime;
          reckoned[run] = reckonedTime;
        }
      }
    }
    say("40 years reckoned anew against SQLite's reading", median(reckoned), median(read));
    System.out.printf(
        Locale.ROOT, "  (%d days of somebody in each run)%n", reports / (WARM / 2 + RUNS / 2));
  }

  private static long time(Runnable work) {
    long from = System.nanoTime();
    work.run();
    return System.nanoTime() - from;
  }

  private static long median(long[] times) {
    Arrays.sort(times);
    return times[times.length / 2];
  }

  private static void say(String what, long one, long other) {
    System.out.printf(
        Locale.ROOT,
        "%s: %.2f x (%.0f ms against %.0f ms)%n",
        what,
        (double) one / other,
        one / 1e6,
        other / 1e6);
  }
}
