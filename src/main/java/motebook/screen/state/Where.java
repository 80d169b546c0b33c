package motebook.screen.state;

/**
 * What the keys act on.
 *
 * @param focus what they act on now
 * @param back what they act on again when a page over it is closed
 * @param base the day or the week, whichever was shown last
 */
public record Where(Focus focus, Focus back, Focus base) {
  static final Where OPENING = new Where(Focus.DAY, Focus.DAY, Focus.DAY);

  Where to(Focus other) {
    boolean isBase = other == Focus.DAY || other == Focus.WEEK;
    // A page over a page gives back what lies under both.
    return new Where(other, focus.isPage() ? back : focus, isBase ? other : base);
  }

  Where closed() {
    return to(back);
  }

  Where home() {
    return to(base);
  }
}
