package motebook.screen.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.input.DefaultKeyDecodingProfile;
import com.googlecode.lanterna.input.InputDecoder;
import com.googlecode.lanterna.input.InputProvider;
import com.googlecode.lanterna.input.KeyStroke;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import motebook.screen.state.Key;
import motebook.screen.state.Message;
import motebook.screen.state.Message.Pasted;
import motebook.screen.state.Message.Pressed;
import org.junit.jupiter.api.Test;

class KeyboardTest {
  private static final Message CLOSED = new Pressed(Key.of(Key.Name.CLOSED));

  /** What is told of when a terminal sends this and is then closed. */
  private static List<Message> sent(String bytes) {
    InputDecoder decoder = new InputDecoder(new StringReader(bytes));
    decoder.addProfile(new DefaultKeyDecodingProfile());
    decoder.addProfile(PasteBracket.PROFILE);
    List<Message> told = new ArrayList<>();
    new Keyboard(new Decoded(decoder)).read(told::add, crash -> told.add(failed(crash)));
    return told;
  }

  private static Message failed(Throwable crash) {
    return new Message.Failed(crash.toString());
  }

  private record Decoded(InputDecoder decoder) implements InputProvider {
    @Override
    public KeyStroke pollInput() throws IOException {
      return decoder.getNextCharacter(false);
    }

    @Override
    public KeyStroke readInput() throws IOException {
      return decoder.getNextCharacter(true);
    }
  }

  private static Message key(Key.Name name) {
    return new Pressed(Key.of(name));
  }

  @Test
  void letters_and_named_keys_arrive_as_what_they_are() {
    assertThat(sent("aë\n\t\u007f\u001b[A\u001b[D\u001b[5~\u001bOP\u001b[Z"))
        .containsExactly(
            new Pressed(Key.of('a')),
            new Pressed(Key.of('ë')),
            key(Key.Name.ENTER),
            key(Key.Name.TAB),
            key(Key.Name.BACKSPACE),
            key(Key.Name.UP),
            key(Key.Name.LEFT),
            key(Key.Name.PAGE_UP),
            key(Key.Name.F1),
            key(Key.Name.BACK_TAB),
            CLOSED);
  }

  @Test
  void keys_that_are_signals_elsewhere_arrive_as_keys() {
    assertThat(sent("\u0003\u001a\u0013"))
        .containsExactly(
            new Pressed(Key.control('c')),
            new Pressed(Key.control('z')),
            new Pressed(Key.control('s')),
            CLOSED);
  }

  @Test
  void a_letter_beyond_sixteen_bits_arrives_whole() {
    assertThat(sent("\uD842\uDFB7")).containsExactly(new Pressed(Key.of(0x20BB7)), CLOSED);
  }

  @Test
  void pasted_text_arrives_as_one_and_its_line_breaks_log_nothing() {
    assertThat(sent("1\u001b[200~20m drilling\n9:00-9:30 table saw\u001b[201~2"))
        .containsExactly(
            new Pressed(Key.of('1')),
            new Pasted("20m drilling\n9:00-9:30 table saw"),
            new Pressed(Key.of('2')),
            CLOSED);
  }

  @Test
  void a_paste_that_never_ends_is_told_when_the_terminal_closes() {
    assertThat(sent("\u001b[200~20m")).containsExactly(new Pasted("20m"), CLOSED);
  }
}
