package motebook;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.ZoneId;
import motebook.command.Commands;
import motebook.command.World;

/** Wires the rooms together. */
public final class Motebook {
  private Motebook() {}

  /** Runs one command line and ends the process with its exit code. */
  public static void main(String[] arguments) {
    World world =
        new World(
            Clock.system(ZoneId.systemDefault()),
            System.getenv(),
            System.in,
            new PrintWriter(System.out, false, StandardCharsets.UTF_8),
            new PrintWriter(System.err, true, StandardCharsets.UTF_8),
            System.getenv("MOTEBOOK_TERMINAL") != null,
            (book, openAt, color) -> {
              throw new IllegalStateException("no screen yet");
            });
    System.exit(Commands.run(world, arguments));
  }
}
