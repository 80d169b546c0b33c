package motebook;

import static java.time.ZoneOffset.UTC;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import motebook.command.Commands;
import motebook.command.ScreenDoor;
import motebook.command.World;
import motebook.screen.Options;

/**
 * Goes once through what people do most, in a book that is thrown away. The build lets it run, so
 * that the classes this takes are kept ready to map; nothing else calls it.
 */
final class Rehearsal {
  private static final int DUE = 3;
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  /** A day of the sample shop with masks, finishes and others in the room. */
  private static final LocalDate WORKED = LocalDate.of(2026, 2, 27);

  private static final List<String> COMMANDS =
      List.of(
          "sample-shop",
          "log 40m orbital sanding of oak with tool vacuum at 9:00 on " + DAY + " --json",
          "day " + DAY,
          "day " + WORKED,
          "day --json",
          "sample add --person Hedda --from 9:05 --to 9:35 --on "
              + DAY
              + " --mg-m3 0.8 --fraction inhalable",
          "week",
          "week " + WORKED,
          "plan 40m orbital sanding of oak at 9:00",
          "due",
          "gear list",
          "reckon wear --apf 10 --worn 90");

  private final Clock clock =
      Clock.fixed(DAY.atTime(18, 0).toInstant(UTC), ZoneId.of("Europe/Vienna"));
  private final PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
  private final Path book;
  private final Map<String, String> environment;

  private Rehearsal(Path book) {
    this.book = book;
    this.environment =
        Map.of("MOTEBOOK_BOOK", book.toString(), "LC_ALL", "C.UTF-8", "TERM", "xterm-256color");
  }

  /** Rehearses in the book that is named, which is a fresh one. */
  public static void main(String[] arguments) throws IOException {
    Rehearsal rehearsal = new Rehearsal(Path.of(arguments[0]));
    Motebook.world();
    new LocalClock().lookingAhead();
    COMMANDS.forEach(rehearsal::say);
    rehearsal.look();
  }

  private void say(String command) {
    InputStream nothing = InputStream.nullInputStream();
    ScreenDoor shut = (file, openAt, color, plain) -> 0;
    World world = new World(clock, environment, nothing, nowhere, nowhere, true, shut);
    int code = Commands.run(world, command.split(" "));
    if (code != 0 && code != DUE) {
      throw new IllegalStateException(command + " ended with " + code);
    }
  }

  private void look() throws IOException {
    Options options = Options.from(environment, Options.Colour.AUTO);
    motebook.screen.Rehearsal.of(book, clock, options.openingAt(Optional.empty()));
  }
}
