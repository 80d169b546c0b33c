package motebook.command;

import picocli.CommandLine.Option;

/** The choice of JSON, for every command that answers. */
final class Answer {
  @Option(names = "--json", description = "Answer as one JSON object.")
  private boolean json;

  boolean json() {
    return json;
  }
}
