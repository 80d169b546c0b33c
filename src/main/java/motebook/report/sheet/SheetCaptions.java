package motebook.report.sheet;

/** What the marks in the plots mean. */
final class SheetCaptions {
  static final String DAYS =
      "Filled dot: outside the mask; open dot: inside; bar: 90 % range; dashed: the day's limit.";
  static final String TREND = "Dots: weeks with work; line: the trend, where it is clear.";
  static final String AIR =
      "Dark: fine dust in the room; light: coarse dust on top of it; line: what was breathed;"
          + " dashed: the limit, which is for the mean over 8 h.";

  private SheetCaptions() {}
}
