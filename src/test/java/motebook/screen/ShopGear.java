package motebook.screen;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.Element;
import motebook.model.FitRecord;
import motebook.model.Respirator;
import motebook.model.Scheme;
import motebook.model.ShopFilter;

/** The masks and filters of an invented shop. */
final class ShopGear {
  private static final LocalDate FIRST = LocalDate.of(2026, 2, 2);

  private ShopGear() {}

  static void add(Pilot pilot) {
    pilot
        .book()
        .rack()
        .add(
            new Respirator(
                0,
                "half mask",
                Scheme.OSHA,
                "air-purifying",
                "half mask",
                Optional.of("M"),
                Optional.empty(),
                List.of("me"),
                Optional.empty()));
    pilot.book().rack().add(element("pads", "n95"));
    pilot.book().rack().add(element("cans", "organic-vapour"));
    pilot
        .book()
        .rack()
        .add(
            new ShopFilter(
                0,
                "bag",
                "collector",
                "shop",
                FIRST,
                OptionalDouble.of(1),
                OptionalDouble.of(400),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty()));
    pilot
        .book()
        .fits()
        .note(
            new FitRecord.FitTest(
                0, "half mask", "me", FIRST, new FitRecord.Qualitative("saccharin", true)));
    pilot.pass(0);
  }

  private static Element element(String name, String kind) {
    return new Element(
        0,
        name,
        "half mask",
        kind,
        true,
        FIRST,
        Optional.of(FIRST),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty());
  }
}
