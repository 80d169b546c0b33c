package motebook.screen.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.screen.state.Acts;
import motebook.screen.state.Binding;
import motebook.screen.state.Bindings;
import motebook.screen.state.Focus;
import motebook.screen.state.Key;
import motebook.screen.state.Message;
import motebook.screen.state.State;

/** What a typed line means where it was typed: keys by their name or their word, or text. */
final class Typed {
  private static final Pattern WORDS =
      Pattern.compile("words(?: (\\p{L}+))?", Pattern.CASE_INSENSITIVE);

  private Typed() {}

  /** The messages that a line stands for. */
  static List<Message> messages(String line, State state) {
    String text = line.strip();
    if (isQuit(text, state)) {
      return keys(Key.Name.CLOSED);
    } else if (state.question().isPresent()) {
      return answering(text);
    }
    return switch (state.focus()) {
      case PROMPT -> text.isEmpty() || isEscape(text) ? keys(Key.Name.ESCAPE) : entered(text);
      case FORM -> inForm(text);
      default -> state.typing() ? inLine(text) : intoLine(text, state);
    };
  }

  /** A key of the page, or a letter that goes to it, that is called by its name or its word. */
  static Optional<Named> named(String line, State state) {
    String text = line.strip().toLowerCase(Locale.ROOT);
    boolean taken = text.isEmpty() || state.typing() || state.question().isPresent();
    return taken || state.focus().isFilledIn() || Acts.of(text).isPresent()
        ? Optional.empty()
        : Bindings.closed(state).stream()
            .filter(binding -> names(binding, text))
            .filter(binding -> !isDigit(text))
            .findFirst()
            .map(binding -> new Named(binding, key(binding, text)));
  }

  /** A key that was called by its name. */
  record Named(Binding binding, Key key) {}

  private static boolean isDigit(String text) {
    return text.length() == 1 && Character.isDigit(text.charAt(0));
  }

  /** Whether a line asks for the keys and words, which it may do anywhere. */
  static boolean asksForHelp(String line) {
    return line.strip().equalsIgnoreCase("help") || line.strip().equals("?");
  }

  /** The kind of words that a line asks to have told; empty for all, absent where it asks none. */
  static Optional<String> asksForWords(String line) {
    Matcher words = WORDS.matcher(line.strip());
    return words.matches()
        ? Optional.of(words.group(1) == null ? "" : words.group(1).toLowerCase(Locale.ROOT))
        : Optional.empty();
  }

  private static boolean isQuit(String text, State state) {
    boolean typing = state.focus() == Focus.PROMPT || state.focus() == Focus.FORM;
    return text.equalsIgnoreCase("quit") || (text.equalsIgnoreCase("q") && !typing);
  }

  private static boolean isYes(String text) {
    return text.equalsIgnoreCase("y") || text.equalsIgnoreCase("yes");
  }

  private static boolean isNo(String text) {
    return text.equalsIgnoreCase("n") || text.equalsIgnoreCase("no");
  }

  private static List<Message> answering(String text) {
    if (isYes(text)) {
      return List.of(new Message.Pressed(Key.of('y')), new Message.Pressed(Key.of(Key.Name.ENTER)));
    }
    return text.isEmpty() || isNo(text) || isEscape(text)
        ? keys(Key.Name.ESCAPE)
        : List.of(new Message.Pasted(text));
  }

  // On the day an empty line has everything said again; elsewhere it is the Enter key.
  private static List<Message> intoLine(String text, State state) {
    if (text.isEmpty()) {
      return keys(state.focus() == Focus.DAY ? Key.Name.OTHER : Key.Name.ENTER);
    } else if (isEscape(text)) {
      return keys(state.focus() == Focus.DAY ? Key.Name.OTHER : Key.Name.HOME);
    }
    return Acts.of(text).isPresent() ? entered(text) : List.of(new Message.Pasted(text));
  }

  private static List<Message> inLine(String text) {
    if (text.isEmpty() || isYes(text)) {
      return keys(Key.Name.ENTER);
    }
    List<Message> messages = new ArrayList<>(List.of(new Message.Pressed(Key.control('u'))));
    if (!isNo(text) && !isEscape(text)) {
      messages.addAll(
          Acts.of(text).isPresent() ? entered(text) : List.of(new Message.Pasted(text)));
    }
    return messages;
  }

  private static boolean isEscape(String text) {
    return text.equalsIgnoreCase("esc") || text.equalsIgnoreCase("leave");
  }

  private static List<Message> entered(String text) {
    return List.of(new Message.Pasted(text), new Message.Pressed(Key.of(Key.Name.ENTER)));
  }

  private static List<Message> inForm(String text) {
    if (isEscape(text)) {
      return keys(Key.Name.ESCAPE);
    } else if (text.equalsIgnoreCase("save")) {
      return keys(Key.Name.ENTER);
    } else if (text.equalsIgnoreCase("back")) {
      return keys(Key.Name.UP);
    }
    List<Message> messages = new ArrayList<>();
    if (!text.isEmpty()) {
      messages.add(new Message.Pressed(Key.control('u')));
      messages.add(new Message.Pasted(text.equals("-") ? "" : text));
    }
    messages.add(new Message.Pressed(Key.of(Key.Name.DOWN)));
    return messages;
  }

  private static List<Message> keys(Key.Name name) {
    return List.of(new Message.Pressed(Key.of(name)));
  }

  private static boolean names(Binding binding, String text) {
    return binding.word().equals(text)
        || binding.label().equalsIgnoreCase(text)
        || binding.keys().stream().anyMatch(key -> named(key, text));
  }

  private static Key key(Binding binding, String text) {
    return binding.keys().stream()
        .filter(key -> named(key, text.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElse(binding.keys().get(0));
  }

  /** Whether a text is what a key types, or its name: left, page down, f2. */
  private static boolean named(Key key, String text) {
    return key.typed().equals(text)
        || key.name().name().toLowerCase(Locale.ROOT).replace('_', ' ').equals(text);
  }
}
