package motebook.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import motebook.model.Text;

/** Asks before something is done, where a person sits at the terminal. */
final class Asking {
  private static final Set<String> YES = Set.of("yes", "y");

  private Asking() {}

  /** Whether somebody can be asked. */
  static boolean possible(World world) {
    return world.inIsTerminal() && world.errIsTerminal();
  }

  /** Asks; only a typed yes counts as one. */
  static boolean yes(World world, String question) {
    world.out().flush();
    world.err().print(question + " Type yes: ");
    world.err().flush();
    try {
      String typed =
          new BufferedReader(new InputStreamReader(world.in(), StandardCharsets.UTF_8)).readLine();
      return typed != null && YES.contains(Text.folded(typed));
    } catch (IOException e) {
      return false;
    }
  }
}
