package motebook.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

@Command(
    name = "motebook",
    version = "motebook 0.1.0",
    description = {
      "A dust logbook for one woodworking shop. Alone it opens the screen.",
      "Estimates are not measurements; local rules and the maker's instructions come first."
    },
    footer = {"", "Start here: motebook log 40m orbital sanding of oak at 9:15"})
// picocli itself reads the two fields that nothing here does.
@SuppressWarnings("UnusedVariable")
final class Root implements Callable<Integer> {
  @Mixin private final Desk desk;

  @Option(
      names = "--sample",
      description = "Open the screen on a throw-away copy of the sample shop.")
  private boolean sample;

  @Option(
      names = "--plain",
      description = "Lines in, lines out: for a screen reader or a terminal that only prints.")
  private boolean plain;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = ScopeType.INHERIT,
      description = "What this does and how to say it.")
  private boolean helpWanted;

  @Option(names = "--version", versionHelp = true, description = "Prints the version.")
  private boolean versionWanted;

  Root(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    return sample
        ? openSample()
        : desk.world().screen().open(desk.bookFile(), Optional.empty(), desk.color(), plain);
  }

  private int openSample() {
    Path folder = temporaryFolder();
    try {
      Path book = folder.resolve("sample.db");
      Desk thrownAway = new Desk(desk.world(), book);
      LocalDate last = new SampleShopCommand(thrownAway).fill();
      return desk.world().screen().open(book, Optional.of(last), desk.color(), plain);
    } finally {
      remove(folder);
    }
  }

  private static Path temporaryFolder() {
    try {
      return Files.createTempDirectory("motebook-sample");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void remove(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
      for (Path path : deepestFirst) {
        Files.deleteIfExists(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
