package motebook.screen.terminal;

import com.googlecode.lanterna.input.InputProvider;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Consumer;
import motebook.screen.state.Key;
import motebook.screen.state.Message;

/** Turns what a terminal sends into messages. */
final class Keyboard {
  private static final int LONGEST_PASTE = 200_000;

  private final InputProvider input;
  private char high;

  Keyboard(InputProvider input) {
    this.input = input;
  }

  /** Tells of every key until the terminal is gone. */
  void read(Consumer<Message> listener, Consumer<Throwable> crash) {
    try {
      Optional<Message> next;
      do {
        KeyStroke stroke = input.readInput();
        next = PasteBracket.BEGIN.equals(stroke) ? Optional.of(pasted()) : message(stroke);
        next.ifPresent(listener);
      } while (!isClosed(next));
    } catch (IOException gone) {
      listener.accept(new Message.Pressed(Key.of(Key.Name.CLOSED)));
    } catch (RuntimeException | Error e) {
      crash.accept(e);
    }
  }

  private static boolean isClosed(Optional<Message> message) {
    return message.equals(Optional.of(new Message.Pressed(Key.of(Key.Name.CLOSED))));
  }

  private Message pasted() throws IOException {
    StringBuilder text = new StringBuilder();
    KeyStroke stroke = input.readInput();
    while (!PasteBracket.END.equals(stroke) && stroke.getKeyType() != KeyType.EOF) {
      if (text.length() < LONGEST_PASTE) {
        text.append(typed(stroke));
      }
      stroke = input.readInput();
    }
    return new Message.Pasted(text.toString());
  }

  private static String typed(KeyStroke stroke) {
    return switch (stroke.getKeyType()) {
      case Character -> stroke.isCtrlDown() ? "" : stroke.getCharacter().toString();
      case Enter -> "\n";
      case Tab -> " ";
      default -> "";
    };
  }

  Optional<Message> message(KeyStroke stroke) {
    return key(stroke).map(Message.Pressed::new);
  }

  private Optional<Key> key(KeyStroke stroke) {
    if (stroke.getKeyType() == KeyType.Character) {
      return character(stroke, stroke.getCharacter());
    }
    return Optional.of(
        Key.of(
            switch (stroke.getKeyType()) {
              case Enter -> Key.Name.ENTER;
              case Escape -> Key.Name.ESCAPE;
              case Backspace -> Key.Name.BACKSPACE;
              case Delete -> Key.Name.DELETE;
              case Tab -> Key.Name.TAB;
              case ReverseTab -> Key.Name.BACK_TAB;
              case ArrowUp -> Key.Name.UP;
              case ArrowDown -> Key.Name.DOWN;
              case ArrowLeft -> Key.Name.LEFT;
              case ArrowRight -> Key.Name.RIGHT;
              case Home -> Key.Name.HOME;
              case End -> Key.Name.END;
              case PageUp -> Key.Name.PAGE_UP;
              case PageDown -> Key.Name.PAGE_DOWN;
              case F1 -> Key.Name.F1;
              case F2 -> Key.Name.F2;
              case F3 -> Key.Name.F3;
              case F4 -> Key.Name.F4;
              case F5 -> Key.Name.F5;
              case F6 -> Key.Name.F6;
              case F7 -> Key.Name.F7;
              case F8 -> Key.Name.F8;
              case F9 -> Key.Name.F9;
              case EOF -> Key.Name.CLOSED;
              default -> Key.Name.OTHER;
            }));
  }

  private Optional<Key> character(KeyStroke stroke, char character) {
    if (Character.isHighSurrogate(character)) {
      high = character;
      return Optional.empty();
    }
    if (stroke.isCtrlDown()) {
      return Optional.of(Key.control(Character.toLowerCase(character)));
    }
    if (stroke.isAltDown() || Character.isISOControl(character)) {
      return Optional.of(Key.of(Key.Name.OTHER));
    }
    return Optional.of(Key.of(whole(character)));
  }

  private int whole(char character) {
    boolean pair = Character.isSurrogatePair(high, character);
    int codePoint = pair ? Character.toCodePoint(high, character) : character;
    high = 0;
    return codePoint;
  }
}
