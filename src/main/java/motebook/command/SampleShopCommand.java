package motebook.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import motebook.desk.Intake;
import motebook.journal.Book;
import motebook.model.Refusal;
import picocli.CommandLine.Command;

@Command(
    name = "sample-shop",
    description = "Fills a fresh book with twelve weeks of an invented shop, to look around in.")
final class SampleShopCommand implements Callable<Integer> {
  private final Desk desk;

  SampleShopCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    LocalDate last = fill();
    desk.out().println("The sample shop is in " + desk.bookFile());
    desk.out().println("Its last working day: " + desk.program().command("day " + last));
    return ExitCode.DONE;
  }

  /** Fills the book and tells the last working day in it. */
  LocalDate fill() {
    SampleShop sample = new SampleShop(desk.today());
    refuseWorkedBook();
    sample.commands().forEach(this::run);
    try (Book book = desk.open()) {
      Intake.log(book, desk.scene(book), sample.spokenLines());
    }
    return sample.lastWorkingDay();
  }

  private void refuseWorkedBook() {
    try (Book book = desk.open()) {
      if (book.hasSessions()) {
        throw new Refusal(
            "The book "
                + book.file()
                + " has sessions already; the sample shop goes into a fresh book only. Name one"
                + " with --book FILE.");
      }
    }
  }

  // The sample's commands take the way that a person's take.
  private void run(List<String> command) {
    List<String> words = new ArrayList<>(command);
    words.addAll(List.of("--book", desk.bookFile().toString()));
    int code = Commands.run(desk.world().mute(), words.toArray(String[]::new));
    if (code != ExitCode.DONE) {
      throw new IllegalStateException("the sample's command " + command + " ended with " + code);
    }
  }
}
