package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import motebook.screen.state.Message;
import motebook.screen.state.Size;
import motebook.screen.terminal.Palette;
import motebook.screen.terminal.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WindowTest {
  @TempDir Path folder;

  @Test
  void drawing_only_what_changed_shows_the_same_as_drawing_all() throws IOException {
    DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(new TerminalSize(80, 24));
    try (Pilot pilot = new Pilot(folder.resolve("book.db")).open();
        Window window = Window.on(terminal, Palette.MANY)) {
      window.draw(pilot.cells());
      for (String typed : new String[] {"20m orb", " sand of mdf", " at 8:00"}) {
        window.draw(pilot.type(typed).cells());
        assertThat(Pilot.shown(terminal)).isEqualTo(pilot.screen());
      }
      for (String key : new String[] {"Enter", "?", "Down", "Escape", "Left", "Escape", "n"}) {
        window.draw(pilot.press(key).cells());
        assertThat(Pilot.shown(terminal)).isEqualTo(pilot.screen());
      }
    }
  }

  @Test
  void another_size_is_drawn_afresh() throws IOException {
    DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(new TerminalSize(80, 24));
    try (Pilot pilot = new Pilot(folder.resolve("book.db")).open();
        Window window = Window.on(terminal, Palette.MANY)) {
      window.draw(pilot.cells());
      terminal.setTerminalSize(new TerminalSize(120, 40));
      window.draw(pilot.resize(120, 40).cells());
      assertThat(Pilot.shown(terminal)).isEqualTo(pilot.screen());
      assertThat(window.size()).isEqualTo(new Size(120, 40));
    }
  }

  @Test
  void without_colour_nothing_is_coloured() throws IOException {
    assertThat(coloured(Palette.NONE)).isZero();
    assertThat(coloured(Palette.SIXTEEN)).isPositive();
    assertThat(coloured(Palette.MANY)).isPositive();
  }

  private int coloured(Palette palette) throws IOException {
    int coloured = 0;
    for (TextCharacter cell : drawn(palette)) {
      boolean plain = cell.getForegroundColor().equals(TextColor.ANSI.DEFAULT);
      coloured += plain && cell.getBackgroundColor().equals(TextColor.ANSI.DEFAULT) ? 0 : 1;
    }
    return coloured;
  }

  /** The cells of a working day, row after row. */
  private List<TextCharacter> drawn(Palette palette) throws IOException {
    DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(new TerminalSize(80, 24));
    List<TextCharacter> cells = new ArrayList<>();
    try (Pilot pilot = new Pilot(folder.resolve(palette + ".db"));
        Window window = Window.on(terminal, palette)) {
      ShopDay.log(pilot);
      window.draw(pilot.cells());
      for (int cell = 0; cell < 80 * 24; cell++) {
        cells.add(terminal.getCharacter(cell % 80, cell / 80));
      }
    }
    return cells;
  }

  @ParameterizedTest
  @EnumSource(Palette.class)
  void the_chosen_session_is_reversed_in_every_palette(Palette palette) throws IOException {
    List<TextCharacter> reversed =
        drawn(palette).stream().filter(cell -> cell.getModifiers().contains(SGR.REVERSE)).toList();
    String text =
        reversed.stream().map(TextCharacter::getCharacterString).collect(Collectors.joining());
    assertThat(text).contains(">4 10:40-10:55 dry sweeping");
  }

  @Test
  void a_closed_window_is_drawn_on_no_more_and_may_be_closed_again() throws IOException {
    DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(new TerminalSize(80, 24));
    try (Pilot pilot = new Pilot(folder.resolve("book.db")).open()) {
      Window window = Window.on(terminal, Palette.NONE);
      window.close();
      window.draw(pilot.cells());
      window.close();
      assertThat(Pilot.shown(terminal).strip()).isEmpty();
    }
  }

  @Test
  void a_size_that_changed_after_the_first_frame_is_told_to_whoever_listens_then()
      throws Exception {
    DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(new TerminalSize(80, 24));
    BlockingQueue<Message> told = new LinkedBlockingQueue<>();
    try (Pilot pilot = new Pilot(folder.resolve("book.db")).open();
        Window window = Window.on(terminal, Palette.NONE)) {
      window.draw(pilot.cells());
      terminal.setTerminalSize(new TerminalSize(120, 40));
      window.listen(told::add, crash -> {});
      assertThat(told.poll(30, TimeUnit.SECONDS)).isEqualTo(new Message.Resized(new Size(120, 40)));
      // The virtual terminal cannot be closed while a key is waited for.
      terminal.addInput(new KeyStroke(KeyType.EOF));
    }
  }
}
