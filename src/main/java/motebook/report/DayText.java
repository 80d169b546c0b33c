package motebook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToLongFunction;
import java.util.stream.Stream;
import motebook.desk.DayReport;
import motebook.desk.DayReport.OtherSource;
import motebook.desk.DayReport.SessionLine;
import motebook.model.Figures;
import motebook.model.Work;
import motebook.reference.Caution;

/** A day as text for a terminal. */
public final class DayText {
  private DayText() {}

  /** The lines of {@code day}. */
  public static List<String> of(DayReport day, Ink ink, Invocation program) {
    return of(day, ink, program, index -> day.sessions().get(index).source().session().id());
  }

  /** The same with the sessions numbered from 1 on, as the screens number them. */
  public static List<String> numbered(DayReport day, Ink ink, Invocation program) {
    return of(day, ink, program, index -> index + 1);
  }

  private static List<String> of(
      DayReport day, Ink ink, Invocation program, IntToLongFunction number) {
    List<String> lines = new ArrayList<>();
    lines.add(ink.headline(Wording.date(day.date()) + ", " + day.person()));
    if (day.sessions().isEmpty()) {
      lines.addAll(leftOut(day));
      lines.add(
          day.leftOut().isEmpty()
              ? "  Nothing is logged on this day."
              : "  Nothing else is logged on this day.");
      return lines;
    }
    List<String> shares = Wording.shares(day);
    for (int index = 0; index < day.sessions().size(); index++) {
      lines.add(session(day.sessions().get(index), shares.get(index), number.applyAsLong(index)));
    }
    for (int index = 0; index < day.sessions().size(); index++) {
      lines.addAll(
          refused(
              day.sessions().get(index),
              " in session " + number.applyAsLong(index),
              CreditText.done(program)));
    }
    for (int index = 0; index < day.others().size(); index++) {
      lines.add(other(day.others().get(index), shares.get(day.sessions().size() + index)));
    }
    lines.addAll(leftOut(day));
    lines.addAll(dose(day, ink));
    lines.addAll(warnings(day));
    lines.add(Wording.ESTIMATES);
    return lines;
  }

  /** The day's warnings, then its dose, as it is shown after each logged line. */
  public static List<String> dose(DayReport day, Ink ink) {
    return dose(day, ink, "logged");
  }

  /**
   * The same.
   *
   * @param worked what the minutes of the person's sessions are
   */
  static List<String> dose(DayReport day, Ink ink, String worked) {
    List<String> lines = new ArrayList<>();
    ProtectionWords.alarms(day).forEach(alarm -> lines.add("warning   " + ink.warning(alarm)));
    lines.add("8-h mean  outside " + ink.headline(Wording.estimate(day.outside().estimate())));
    lines.add("          inside  " + Wording.inside(day.inside().estimate(), Wording.masked(day)));
    lines.addAll(LimitText.lines(day));
    ProtectionWords.needs(day).forEach(needs -> lines.add("mask      " + needs));
    lines.add(
        "of it     "
            + Figures.rounded(day.respirableOutsideTypical())
            + " mg/m³ respirable (typical); "
            + Figures.duration(day.minutesLogged())
            + " "
            + worked
            + (day.minutesBetween() > 0
                ? ", " + day.minutesBetween() + " min between sessions counted in the room"
                : ""));
    day.vapour().ifPresent(vapour -> lines.addAll(VapourText.of(vapour, day, ink)));
    Wording.learned(day.learnedFrom())
        .ifPresent(said -> lines.add("learned   " + said + without(day)));
    return lines;
  }

  static List<String> leftOut(DayReport day) {
    return LeftOut.sentences(day.leftOut()).stream().map(said -> "left out  " + said).toList();
  }

  private static String without(DayReport day) {
    return day.published()
        .map(
            published ->
                "; without "
                    + (day.learnedFrom() == 1 ? "it " : "them ")
                    + Wording.estimate(published))
        .orElse("");
  }

  private static List<String> warnings(DayReport day) {
    return warnings(day, day.cautions());
  }

  /**
   * What must be known beside the dose.
   *
   * @param cautions those to say; a day that goes on need not hear each again
   */
  public static List<String> warnings(DayReport day, List<Caution> cautions) {
    return Stream.concat(
            day.remarks().stream().map(remark -> "note      " + remark),
            cautions.stream().map(caution -> "caution   " + caution.sentence()))
        .toList();
  }

  private static String session(SessionLine line, String share, long number) {
    Work work = line.source().session().work();
    return String.format(
        Locale.ROOT,
        "%4d  %s  %s, %s: %s mg/m³%s, %s of the dose%s",
        number,
        Wording.span(work),
        Wording.jobAndControls(line.source()),
        work.place(),
        Figures.rounded(line.meanOutsideMgPerM3()),
        line.source().rough() ? " (rough)" : "",
        share,
        work.note().isEmpty() ? "" : " [" + work.note() + "]");
  }

  /** Why the mask of a session is not credited: the first thing to mend, then all the others. */
  public static List<String> refused(SessionLine line, Invocation program) {
    return refused(line, " in session " + line.source().session().id(), CreditText.done(program));
  }

  /**
   * The same.
   *
   * @param where the session, as part of a sentence; empty where there is no doubt which
   */
  static List<String> refused(SessionLine line, String where, CreditText words) {
    List<String> lines = new ArrayList<>();
    words
        .refused(line.credit())
        .ifPresent(
            why -> {
              lines.add("mask      not credited" + where + ": " + why);
              words.others(line.credit()).forEach(also -> lines.add("          also: " + also));
            });
    return lines;
  }

  private static String other(OtherSource other, String share) {
    Work work = other.source().session().work();
    return String.format(
        Locale.ROOT,
        "      %s  %s's %s: %s of the dose",
        Wording.span(work),
        work.person(),
        Wording.job(other.source()),
        share);
  }
}
