package motebook.screen.draw;

import motebook.desk.Air;
import motebook.desk.DayReport;
import motebook.desk.HeldLimit;
import motebook.model.Figures;
import motebook.reference.Limit;

/**
 * The air of a place over the day, one column for some minutes.
 *
 * <p>The height is logarithmic. A column is filled with fine dust up to its level and with coarse
 * dust from there to the level of both together; a mark shows what was breathed at the face.
 */
final class AirStrip {
  /** Columns left of the strip, for the scale. */
  static final int MARGIN = 10;

  private static final String[] EIGHTHS = {"", "▁", "▂", "▃", "▄", "▅", "▆", "▇"};

  private final Canvas canvas;
  private final Air air;
  private final Hours hours;
  private final Scale scale;
  private final int top;
  private final int height;

  AirStrip(Canvas canvas, Air air, Hours hours, Scale scale, int top, int height) {
    this.canvas = canvas;
    this.air = air;
    this.hours = hours;
    this.scale = scale;
    this.top = top;
    this.height = height;
  }

  /** Draws the strip with its scale and the limit; {@code now} is a minute, outside for none. */
  void draw(DayReport day, double totalConversion, int now) {
    labels();
    day.limit().ifPresent(held -> limit(held, day, totalConversion));
    now(now);
    for (int column = 0; column < hours.columns(); column++) {
      column(column);
    }
  }

  private void labels() {
    int step = Math.max(1, (int) Math.round(height / 6.0));
    for (int level = 0; level < height; level += step) {
      double value = scale.value(level / (double) height);
      if (isPowerOfTen(value)) {
        canvas.ending(row(level), MARGIN - 1, Figures.plain(value), Role.QUIET);
      }
    }
    for (int level = 0; level < height; level++) {
      canvas.put(row(level), MARGIN - 1, canvas.glyph("│", "|"), Role.QUIET);
    }
  }

  private static boolean isPowerOfTen(double value) {
    double log = Math.log10(value);
    return Math.abs(log - Math.rint(log)) < 0.02;
  }

  private int row(int level) {
    return top + height - 1 - level;
  }

  private int level(double mgPerM3) {
    return Math.min(height - 1, (int) Math.floor(scale.place(mgPerM3) * height + 1e-9));
  }

  private void limit(HeldLimit held, DayReport day, double totalConversion) {
    Limit limit = held.limit();
    double inhalable =
        limit.fraction() == Limit.Fraction.TOTAL
            ? limit.mgPerM3() * totalConversion
            : limit.mgPerM3();
    // Of added shares it stands where this day's own mixture would meet them.
    boolean shares = held.other().isPresent();
    int row = row(level(shares ? day.outside().estimate().central() / held.ratio() : inhalable));
    String value = Figures.plain(limit.mgPerM3());
    String label = shares ? "limits" : value.length() > 3 ? "lim " + value : "limit " + value;
    canvas.ending(row, MARGIN - 1, " ".repeat(MARGIN), Role.LIMIT);
    canvas.ending(row, MARGIN - 1, label, Role.LIMIT);
    for (int column = MARGIN; column < MARGIN + hours.columns(); column++) {
      canvas.put(row, column, canvas.glyph("╌", "-"), Role.LIMIT);
    }
  }

  private void now(int minute) {
    if (minute < hours.from() || minute >= hours.to()) {
      return;
    }
    for (int level = 0; level < height; level++) {
      canvas.put(row(level), MARGIN + hours.column(minute), canvas.glyph("┊", "!"), Role.NOW);
    }
  }

  private void column(int column) {
    int from = hours.minute(column);
    int to = hours.end(column);
    double fine = scale.place(air.fine(from, to)) * height;
    double both = scale.place(air.fine(from, to) + air.coarse(from, to)) * height;
    for (int level = 0; level < height; level++) {
      fill(column, level, fine - level, both - level);
    }
    double breathed = air.breathed(from, to);
    if (breathed > scale.low()) {
      canvas.put(row(level(breathed)), MARGIN + column, canvas.glyph("•", "o"), Role.BREATHED);
    }
  }

  private void fill(int column, int level, double fine, double both) {
    if (fine >= 1) {
      canvas.put(row(level), MARGIN + column, canvas.glyph("█", "#"), Role.FINE);
    } else if (both >= 0.5 && fine < 0.5) {
      canvas.put(row(level), MARGIN + column, canvas.glyph("▒", ":"), Role.COARSE);
    } else if (fine > 1 / 16.0) {
      partly(column, level, fine);
    }
  }

  private void partly(int column, int level, double fine) {
    int eighths = Math.min(7, (int) Math.round(fine * 8));
    String block = canvas.ascii() ? (eighths < 4 ? "" : "#") : EIGHTHS[eighths];
    if (!block.isEmpty()) {
      canvas.put(row(level), MARGIN + column, block, Role.FINE);
    }
  }
}
