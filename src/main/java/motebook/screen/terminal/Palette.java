package motebook.screen.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.TextColor.ANSI;
import com.googlecode.lanterna.TextColor.Indexed;
import java.util.List;
import motebook.screen.draw.Role;

/**
 * The colours that a terminal has. Blue and orange tell apart what matters, also to colour-blind
 * eyes and on light and dark backgrounds alike; nothing is told by colour alone.
 */
public enum Palette {
  /** No colour at all, only bold, underlined and reversed. */
  NONE,
  /** The sixteen colours that nearly every terminal has. */
  SIXTEEN,
  /** The indexed colours. */
  MANY;

  private static final int BLUE = 32;
  private static final int ORANGE = 172;
  private static final int GREY = 244;

  /** How one role looks. */
  record Style(TextColor colour, List<SGR> marks) {
    static Style of(TextColor colour, SGR... marks) {
      return new Style(colour, List.of(marks));
    }
  }

  Style style(Role role) {
    return switch (role) {
      case PLAIN, OFFERED, QUIET -> Style.of(quiet(role));
      case TITLE, KEY, FIGURE, TYPED -> Style.of(ANSI.DEFAULT, SGR.BOLD);
      case OWN, MASK -> Style.of(ANSI.DEFAULT);
      case OTHER -> Style.of(quiet(Role.QUIET));
      case FINE, DONE -> Style.of(blue());
      case COARSE -> Style.of(orange());
      case BREATHED, NOW -> Style.of(ANSI.DEFAULT, SGR.BOLD);
      case LIMIT -> Style.of(orange(), SGR.BOLD);
      case WARNING -> Style.of(orange(), SGR.BOLD);
      case WRONG -> Style.of(orange(), SGR.BOLD);
      case CHOSEN -> Style.of(ANSI.DEFAULT, SGR.REVERSE);
    };
  }

  private TextColor quiet(Role role) {
    return role == Role.PLAIN || this != MANY ? ANSI.DEFAULT : new Indexed(GREY);
  }

  private TextColor blue() {
    return switch (this) {
      case NONE -> ANSI.DEFAULT;
      case SIXTEEN -> ANSI.BLUE;
      case MANY -> new Indexed(BLUE);
    };
  }

  private TextColor orange() {
    return switch (this) {
      case NONE -> ANSI.DEFAULT;
      case SIXTEEN -> ANSI.YELLOW;
      case MANY -> new Indexed(ORANGE);
    };
  }
}
