package motebook.report.sheet;

/**
 * Draws vector plots. Lengths are in points, x to the right, y downwards from the top of the plot.
 */
interface Pen {
  /** Tones that stay apart without colour: each is lighter or darker than its neighbour. */
  enum Tone {
    PAPER(1, 1, 1),
    PALE(0.90, 0.91, 0.92),
    COARSE(0.74, 0.80, 0.85),
    FINE(0.34, 0.46, 0.56),
    QUIET(0.42, 0.44, 0.46),
    INK(0.10, 0.13, 0.16);

    final double red;
    final double green;
    final double blue;

    Tone(double red, double green, double blue) {
      this.red = red;
      this.green = green;
      this.blue = blue;
    }
  }

  /** Kinds of lines. */
  enum Stroke {
    GRID(0.4, Tone.COARSE, false),
    AXIS(0.6, Tone.QUIET, false),
    LINE(1.1, Tone.INK, false),
    RANGE(2.2, Tone.FINE, false),
    INSIDE(1.2, Tone.QUIET, false),
    LIMIT(0.9, Tone.INK, true);

    final double width;
    final Tone tone;
    final boolean dashed;

    Stroke(double width, Tone tone, boolean dashed) {
      this.width = width;
      this.tone = tone;
      this.dashed = dashed;
    }
  }

  /** Which point of a text its place is. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** A line through some points. */
  void path(Stroke stroke, double... xy);

  /** A filled shape with some corners. */
  void area(Tone fill, double... xy);

  /** A disc, filled, with an ink edge. */
  void disc(Tone fill, double x, double y, double radius);

  /** A text on its base line. */
  void text(Tone tone, double size, Anchor anchor, double x, double y, String text);

  /** A filled box. */
  default void box(Tone fill, double x, double y, double width, double height) {
    area(fill, x, y, x + width, y, x + width, y + height, x, y + height);
  }
}
