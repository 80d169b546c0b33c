package motebook.screen.state;

/**
 * What the keys act on.
 *
 * @param focus the page that is shown, or what is filled in
 * @param back what is shown again when a page over it is closed
 * @param base the day or the week, whichever was shown last
 * @param open whether the line takes what is typed; where it is closed, letters go to the page
 */
public record Where(Focus focus, Focus back, Focus base, boolean open) {
  static final Where OPENING = new Where(Focus.DAY, Focus.DAY, Focus.DAY, true);

  Where to(Focus other) {
    boolean isBase = other == Focus.DAY || other == Focus.WEEK;
    // A page over a page gives back what lies under both.
    return new Where(other, focus.isPage() ? back : focus, isBase ? other : base, open);
  }

  /** What lies under the page that is closed. */
  Where under() {
    return to(back);
  }

  Where home() {
    return to(base);
  }

  Where open(boolean other) {
    return new Where(focus, back, base, other);
  }
}
