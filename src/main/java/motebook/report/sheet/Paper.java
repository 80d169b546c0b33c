package motebook.report.sheet;

/** Sizes of paper, in points of 1/72 inch. */
public enum Paper {
  /** 210 mm by 297 mm. */
  A4(595.28, 841.89),
  /** 8.5 in by 11 in. */
  LETTER(612, 792);

  final double width;
  final double height;

  Paper(double width, double height) {
    this.width = width;
    this.height = height;
  }
}
