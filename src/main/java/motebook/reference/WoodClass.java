package motebook.reference;

/** The classes of wood that limits tell apart. */
public enum WoodClass {
  HARDWOOD,
  SOFTWOOD,
  RED_CEDAR,
  BOARD,
  UNKNOWN
}
