package motebook.command;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.time.Clock;
import java.util.Map;

/**
 * What a command line may touch of the world outside.
 *
 * @param clock tells the time and the zone
 * @param environment the environment's variables
 * @param in standard input
 * @param out where answers go
 * @param err where messages go
 * @param outIsTerminal whether the answers go to a person's terminal
 * @param screen opens the text-mode screen
 */
public record World(
    Clock clock,
    Map<String, String> environment,
    InputStream in,
    PrintWriter out,
    PrintWriter err,
    boolean outIsTerminal,
    ScreenDoor screen) {

  /** Whether the messages go to a person's terminal; the launcher tells. */
  boolean errIsTerminal() {
    return environment.get("MOTEBOOK_ERROR_TERMINAL") != null;
  }

  /** Whether a person types the input; the launcher tells. */
  boolean inIsTerminal() {
    return environment.get("MOTEBOOK_INPUT_TERMINAL") != null;
  }

  /** The same world, but nothing is said to it. */
  World mute() {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    return new World(clock, environment, in, nowhere, nowhere, false, screen);
  }
}
