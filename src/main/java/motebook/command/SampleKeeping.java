package motebook.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.desk.Ledger;
import motebook.desk.Teaching;
import motebook.desk.Unlikely;
import motebook.journal.Book;
import motebook.model.Refusal;
import motebook.model.Sample;
import motebook.report.EvidenceReport;
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
   * @throws Refusal where the book holds a reading of the same, or something speaks against a
   *     result and nobody can be asked
   */
  Optional<Kept> keep(Desk desk, Book book, List<Sample> samples, String what) {
    for (Sample sample : samples) {
      book.samples().standing(sample).ifPresent(there -> refuse(desk, there));
    }
    List<Unlikely> unlikely =
        samples.stream()
            .flatMap(sample -> SampleCommand.unlikely(sample, desk, book).stream())
            .distinct()
            .toList();
    Teaching teaching = new Ledger(book).teaching(samples);
    List<String> doubts = new ArrayList<>(Confirmation.describe(unlikely, book.settings().units()));
    doubts.addAll(TeachingReport.doubts(teaching));
    return confirmation.given(desk.world(), doubts, TeachingReport.moved(teaching))
        ? Optional.of(new Kept(book.samples().add(samples, what), teaching))
        : Optional.empty();
  }

  private static void refuse(Desk desk, Sample there) {
    throw new Refusal(
        "The book holds a result of that person or place, time and fraction already, as sample "
            + there.id()
            + ": "
            + EvidenceReport.describe(there)
            + ". Remove it first if the new one is to take its place: "
            + desk.program().command("sample remove " + there.id())
            + ".");
  }
}
