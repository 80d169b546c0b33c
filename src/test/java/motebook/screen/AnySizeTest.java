package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import motebook.screen.draw.Cells;
import motebook.screen.draw.Width;
import motebook.screen.state.Focus;
import motebook.screen.state.Look;
import motebook.screen.state.Size;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AnySizeTest {
  private static final List<String[]> STORIES =
      List.of(
          new String[] {},
          new String[] {"Escape"},
          new String[] {"n", "Down"},
          new String[] {"Escape", "?", "Page-Down"},
          new String[] {"Escape", "Ctrl-Z"},
          new String[] {"Escape", "Escape", "n", "Enter", "9", "x", "Left"});

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource(Look.class)
  void every_screen_can_be_drawn_at_any_size_and_no_row_is_wider_than_it(Look look) {
    Random random = new Random(7);
    try (Pilot pilot = new Pilot(folder.resolve("book.db"), Size.USUAL, look)) {
      pilot.open();
      ShopDay.log(pilot);
      for (String[] story : STORIES) {
        pilot.press(story);
        for (int i = 0; i < 200; i++) {
          pilot.resize(1 + random.nextInt(300), 1 + random.nextInt(100));
          fits(pilot.cells(), pilot.state().size());
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Focus.class)
  void every_page_can_be_drawn_at_any_size(Focus focus) {
    Random random = new Random(11);
    for (Look look : Look.values()) {
      Path book = folder.resolve(look + ".db");
      try (Pilot pilot = new Pilot(book, Size.USUAL, look)) {
        KeysTest.reach(pilot, focus);
        for (int i = 0; i < 60; i++) {
          pilot.resize(1 + random.nextInt(150), 1 + random.nextInt(60));
          fits(pilot.cells(), pilot.state().size());
        }
      }
    }
  }

  private static void fits(Cells cells, Size size) {
    assertThat(cells.rows()).isEqualTo(size.rows());
    for (int row = 0; row < cells.rows(); row++) {
      assertThat(Width.of(cells.line(row))).isLessThanOrEqualTo(size.columns());
    }
    cells
        .caret()
        .ifPresent(
            caret -> {
              assertThat(caret.column()).isBetween(0, size.columns() - 1);
              assertThat(caret.row()).isBetween(0, size.rows() - 1);
            });
  }
}
