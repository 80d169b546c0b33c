package motebook.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.journal.Copy;
import motebook.journal.CopyShelf;
import motebook.model.Refusal;
import motebook.report.Json;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "backup",
    description = {
      "Makes a checked copy of the book, or lists the copies there are.",
      "Example: motebook backup /media/stick"
    })
final class BackupCommand implements Callable<Integer> {
  private final Desk desk;
  @Mixin private Answer answer;

  @Parameters(
      paramLabel = "FILE|DIR",
      arity = "0..1",
      description = "Where to (else the folder of copies beside the book).")
  private Path target;

  @Option(names = "--list", description = "List the copies beside the book instead.")
  private boolean list;

  BackupCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    if (list && target != null) {
      throw new Refusal("--list shows the copies beside the book; leave " + target + " out.");
    }
    if (list) {
      list();
    } else {
      copy();
    }
    return ExitCode.DONE;
  }

  private void copy() {
    try (Book book = desk.open()) {
      Path copy;
      long size = Math.max(1, book.file().toFile().length());
      try (Progress progress = Progress.over(desk.world(), "Copying the book", size)) {
        Upward upward = new Upward(progress);
        copy = book.backup(Optional.ofNullable(target), upward::to);
      }
      long sessions = book.sessionCount();
      long bytes = copy.toFile().length();
      desk.answer(
          answer.json(),
          () -> Json.object("file", copy.toString(), "sessions", sessions, "bytes", bytes),
          () ->
              List.of(
                  "Copied to %s: %s, %s, checked."
                      .formatted(copy, sessions(OptionalLong.of(sessions)), size(bytes))));
    }
  }

  private void list() {
    CopyShelf shelf = new CopyShelf(desk.bookFile());
    List<Copy> copies = shelf.all();
    desk.answer(
        answer.json(),
        () -> Json.object("copies", copies.stream().map(BackupCommand::object).toList()),
        () ->
            copies.isEmpty()
                ? List.of("There is no copy in " + shelf.folder() + " yet.")
                : copies.stream().map(BackupCommand::line).toList());
  }

  private static Object object(Copy copy) {
    return Json.object(
        "file", copy.file().toString(),
        "date", copy.day().toString(),
        "kind", copy.kind().word(),
        "bytes", copy.bytes(),
        "sessions", copy.sessions().isPresent() ? copy.sessions().getAsLong() : null);
  }

  private static String line(Copy copy) {
    return "%s  %-16s  %s, %s  %s"
        .formatted(
            copy.day(),
            copy.kind().word(),
            sessions(copy.sessions()),
            size(copy.bytes()),
            copy.file());
  }

  static String sessions(OptionalLong count) {
    return count.isEmpty()
        ? "cannot be read"
        : count.getAsLong() + (count.getAsLong() == 1 ? " session" : " sessions");
  }

  private static String size(long bytes) {
    long kilobytes = Math.max(1, Math.round(bytes / 1000.0));
    return kilobytes < 10_000 ? kilobytes + " kB" : Math.round(bytes / 1e6) + " MB";
  }
}
