package motebook.command;

import java.util.List;
import java.util.Optional;
import motebook.desk.Ledger;
import motebook.desk.Teaching;
import motebook.desk.Unlikely;
import motebook.journal.Book;
import motebook.model.Refusal;
import motebook.model.Sample;
import motebook.report.TeachingReport;
import picocli.CommandLine.Mixin;

/** Keeps samples once it is clear what they would change. */
final class SampleKeeping {
  @Mixin private Confirmation confirmation;

  /**
   * What was kept.
   *
   * @param samples with their numbers
   * @param teaching what they changed
   */
  record Kept(List<Sample> samples, Teaching teaching) {}

  /**
   * Keeps samples, asking first where a person sits at the terminal.
   *
   * @param what the change in words, for the history
   * @return nothing where the answer was no
   * @throws Refusal where a result lies suspiciously low and nobody can be asked
   */
  Optional<Kept> keep(Desk desk, Book book, List<Sample> samples, String what) {
    for (Sample sample : samples) {
      book.samples().requireFresh(sample);
    }
    List<Unlikely> unlikely =
        samples.stream()
            .flatMap(sample -> SampleCommand.unlikely(sample, desk, book).stream())
            .distinct()
            .toList();
    if (!confirmation.given(desk.world(), unlikely, book.settings().units())) {
      return Optional.empty();
    }
    Teaching teaching = new Ledger(book).teaching(samples);
    if (!confirmation.yes() && !agreed(desk.world(), teaching)) {
      desk.out().println("Nothing was changed.");
      return Optional.empty();
    }
    return Optional.of(new Kept(book.samples().add(samples, what), teaching));
  }

  private static boolean agreed(World world, Teaching teaching) {
    List<String> low = TeachingReport.low(teaching);
    if (!Asking.possible(world)) {
      if (!low.isEmpty()) {
        throw new Refusal(
            String.join(" ", low) + " Were pump and filter in order? Keep it with --yes.");
      }
      return true;
    }
    low.forEach(world.err()::println);
    if (!low.isEmpty() && !Asking.yes(world, "Were pump and filter in order?")) {
      return false;
    }
    List<String> moved = TeachingReport.moved(teaching);
    moved.forEach(world.err()::println);
    return moved.isEmpty() || Asking.yes(world, "Keep it and change these?");
  }
}
