package motebook.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import motebook.desk.Air;
import motebook.desk.WeekSheet;
import motebook.model.Figures;
import motebook.model.MinuteOfDay;
import motebook.model.Work;
import motebook.report.Wording;

/**
 * The air of the worst day in one place: fine dust, coarse dust above it, what was breathed, and
 * the numbered sessions under it.
 */
final class AirPlot implements Plot {
  private static final double LEFT = 26;
  private static final double TOP = 6;
  private static final double BAR = 9;
  private static final int HOUR = 60;
  private static final int STEP = 2;
  private static final double LEAST = 0.01;

  private final WeekSheet sheet;
  private final Air air;
  private final List<NumberedWork> works;
  private final int from;
  private final int to;

  AirPlot(WeekSheet sheet, Air air) {
    this.sheet = sheet;
    this.air = air;
    works = NumberedWork.of(sheet.worstDay(), air.place());
    from = works.stream().mapToInt(w -> w.work().startMinute()).min().orElse(0) / HOUR * HOUR;
    int end = works.stream().mapToInt(w -> w.work().endMinute()).max().orElse(HOUR);
    to = Math.min(24 * HOUR, (end + 2 * HOUR - 1) / HOUR * HOUR);
  }

  @Override
  public String title() {
    return "The air on "
        + Wording.weekday(sheet.worstDay().date())
        + ", the worst day, in "
        + air.place()
        + ": mg/m³";
  }

  @Override
  public String description() {
    double room = air.coarse(from, to) + air.fine(from, to);
    return "Highest in the room "
        + Figures.about(room)
        + " mg/m³, highest at the face "
        + Figures.about(air.breathed(from, to))
        + " mg/m³; at the end of the plot "
        + Figures.about(air.coarse(to - STEP, to) + air.fine(to - STEP, to))
        + " mg/m³ are left in the room.";
  }

  /** The sessions under the plot, in the order of their numbers. */
  List<NumberedWork> works() {
    return works;
  }

  @Override
  public void draw(Pen pen, double width, double height) {
    double bottom = height - 19 - lanes() * BAR;
    LogScale scale =
        new LogScale(
            DoubleStream.of(
                LEAST, air.breathed(from, to), air.coarse(from, to) + air.fine(from, to)),
            bottom,
            TOP);
    filled(pen, scale, width, Pen.Tone.COARSE, true);
    filled(pen, scale, width, Pen.Tone.FINE, false);
    scale.draw(pen, LEFT, width);
    breathed(pen, scale, width);
    InhalableLimit.of(sheet.worstDay())
        .ifPresent(
            value -> pen.path(Pen.Stroke.LIMIT, LEFT, scale.at(value), width, scale.at(value)));
    pen.path(Pen.Stroke.AXIS, LEFT, bottom, width, bottom);
    works.forEach(work -> bar(pen, work, width, bottom));
    hours(pen, width, height);
  }

  private int lanes() {
    return 1 + works.stream().mapToInt(NumberedWork::lane).max().orElse(0);
  }

  private double x(double minute, double width) {
    return LEFT + (width - LEFT) * (minute - from) / (to - from);
  }

  private void filled(Pen pen, LogScale scale, double width, Pen.Tone tone, boolean all) {
    int[] minutes = IntStream.iterate(from, m -> m < to, m -> m + STEP).toArray();
    double[] xy = new double[2 * minutes.length + 4];
    for (int i = 0; i < minutes.length; i++) {
      int m = minutes[i];
      double level = air.fine(m, m + STEP) + (all ? air.coarse(m, m + STEP) : 0);
      xy[2 * i] = x(m + STEP / 2.0, width);
      xy[2 * i + 1] = scale.at(level);
    }
    int end = 2 * minutes.length;
    xy[end] = x(to, width);
    xy[end + 1] = scale.at(0);
    xy[end + 2] = x(from, width);
    xy[end + 3] = scale.at(0);
    pen.area(tone, xy);
  }

  // A step line for each unbroken stretch in which the person was there.
  private void breathed(Pen pen, LogScale scale, double width) {
    List<Double> xy = new ArrayList<>();
    for (int m = from; m <= to; m++) {
      double level = m < to ? air.breathed(m, m + 1) : 0;
      if (level > 0) {
        xy.addAll(List.of(x(m, width), scale.at(level), x(m + 1, width), scale.at(level)));
      } else if (!xy.isEmpty()) {
        pen.path(Pen.Stroke.LINE, xy.stream().mapToDouble(Double::doubleValue).toArray());
        xy.clear();
      }
    }
  }

  private void bar(Pen pen, NumberedWork numbered, double width, double bottom) {
    Work work = numbered.work();
    double left = x(work.startMinute(), width);
    double wide = Math.max(1, x(work.endMinute(), width) - left - 0.6);
    double top = bottom + 2 + numbered.lane() * (BAR + 0.5);
    pen.box(numbered.own() ? Pen.Tone.INK : Pen.Tone.PALE, left, top, wide, BAR);
    if (work.mask().isPresent()) {
      pen.box(Pen.Tone.COARSE, left, top, wide, 2);
    }
    pen.text(
        numbered.own() ? Pen.Tone.PAPER : Pen.Tone.INK,
        7,
        Pen.Anchor.MIDDLE,
        left + wide / 2,
        top + BAR - 2,
        numbered.number());
  }

  private void hours(Pen pen, double width, double height) {
    int step = (to - from) / HOUR > 14 ? 2 : 1;
    for (int m = from; m <= to; m += step * HOUR) {
      Pen.Anchor anchor =
          m == from ? Pen.Anchor.START : m == to ? Pen.Anchor.END : Pen.Anchor.MIDDLE;
      pen.text(Pen.Tone.INK, 7.5, anchor, x(m, width), height - 4, MinuteOfDay.told(m));
    }
  }
}
