package motebook;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import motebook.command.Color;
import motebook.command.Commands;
import motebook.command.UsualBook;
import motebook.command.World;
import motebook.screen.Options;
import motebook.screen.Screen;

/** Wires the rooms together. */
public final class Motebook {
  private Motebook() {}

  /** Runs one command line and ends the process with its exit code. */
  public static void main(String[] arguments) {
    System.exit(Commands.run(world(), arguments));
  }

  /** The world that this process stands in. */
  static World world() {
    return new World(
        new LocalClock(),
        System.getenv(),
        System.in,
        new PrintWriter(System.out, false, StandardCharsets.UTF_8),
        new PrintWriter(System.err, true, StandardCharsets.UTF_8),
        System.getenv("MOTEBOOK_TERMINAL") != null,
        Motebook::openScreen);
  }

  private static int openScreen(Path file, Optional<LocalDate> openAt, Color color, boolean plain) {
    LocalClock clock = new LocalClock().lookingAhead();
    Options chosen =
        Options.from(System.getenv(), Options.Colour.valueOf(color.name()))
            .knowing(UsualBook.find(System.getenv()).orElse(Path.of("/")))
            .openingAt(openAt)
            .plainly(plain);
    return Screen.run(file, clock, chosen);
  }
}
