package motebook.command;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A command that only gathers others: alone it says which. */
abstract class GroupCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    CommandLine line = spec.commandLine();
    throw new ParameterException(
        line,
        "Say what to do with "
            + spec.name()
            + ": "
            + String.join(", ", line.getSubcommands().keySet())
            + ".");
  }
}
