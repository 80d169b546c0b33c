package motebook.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import motebook.model.Figures;

/**
 * A logarithmic scale for mg/m³ between two heights, with ticks at 1 and 3 of each power of ten.
 */
final class LogScale {
  private static final double LEAST_SPAN = 30;
  private static final double LABEL = 7.5;

  private final double low;
  private final double high;
  private final double bottom;
  private final double top;

  /**
   * A scale that holds some values.
   *
   * @param values those that are not above 0 are passed over
   * @param bottom where the low end is drawn
   * @param top where the high end is drawn
   */
  LogScale(DoubleStream values, double bottom, double top) {
    double[] shown = values.filter(value -> value > 0 && Double.isFinite(value)).toArray();
    double most = DoubleStream.of(shown).max().orElse(1);
    double least = Math.max(DoubleStream.of(shown).min().orElse(most), most / 10_000);
    high = up(most);
    low = Math.min(down(least), high / LEAST_SPAN);
    this.bottom = bottom;
    this.top = top;
  }

  private static double up(double value) {
    double ten = Math.pow(10, Math.floor(Math.log10(value)));
    return value <= ten ? ten : value <= 3 * ten ? 3 * ten : 10 * ten;
  }

  private static double down(double value) {
    double ten = Math.pow(10, Math.floor(Math.log10(value)));
    return value >= 3 * ten ? 3 * ten : ten;
  }

  /** Where a value is drawn; what lies outside is drawn at the end. */
  double at(double value) {
    double kept = Math.min(high, Math.max(low, value));
    return bottom + (top - bottom) * Math.log(kept / low) / Math.log(high / low);
  }

  /** The values of the ticks, rising. */
  List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    for (int power = (int) Math.floor(Math.log10(low)); power <= Math.log10(high) + 1; power++) {
      for (int first : new int[] {1, 3}) {
        double tick = first * Math.pow(10, power);
        if (tick >= low * 0.999 && tick <= high * 1.001) {
          ticks.add(tick);
        }
      }
    }
    return ticks;
  }

  /** Draws the ticks and their lines. */
  void draw(Pen pen, double left, double right) {
    for (double tick : ticks()) {
      pen.path(Pen.Stroke.GRID, left, at(tick), right, at(tick));
      if (!crowded() || isPowerOfTen(tick)) {
        pen.text(Pen.Tone.QUIET, 7, Pen.Anchor.END, left - 4, at(tick) + 2.5, Figures.plain(tick));
      }
    }
  }

  private boolean crowded() {
    return Math.abs(top - bottom) < LABEL * (ticks().size() - 1);
  }

  private static boolean isPowerOfTen(double tick) {
    double power = Math.log10(tick);
    return Math.abs(power - Math.rint(power)) < 1e-9;
  }
}
