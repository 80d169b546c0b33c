package motebook.science;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * What one source puts into the air of one room over a day: the rise of the room's concentration,
 * exact, in closed form.
 *
 * <p>{@code C' = G/V − λC} with G steady or dying away while the source runs and λ constant over
 * each stretch of loss. The equation is linear, so the traces of all sources add up to the room's
 * concentration and "whose dust is this" has an exact answer.
 */
public final class RoomTrace {
  private final List<Piece> pieces = new ArrayList<>();

  /**
   * The trace of one steady source, zero before it starts.
   *
   * @param volumeM3 of the room, above 0
   * @param losses stretches without a gap between them, in order of time
   * @param emissionMgPerMin G ≥ 0
   * @param fromMinute when the source starts, within the losses
   * @param toMinute when it ends, within the losses
   * @throws IllegalArgumentException if the losses leave a gap or do not span the source
   */
  public RoomTrace(
      double volumeM3,
      List<Loss> losses,
      double emissionMgPerMin,
      double fromMinute,
      double toMinute) {
    this(volumeM3, losses, new Release(fromMinute, toMinute, emissionMgPerMin, 0));
  }

  /**
   * The trace of one release, zero before it starts.
   *
   * @param volumeM3 of the room, above 0
   * @param losses stretches without a gap between them, in order of time
   * @param release what is given off, within the losses
   * @throws IllegalArgumentException if the losses leave a gap or do not span the release
   */
  public RoomTrace(double volumeM3, List<Loss> losses, Release release) {
    requireSpan(losses, release.fromMinute(), release.toMinute());
    double concentration = 0;
    for (Loss loss : losses) {
      double[] knots = {
        loss.fromMinute(),
        clamp(release.fromMinute(), loss.fromMinute(), loss.toMinute()),
        clamp(release.toMinute(), loss.fromMinute(), loss.toMinute()),
        loss.toMinute()
      };
      for (int i = 0; i < 3; i++) {
        double rise = i == 1 ? release.mgPerMinAt(knots[1]) / volumeM3 : 0;
        concentration =
            append(
                new Piece(
                    knots[i],
                    knots[i + 1],
                    concentration,
                    rise,
                    release.decayPerMin(),
                    loss.perMinute()));
      }
    }
  }

  private static void requireSpan(List<Loss> losses, double from, double to) {
    boolean spans =
        !losses.isEmpty()
            && losses.get(0).fromMinute() <= from
            && from <= to
            && to <= losses.get(losses.size() - 1).toMinute();
    for (int i = 1; spans && i < losses.size(); i++) {
      spans = losses.get(i - 1).toMinute() == losses.get(i).fromMinute();
    }
    if (!spans) {
      throw new IllegalArgumentException("the losses do not span the source without a gap");
    }
  }

  private static double clamp(double value, double low, double high) {
    return Math.max(low, Math.min(value, high));
  }

  private double append(Piece piece) {
    if (piece.to > piece.from) {
      pieces.add(piece);
      return piece.at(piece.to);
    }
    return piece.start;
  }

  /** Concentration in the room at a time, mg/m³; 0 outside the day. */
  public double mgPerM3At(double minute) {
    for (Piece piece : pieces) {
      if (piece.from <= minute && minute <= piece.to) {
        return piece.at(minute);
      }
    }
    return 0;
  }

  /** Integral of the concentration over a time, mg·min/m³. */
  public double mgMinPerM3(double fromMinute, double toMinute) {
    double sum = 0;
    for (Piece piece : pieces) {
      double from = Math.max(fromMinute, piece.from);
      double to = Math.min(toMinute, piece.to);
      if (to > from) {
        sum += piece.integral(from, to);
      }
    }
    return sum;
  }

  /**
   * Bounds of the concentration over a time, mg/m³; 0 outside the day.
   *
   * <p>At a stationary point of a piece {@code C'' = −k·r·e^(−kt) ≤ 0}, so a piece has at most one,
   * and it is a maximum. The least value is therefore that of one of the ends. Left of the maximum
   * C' falls, so C there stays below its tangent at the beginning. Derived.
   */
  Bounds bounds(double fromMinute, double toMinute) {
    Bounds all = Bounds.NONE;
    for (Piece piece : pieces) {
      double from = Math.max(fromMinute, piece.from);
      double to = Math.min(toMinute, piece.to);
      if (to > from) {
        all = all.hull(piece.bounds(from, to));
      }
    }
    return all;
  }

  /** The minutes between which it is smooth. */
  DoubleStream knots() {
    return pieces.stream().flatMapToDouble(piece -> DoubleStream.of(piece.from, piece.to));
  }

  private record Piece(
      double from, double to, double start, double rise, double decay, double loss) {
    double at(double minute) {
      return Relaxation.value(start, rise, decay, loss, minute - from);
    }

    double integral(double begin, double end) {
      double left = rise * Math.exp(-decay * (begin - from));
      return Relaxation.integral(at(begin), left, decay, loss, end - begin);
    }

    double slope(double minute) {
      return rise * Math.exp(-decay * (minute - from)) - loss * at(minute);
    }

    Bounds bounds(double begin, double end) {
      double first = at(begin);
      double last = at(end);
      double slope = slope(begin);
      double most =
          slope > 0 && slope(end) < 0 ? first + slope * (end - begin) : Math.max(first, last);
      return new Bounds(Math.min(first, last), most);
    }
  }
}
