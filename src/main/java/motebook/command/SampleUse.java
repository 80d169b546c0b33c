package motebook.command;

import static motebook.command.Numbers.within;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.journal.Book;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Sample;
import motebook.model.Surroundings;
import motebook.model.Text;
import picocli.CommandLine.Option;

/** What a result may be used for, as options. */
final class SampleUse {
  @Option(
      names = "--area",
      arity = "0..1",
      fallbackValue = "",
      paramLabel = "PLACE",
      description = {
        "An area sample: it hung in this place (else the usual one), on nobody.",
        "It is compared with the room's air, never with the air at somebody's face."
      })
  private String area;

  @Option(
      names = "--factor",
      paramLabel = "X",
      description = "What a meter's reading is multiplied by, from a weighed filter beside it.")
  private String factor;

  @Option(
      names = "--relative",
      description =
          "For comparison within this shop only, PM2.5 and its like too: teaches nothing.")
  private boolean relative;

  boolean relative() {
    return relative;
  }

  boolean corrected() {
    return factor != null;
  }

  Sample.Use use(Book book, LocalDate on, boolean wholeShift) {
    return new Sample.Use(
        Optional.ofNullable(area).map(name -> room(name, book, on)),
        factor == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(within("--factor", factor, 0.01, 100)),
        relative,
        wholeShift);
  }

  private static String room(String given, Book book, LocalDate on) {
    String wanted = given.isEmpty() ? book.settings().place() : given;
    Place place =
        book.premises().places(on).stream()
            .filter(one -> Text.folded(one.name()).equals(Text.folded(wanted)))
            .findFirst()
            .orElseThrow(
                () ->
                    new Refusal(
                        "There is no place \""
                            + Text.clean(wanted)
                            + "\" in this book. Places: "
                            + String.join(
                                ", ", book.premises().places(on).stream().map(Place::name).toList())
                            + "."));
    if (place.surroundings() instanceof Surroundings.Outdoors) {
      throw new Refusal(
          "Out of doors there is no room air to compare an area sample with. Take a personal"
              + " sample there.");
    }
    return place.name();
  }
}
