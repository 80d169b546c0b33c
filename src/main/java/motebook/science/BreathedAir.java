package motebook.science;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * What somebody breathes of one release over a day, exact, in closed form; nothing between the
 * stretches.
 *
 * @param stretches in order of time, none over another
 */
public record BreathedAir(List<Stretch> stretches) {
  public BreathedAir {
    stretches = List.copyOf(stretches);
    for (int i = 1; i < stretches.size(); i++) {
      if (stretches.get(i).fromMinute < stretches.get(i - 1).toMinute) {
        throw new IllegalArgumentException("stretches out of order or over each other");
      }
    }
  }

  /**
   * Time spent in one way.
   *
   * @param fromMinute when it begins
   * @param toMinute when it ends, after it began
   * @param atHandMgPerM3 how far the near field lies above the room, ≥ 0
   * @param share of what is outside that is breathed, 0 to 1
   * @param room the air of the room about; none outdoors
   */
  public record Stretch(
      double fromMinute,
      double toMinute,
      double atHandMgPerM3,
      double share,
      List<RoomTrace> room) {
    private double mgMinPerM3(double from, double to) {
      double sum = atHandMgPerM3 * (to - from);
      for (RoomTrace trace : room) {
        sum += trace.mgMinPerM3(from, to);
      }
      return share * sum;
    }

    private Bounds bounds(double from, double to) {
      Bounds sum = new Bounds(atHandMgPerM3, atHandMgPerM3);
      for (RoomTrace trace : room) {
        sum = sum.plus(trace.bounds(from, to));
      }
      return sum.times(share);
    }
  }

  /** Integral of what is breathed over a time, mg·min/m³. */
  public double mgMinPerM3(double fromMinute, double toMinute) {
    double sum = 0;
    for (Stretch stretch : stretches) {
      double from = Math.max(fromMinute, stretch.fromMinute);
      double to = Math.min(toMinute, stretch.toMinute);
      if (to > from) {
        sum += stretch.mgMinPerM3(from, to);
      }
    }
    return sum;
  }

  /** Bounds of what is breathed between two minutes with no knot between them, mg/m³. */
  Bounds bounds(double fromMinute, double toMinute) {
    double middle = (fromMinute + toMinute) / 2;
    for (Stretch stretch : stretches) {
      if (stretch.fromMinute < middle && middle < stretch.toMinute) {
        return stretch.bounds(fromMinute, toMinute);
      }
    }
    return Bounds.ZERO;
  }

  /** The minutes between which it is smooth. */
  DoubleStream knots() {
    return stretches.stream()
        .flatMapToDouble(
            stretch ->
                DoubleStream.concat(
                    DoubleStream.of(stretch.fromMinute, stretch.toMinute),
                    stretch.room.stream()
                        .flatMapToDouble(RoomTrace::knots)
                        .filter(knot -> stretch.fromMinute < knot && knot < stretch.toMinute)));
  }
}
