package motebook.report.sheet;

/** A picture that any pen can draw, and what it shows in words for those who cannot see it. */
interface Plot {
  /** What it is of. */
  String title();

  /** What it shows, in words. */
  String description();

  /** Draws it within a width and a height, in points. */
  void draw(Pen pen, double width, double height);
}
