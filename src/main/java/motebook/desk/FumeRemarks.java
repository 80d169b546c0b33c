package motebook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import motebook.desk.VapourReport.OfSession;
import motebook.model.Figures;
import motebook.reference.Control;
import motebook.reference.Solvent;
import motebook.reference.Solvent.Authority;

/** What a reader must know beside the figures of a day's vapour. */
final class FumeRemarks {
  private FumeRemarks() {}

  static List<String> of(List<OfSession> sessions) {
    List<String> remarks = new ArrayList<>();
    sessions.forEach(session -> overShortTerm(session, remarks));
    if (sessions.stream().anyMatch(s -> s.source().uses(Control.AIR_CLEANER))) {
      remarks.add("The air cleaner holds dust back; vapour goes through it and is not lessened.");
    }
    return remarks;
  }

  private static void overShortTerm(OfSession session, List<String> remarks) {
    for (Map.Entry<Solvent, Double> mean : session.meanPpm().entrySet()) {
      OptionalDouble figure = mean.getKey().limits().of(Authority.NIOSH).shortTerm();
      if (figure.isPresent() && mean.getValue() > figure.getAsDouble()) {
        remarks.add(
            ("In session %d the air held %s ppm of %s as a mean; NIOSH's short-term figure, over"
                    + " 15 min, is %s ppm.")
                .formatted(
                    session.source().session().id(),
                    Figures.about(mean.getValue()),
                    mean.getKey().name(),
                    Figures.plain(figure.getAsDouble())));
      }
    }
  }
}
