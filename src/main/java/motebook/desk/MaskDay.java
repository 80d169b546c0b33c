package motebook.desk;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import motebook.model.Element;
import motebook.model.FitRecord.Medical;
import motebook.model.Gear;
import motebook.model.Respirator;
import motebook.model.Work;
import motebook.reference.Masks;
import motebook.reference.ProtectionFactor;
import motebook.reference.ProtectionFactor.Seal;

/**
 * What holds of one respirator on one face all day, or from one change of its elements to the next,
 * whatever it was worn at.
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

    /** That of a respirator when some work began; empty where the book knows no such respirator. */
    Optional<MaskDay> at(Work work, String respirator) {
      return faces
          .computeIfAbsent(new Worn(respirator, work.person()), this::face)
          .map(face -> face.at(work.date(), work.startMinute()));
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
      private final Set<LocalDate> changing;
      private final Map<LocalDateTime, MaskDay> days = new HashMap<>();

      Face(Respirator mask, String person, Gear about) {
        this.mask = mask;
        this.person = person;
        this.about = about;
        this.rows = masks.factors(mask.scheme().key(), mask.kind(), mask.facepiece());
        this.changing = changing(about.elements());
      }

      private static Set<LocalDate> changing(List<Element> elements) {
        return elements.stream()
            .flatMap(e -> Stream.concat(Stream.of(e.from()), e.retired().map(r -> r.on()).stream()))
            .collect(Collectors.toSet());
      }

      MaskDay at(LocalDate date, int minute) {
        int since = changing.contains(date) ? minute : 0;
        return days.computeIfAbsent(
            date.atStartOfDay().plusMinutes(since), any -> reckoned(date, since));
      }

      private MaskDay reckoned(LocalDate date, int minute) {
        return new MaskDay(
            mask,
            about.elementsOn(mask.name(), date, minute).stream()
                .map(element -> elements.standing(element, date))
                .toList(),
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
