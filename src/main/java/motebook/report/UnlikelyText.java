package motebook.report;

import motebook.desk.Unlikely;
import motebook.model.Figures;
import motebook.model.Units;

/** What is unlikely of a figure, in one sentence. */
public final class UnlikelyText {
  private UnlikelyText() {}

  /** The sentence, with the owner's units. */
  public static String of(Unlikely unlikely, Units units) {
    double value = unlikely.value();
    return switch (unlikely.kind()) {
      case AIR_CHANGES -> changes("The closed room changes its air", value);
      case OPEN_AIR_CHANGES -> changes("With doors open the room changes its air", value);
      case CLEANER -> changes("The air cleaner moves the whole air of the room", value);
      case FAN -> changes("The window fan moves the whole air of the room", value);
      case SMALL ->
          "A room of "
              + Measures.volume(value, units)
              + " is smaller than any workshop; the least expected is "
              + (units == Units.US ? "about 280 ft³." : "8 m³.");
      case LARGE ->
          "A room of "
              + Measures.volume(value, units)
              + " is larger than any workshop; the most expected is "
              + (units == Units.US ? "about 700000 ft³." : "20000 m³.");
      case RESULT ->
          "A result of "
              + Figures.rounded(value)
              + " mg/m³ is far above any wood dust; the most expected is 500.";
      case PUMP ->
          "A pump of "
              + Figures.rounded(value)
              + " L/min is no personal pump; the most expected is 25.";
      case FUTURE -> "The sampled time is not over yet.";
      case NO_WORK -> "No work of this person lies in the sampled time.";
    };
  }

  private static String changes(String what, double value) {
    return what
        + " "
        + Figures.rounded(value)
        + " times an hour; the most expected is 60. Check the unit.";
  }
}
