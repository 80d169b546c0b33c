package motebook.screen.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

  /** The messages that a line stands for; none where it is not understood. */
  static List<Message> messages(String line, State state) {
    String text = line.strip();
    if (isQuit(text, state)) {
      return keys(Key.Name.CLOSED);
    }
    return switch (state.focus()) {
      case LINE -> inLine(text, state);
      case PROMPT -> text.isEmpty() || isEscape(text) ? keys(Key.Name.ESCAPE) : entered(text);
      case FORM -> inForm(text);
      default -> text.isEmpty() ? List.of(new Message.Pressed(again(state))) : command(text, state);
    };
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

  // On the day an empty line has everything said again; elsewhere it is the Enter key.
  private static Key again(State state) {
    return state.focus() == Focus.DAY || state.focus() == Focus.QUESTION
        ? Key.of(Key.Name.OTHER)
        : Key.of(Key.Name.ENTER);
  }

  private static List<Message> inLine(String text, State state) {
    if (text.isEmpty() || isYes(text)) {
      return keys(Key.Name.ENTER);
    }
    if (isNo(text)) {
      return List.of(
          new Message.Pressed(Key.control('u')), new Message.Pressed(Key.of(Key.Name.ESCAPE)));
    }
    if (isEscape(text)) {
      return keys(Key.Name.ESCAPE);
    }
    List<Message> messages = new ArrayList<>();
    if (!state.line().blank()) {
      messages.add(new Message.Pressed(Key.control('u')));
    }
    messages.add(new Message.Pasted(text));
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

  private static List<Message> command(String text, State state) {
    boolean spoken = Character.isDigit(text.codePointAt(0)) && text.length() > 1;
    boolean base = state.focus() == Focus.DAY || state.focus() == Focus.WEEK;
    if (spoken && base) {
      return List.of(new Message.Pasted(text));
    }
    return Bindings.of(state.focus()).stream()
        .filter(binding -> names(binding, text.toLowerCase(Locale.ROOT)))
        .findFirst()
        .<List<Message>>map(binding -> List.of(new Message.Pressed(key(binding, text))))
        .orElse(List.of());
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
