package motebook.screen.draw;

import java.util.List;
import motebook.report.VapourWords;
import motebook.report.Wording;
import motebook.screen.state.DayPage;
import motebook.screen.state.State;

/**
 * How the rows of the day are shared out.
 *
 * @param strip rows of the air strip, which begins in row 2; 0 where alarms need the charts' room
 * @param others whether others have a row of bars
 * @param masks whether masks have a row of bars
 * @param wide whether both sides of the gauge stand beside each other
 * @param gauged whether there is a gauge
 * @param gauge first row of the gauge
 * @param vapour what is said of the vapour, in the rows above the sessions
 * @param list first row of the sessions
 * @param listRows rows of the sessions
 * @param caution first row of the cautions
 * @param cautions rows of the cautions
 */
record Rows(
    int strip,
    boolean others,
    boolean masks,
    boolean wide,
    boolean gauged,
    boolean verdict,
    int gauge,
    List<String> vapour,
    int list,
    int listRows,
    int caution,
    int cautions) {
  private static final int LEAST_LIST = 3;

  static Rows of(int height, int width, DayPage page, State state) {
    boolean tall = height >= 20;
    boolean wide = width >= 78 && tall;
    boolean others = tall && somebodyElse(page);
    boolean masks = tall && Wording.masked(page.report());
    int bars = 2 + (others ? 1 : 0) + (masks ? 1 : 0);
    List<String> vapour = tall ? vapour(page, width) : List.of();
    int foot = foot(height, width, state);
    int alarms = Cautions.alarms(page, width - 2).size();
    int highest = strip(height) - (bars > 3 ? 1 : 0);
    int left = foot - 2 - highest - bars - gaugeRows(tall, wide, state) - vapour.size();
    boolean charted = alarms == 0 || alarms < left;
    int strip = charted ? highest : 0;
    int gauge = charted ? 2 + strip + bars : 1;
    int below = gauge + gaugeRows(tall, wide, state);
    int room = foot - below - vapour.size() - SessionList.wanted(page);
    boolean verdict =
        wide
            && room > Math.max(1, Cautions.wanted(page, width - 2))
            && Wording.verdict(page.report()).isPresent();
    int list = below + vapour.size() + (verdict ? 1 : 0);
    int free = foot - list;
    int spare = free - SessionList.wanted(page);
    int least = tall && Foot.wanted(state, width) == 0 ? 1 : 0;
    int usual = Math.max(least, Math.min(spare, free - LEAST_LIST));
    int kept =
        Math.min(Cautions.wanted(page, width - 2), Math.max(usual, Math.min(alarms, free - 1)));
    return new Rows(
        strip,
        others,
        masks,
        wide,
        below > gauge,
        verdict,
        gauge,
        vapour,
        list,
        free - kept,
        list + free - kept,
        kept);
  }

  // What has no figure ends the line, and must not be cut off.
  private static List<String> vapour(DayPage page, int width) {
    return VapourWords.day(page.report())
        .map(said -> Fit.wrap(said, width - 2, 2))
        .orElse(List.of());
  }

  // In a small window the line that is being typed tells the dose itself.
  private static int gaugeRows(boolean tall, boolean wide, State state) {
    return wide ? 4 : tall || !state.typing() ? 3 : 0;
  }

  // One row for each half power of ten at the usual height; whole multiples keep the scale even.
  private static int strip(int height) {
    return height < 20 ? 3 : height < 34 ? 6 : 12;
  }

  private static boolean somebodyElse(DayPage page) {
    return page.sessions().stream().anyMatch(s -> !s.work().person().equals(page.person()));
  }

  /** First row of what is said above the line. */
  static int foot(int height, int width, State state) {
    int most = Math.max(4, height / 4);
    int watch = WatchRow.lines(state, width - 2, height).size();
    return height - 1 - Foot.keyRows(height) - watch - Math.min(most, Foot.wanted(state, width));
  }
}
