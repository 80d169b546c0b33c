package motebook.model;

/** The units in which a shop's own measures are shown; concentrations are always mg/m³ and ppm. */
public enum Units {
  /** Metres, cubic metres, cubic metres a minute. */
  METRIC,
  /** Feet, cubic feet, cubic feet a minute. */
  US
}
