package motebook.screen;

import static motebook.screen.Options.Colour.ALWAYS;
import static motebook.screen.Options.Colour.AUTO;
import static motebook.screen.Options.Colour.NEVER;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import motebook.screen.state.Look;
import motebook.screen.terminal.Palette;
import org.junit.jupiter.api.Test;

class OptionsTest {
  private static final Map<String, String> USUAL =
      Map.of("TERM", "xterm-256color", "LANG", "en_GB.UTF-8");

  @Test
  void a_usual_terminal_has_many_colours_and_unicode() {
    Options options = Options.from(USUAL, AUTO);
    assertThat(options.palette()).isEqualTo(Palette.MANY);
    assertThat(options.look()).isEqualTo(Look.UNICODE);
    assertThat(options.day()).isEmpty();
  }

  @Test
  void an_old_terminal_has_sixteen() {
    assertThat(Options.from(Map.of("TERM", "xterm"), AUTO).palette()).isEqualTo(Palette.SIXTEEN);
  }

  @Test
  void no_color_and_never_switch_colours_off_and_always_brings_them_back() {
    Map<String, String> off = Map.of("TERM", "xterm", "NO_COLOR", "1");
    assertThat(Options.from(off, AUTO).palette()).isEqualTo(Palette.NONE);
    assertThat(Options.from(off, ALWAYS).palette()).isEqualTo(Palette.SIXTEEN);
    assertThat(Options.from(USUAL, NEVER).palette()).isEqualTo(Palette.NONE);
    assertThat(Options.from(Map.of("TERM", "xterm", "NO_COLOR", ""), AUTO).palette())
        .isEqualTo(Palette.SIXTEEN);
  }

  @Test
  void a_terminal_that_cannot_show_unicode_is_drawn_in_ascii() {
    assertThat(look("TERM", "dumb", "LANG", "C.UTF-8")).isEqualTo(Look.ASCII);
    assertThat(look("TERM", "linux", "LANG", "C.UTF-8")).isEqualTo(Look.ASCII);
    assertThat(look("TERM", "xterm", "LANG", "C")).isEqualTo(Look.ASCII);
    assertThat(look("TERM", "xterm", "LC_ALL", "C")).isEqualTo(Look.ASCII);
    assertThat(look("LC_ALL", "C.UTF-8", "MOTEBOOK_ASCII", "1")).isEqualTo(Look.ASCII);
    assertThat(look("LC_CTYPE", "de_DE.utf8", "LANG", "C")).isEqualTo(Look.UNICODE);
  }

  private static Look look(String name, String value, String otherName, String otherValue) {
    return Options.from(Map.of(name, value, otherName, otherValue), AUTO).look();
  }
}
