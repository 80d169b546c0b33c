package motebook.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
  private static final String SAMPLE = "motebook-sample-";
  private static final Pattern OWNED = Pattern.compile(SAMPLE + "(\\d{1,18})-\\d+");

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
    Thread onEnd = new Thread(() -> remove(folder), "clear away the sample");
    Runtime.getRuntime().addShutdownHook(onEnd);
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
      clearEarlier(Path.of(System.getProperty("java.io.tmpdir")));
      return Files.createTempDirectory(SAMPLE + ProcessHandle.current().pid() + "-");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Sample shops of programs that were killed. */
  static void clearEarlier(Path temporary) throws IOException {
    try (DirectoryStream<Path> samples = Files.newDirectoryStream(temporary, SAMPLE + "*-*")) {
      for (Path sample : samples) {
        Matcher owner = OWNED.matcher(String.valueOf(sample.getFileName()));
        if (owner.matches()
            && Files.isDirectory(sample, LinkOption.NOFOLLOW_LINKS)
            && Files.isWritable(sample)
            && ProcessHandle.of(Long.parseLong(owner.group(1))).isEmpty()) {
          remove(sample);
        }
      }
    }
  }

  private static void remove(Path folder) {
    if (!Files.exists(folder)) {
      return;
    }
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
