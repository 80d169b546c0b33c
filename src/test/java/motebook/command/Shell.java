package motebook.command;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import motebook.report.ActionText;

/** A person at a shell: runs command lines on one book, at a time that stands still. */
final class Shell {
  static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"(?= |$)|[^ ]+");

  private final Map<String, String> environment = new HashMap<>();
  private Clock clock;
  private String typed = "";
  Optional<Path> screenOpened = Optional.empty();

  Shell(Path book) {
    environment.put("MOTEBOOK_BOOK", book.toString());
    at("2026-03-02T18:00");
  }

  Shell at(String localTime) {
    clock = Clock.fixed(LocalDateTime.parse(localTime).atZone(ZONE).toInstant(), ZONE);
    return this;
  }

  Shell typing(String input) {
    typed = input;
    return this;
  }

  /** As if a person sat there: input and messages are a terminal's. */
  Shell atTerminal() {
    environment.put("MOTEBOOK_INPUT_TERMINAL", "1");
    environment.put("MOTEBOOK_ERROR_TERMINAL", "1");
    return this;
  }

  /** What a command line printed and how it ended. */
  record Said(int code, String out, String err) {}

  /** Runs a command line given in words. */
  Said run(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    World world =
        new World(
            clock,
            environment,
            new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)),
            new PrintWriter(out),
            new PrintWriter(err),
            false,
            (book, openAt, color, plain) -> {
              screenOpened = Optional.of(book);
              return 0;
            });
    int code = Commands.run(world, words);
    return new Said(code, out.toString(), err.toString());
  }

  /** Runs a command line split at its spaces, but for what stands in double quotes. */
  Said say(String line) {
    return run(
        WORD.matcher(line)
            .results()
            .map(word -> word.group(1) == null ? word.group() : word.group(1))
            .toArray(String[]::new));
  }

  /** A command as it is told, its result filled in, as a person does before running it. */
  static String filled(String command) {
    return command
        .replace(ActionText.FACTORS, "10000,10000,10000")
        .replace(ActionText.RESULT, "pass")
        .replace("--on " + ActionText.DAY, "--on today")
        .replace("--like FINISH", "--like lacquer")
        .replace("--volatile G/L", "--volatile 640")
        .replace("SHARES", "\"mineral-spirits 1\"");
  }

  /** Runs a command line that must succeed and reads its JSON. */
  Map<String, Object> json(String line) {
    Said said = say(line + " --json");
    if (said.code() != 0) {
      throw new AssertionError(line + ": " + said.err());
    }
    try {
      return JSON.std.mapFrom(said.out());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Follows a path of keys and indices into an answer. */
  static Object at(Object answer, Object... path) {
    Object here = answer;
    for (Object step : path) {
      here =
          step instanceof Integer index
              ? ((java.util.List<?>) here).get(index)
              : ((Map<?, ?>) here).get(step);
    }
    return here;
  }

  /** A number in an answer. */
  static double number(Object answer, Object... path) {
    return ((Number) at(answer, path)).doubleValue();
  }
}
