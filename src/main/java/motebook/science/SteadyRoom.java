package motebook.science;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A room over a day, for steady sources: the same exact rise as {@link RoomTrace}, with what each
 * stretch of loss does reckoned once for all sources. With {@code C' = G/V − λC} a stretch of t
 * minutes keeps {@code e^(−λt)} of what was there and holds {@code t·φ₁(λt)} of it over the time;
 * of a rise r a minute it leaves {@code r·t·φ₁(λt)} and holds {@code r·t²·φ₂(λt)}.
 */
public final class SteadyRoom {
  private final double volumeM3;
  private final double[] knots;
  private final double[] rates;
  private final double[] keeps;
  private final double[] holds;
  private final double[] leaves;
  private final double[] gathers;

  /**
   * A room.
   *
   * @param volumeM3 above 0
   * @param losses stretches without a gap between them, in order of time
   * @throws IllegalArgumentException if there are none or they leave a gap
   */
  public SteadyRoom(double volumeM3, List<Loss> losses) {
    requireNoGap(losses);
    int count = losses.size();
    this.volumeM3 = volumeM3;
    knots = new double[count + 1];
    rates = new double[count];
    keeps = new double[count];
    holds = new double[count];
    leaves = new double[count];
    gathers = new double[count];
    for (int i = 0; i < count; i++) {
      stretch(i, losses.get(i));
    }
    knots[count] = losses.get(count - 1).toMinute();
  }

  private static void requireNoGap(List<Loss> losses) {
    boolean whole = !losses.isEmpty();
    for (int i = 1; i < losses.size(); i++) {
      whole &= losses.get(i - 1).toMinute() == losses.get(i).fromMinute();
    }
    if (!whole) {
      throw new IllegalArgumentException("no losses, or losses with a gap between them");
    }
  }

  private void stretch(int i, Loss loss) {
    double minutes = loss.toMinute() - loss.fromMinute();
    knots[i] = loss.fromMinute();
    rates[i] = loss.perMinute();
    keeps[i] = Relaxation.value(1, 0, rates[i], minutes);
    holds[i] = Relaxation.integral(1, 0, rates[i], minutes);
    leaves[i] = Relaxation.value(0, 1, rates[i], minutes);
    gathers[i] = Relaxation.integral(0, 1, rates[i], minutes);
  }

  private int knot(double minute) {
    int place = Arrays.binarySearch(knots, minute);
    if (place < 0) {
      throw new IllegalArgumentException("no stretch of loss begins or ends at minute " + minute);
    }
    return place;
  }

  /**
   * Whole stretches of loss, of this room and of any with the same ones.
   *
   * @param first the first of them
   * @param end the one after the last
   */
  public record Span(int first, int end) {}

  /** The stretches between two minutes; empty where one of the two lies within a stretch. */
  public Optional<Span> span(double fromMinute, double toMinute) {
    int first = Arrays.binarySearch(knots, fromMinute);
    int end = Arrays.binarySearch(knots, toMinute);
    return first < 0 || end < first ? Optional.empty() : Optional.of(new Span(first, end));
  }

  /**
   * What one source puts into the room.
   *
   * @param mgPerMin G ≥ 0
   * @param fromMinute when it starts; a stretch of loss begins or ends then
   * @param toMinute when it ends, likewise, not before the start
   * @throws IllegalArgumentException if no stretch begins or ends at one of the two
   */
  public Trace trace(double mgPerMin, double fromMinute, double toMinute) {
    return new Trace(mgPerMin / volumeM3, knot(fromMinute), knot(toMinute));
  }

  /** The rise of the room's concentration by one source. */
  public final class Trace {
    private final double rise;
    private final int first;
    private final int end;
    private final double[] starts;
    private final double[] integrals;

    private Trace(double rise, int first, int end) {
      this.rise = rise;
      this.first = first;
      this.end = end;
      starts = new double[rates.length + 1 - first];
      integrals = new double[rates.length - first];
      for (int i = first; i < rates.length; i++) {
        double start = starts[i - first];
        double risen = i < end ? rise : 0;
        starts[i - first + 1] = start * keeps[i] + risen * leaves[i];
        integrals[i - first] = start * holds[i] + risen * gathers[i];
      }
    }

    /** Concentration in the room at a time, mg/m³; 0 outside the day. */
    public double mgPerM3At(double minute) {
      for (int i = first; i < rates.length; i++) {
        if (knots[i] <= minute && minute <= knots[i + 1]) {
          return at(i, minute);
        }
      }
      return 0;
    }

    private double at(int i, double minute) {
      return Relaxation.value(starts[i - first], i < end ? rise : 0, rates[i], minute - knots[i]);
    }

    /**
     * Adds the concentration of each of a row of minutes, mg/m³; nothing outside the day. From one
     * minute to the next of a stretch the air keeps the same share, so each costs a product.
     *
     * @param sums one for each minute
     * @param firstMinute the time of the first of them
     */
    public void addMinutes(double[] sums, double firstMinute) {
      for (int i = Math.max(first, before(firstMinute)); i < rates.length; i++) {
        double risen = i < end ? Relaxation.value(0, rise, rates[i], 1) : 0;
        double kept = Relaxation.value(1, 0, rates[i], 1);
        int minute = (int) Math.max(0, Math.ceil(knots[i] - firstMinute));
        double here = minute < sums.length ? at(i, firstMinute + minute) : 0;
        for (; minute < sums.length && firstMinute + minute < knots[i + 1]; minute++) {
          sums[minute] += here;
          here = here * kept + risen;
        }
      }
    }

    /** Integral of the concentration over a time, mg·min/m³. */
    public double mgMinPerM3(double fromMinute, double toMinute) {
      double sum = 0;
      for (int i = Math.max(first, before(fromMinute));
          i < rates.length && knots[i] < toMinute;
          i++) {
        double from = Math.max(fromMinute, knots[i]);
        double to = Math.min(toMinute, knots[i + 1]);
        if (to > from) {
          sum += integral(i, from, to);
        }
      }
      return sum;
    }

    /** Integral of the concentration over whole stretches, mg·min/m³. */
    public double mgMinPerM3(Span span) {
      double sum = 0;
      for (int i = Math.max(first, span.first()); i < span.end(); i++) {
        sum += integrals[i - first];
      }
      return sum;
    }

    /** The last knot at or before a minute, 0 if there is none. */
    private int before(double minute) {
      int place = Arrays.binarySearch(knots, minute);
      return Math.max(0, place < 0 ? -place - 2 : place);
    }

    private double integral(int i, double from, double to) {
      return from == knots[i] && to == knots[i + 1]
          ? integrals[i - first]
          : Relaxation.integral(at(i, from), i < end ? rise : 0, rates[i], to - from);
    }
  }
}
