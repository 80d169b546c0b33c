package motebook.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import motebook.desk.Shortfall.Quarter;
import motebook.desk.VapourReport.OfSession;
import motebook.model.MaskUse;

/** The credited masks of a day that are not enough for its vapour. */
final class VapourShortfalls {
  private final VapourReckoning vapour;
  private final ShortTermExposure outside;

  VapourShortfalls(VapourReckoning vapour, ShortTermExposure outside) {
    this.vapour = vapour;
    this.outside = outside;
  }

  private record Mask(String respirator, double apf) {
    Shortfall fallsShort(Shortfall.Over over) {
      return new Shortfall(respirator, apf, over);
    }
  }

  /**
   * Each mask once for the day and once for the worst 15 minutes.
   *
   * @param sessions the person's sessions with vapour
   * @param needed the factor that the day needs, best estimate
   */
  List<Shortfall> of(List<OfSession> sessions, double needed) {
    Map<Mask, List<OfSession>> worn = new LinkedHashMap<>();
    for (OfSession session : sessions) {
      Optional<MaskUse> use = session.source().session().work().mask();
      if (use.isPresent() && session.credit().vapourApf() > 1) {
        Mask mask = new Mask(use.get().respirator(), session.credit().vapourApf());
        worn.computeIfAbsent(mask, any -> new ArrayList<>()).add(session);
      }
    }
    List<Shortfall> all = new ArrayList<>();
    worn.forEach(
        (mask, of) -> {
          if (needed > mask.apf) {
            all.add(mask.fallsShort(new Shortfall.Day(Foremost.VAPOUR, needed)));
          }
          of.stream()
              .flatMap(this::quarters)
              .filter(quarter -> upper(quarter) > mask.apf)
              .max(
                  Comparator.comparingDouble(VapourShortfalls::central)
                      .thenComparingDouble(VapourShortfalls::upper))
              .ifPresent(worst -> all.add(mask.fallsShort(worst)));
        });
    return all;
  }

  private Stream<Quarter> quarters(OfSession session) {
    Breath breath = vapour.day().breathOf(session.source());
    return session.meanPpm().keySet().stream()
        .flatMap(
            solvent ->
                ShortTermLimit.of(solvent).stream()
                    .map(
                        limit ->
                            new Quarter(solvent, limit, outside.during(breath, List.of(solvent)))));
  }

  private static double central(Quarter quarter) {
    return quarter.outside().central() / quarter.limit().ppm();
  }

  private static double upper(Quarter quarter) {
    return quarter.outside().high90() / quarter.limit().ppm();
  }
}
