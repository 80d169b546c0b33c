package motebook.desk;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import motebook.model.FitRecord.Medical;
import motebook.model.Gear;
import motebook.model.Respirator;
import motebook.reference.Masks;
import motebook.reference.ProtectionFactor;
import motebook.reference.ProtectionFactor.Seal;

/**
 * What holds of one respirator on one face all day, whatever it was worn at.
 *
 * @param mask the respirator
 * @param on where the elements on it stand
 * @param rows the factors that its kind may be credited with
 * @param fit whether it fits, where it must
 * @param cleared whether a medical evaluation of the person is on record by then
 */
record MaskDay(
    Respirator mask,
    List<ElementStanding> on,
    List<ProtectionFactor> rows,
    Optional<FitStanding> fit,
    boolean cleared) {

  /** All such days of a book; each is looked up once. */
  static final class Known {
    private final Gear gear;
    private final Masks masks;
    private final ElementCare elements;
    private final CareRules rules;
    private final Map<Worn, Optional<Face>> faces = new HashMap<>();

    Known(Gear gear, Masks masks, ElementCare elements, CareRules rules) {
      this.gear = gear;
      this.masks = masks;
      this.elements = elements;
      this.rules = rules;
    }

    private record Worn(String respirator, String person) {}

    /** A day of a respirator and a person; empty where the book knows no such respirator. */
    Optional<MaskDay> on(LocalDate date, String respirator, String person) {
      return faces
          .computeIfAbsent(new Worn(respirator, person), this::face)
          .map(face -> face.days.computeIfAbsent(date, face::day));
    }

    private Optional<Face> face(Worn worn) {
      Gear about = gear.about(worn.respirator, worn.person);
      return about.respirators().stream().findFirst().map(m -> new Face(m, worn.person, about));
    }

    private final class Face {
      private final Respirator mask;
      private final String person;
      private final Gear about;
      private final List<ProtectionFactor> rows;
      private final Map<LocalDate, MaskDay> days = new HashMap<>();

      Face(Respirator mask, String person, Gear about) {
        this.mask = mask;
        this.person = person;
        this.about = about;
        this.rows = masks.factors(mask.scheme().key(), mask.kind(), mask.facepiece());
      }

      MaskDay day(LocalDate date) {
        return new MaskDay(
            mask,
            about.elementsOn(mask.name(), date).stream().map(elements::standing).toList(),
            rows,
            rows.stream()
                .map(ProtectionFactor::seal)
                .findFirst()
                .filter(Seal::tight)
                .map(seal -> FitStanding.of(about, mask, seal, person, date, rules)),
            about.fit(Medical.class, person).stream()
                .anyMatch(medical -> !medical.date().isAfter(date)));
      }
    }
  }
}
