package motebook.entry;

import java.time.LocalTime;
import java.util.Optional;
import motebook.model.Refusal;
import motebook.model.Work;

/**
 * A line that is to say another start, and nothing else anew.
 *
 * @param line the line as given
 * @param start the start it is to say
 */
record Retimed(String line, LocalTime start) {

  /** The line with its start in the place of the one said, or before its note; empty if unread. */
  Optional<String> in(Scene scene) {
    try {
      Work work = SpokenLine.read(line, scene);
      String timed = timed(Line.of(line), work, scene);
      return Optional.of(timed).filter(text -> onlyMoves(work, SpokenLine.read(text, scene)));
    } catch (Refusal unread) {
      return Optional.empty();
    }
  }

  private String timed(Line whole, Work work, Scene scene) {
    LineReader reader = new LineReader(whole, scene);
    Stretch stretch = reader.stretch();
    if (stretch.start().isPresent()) {
      return whole.withWords(stretch.from(), stretch.to(), range(work.minutes()));
    }
    return reader
        .faultless()
        .best()
        .get(0)
        .phrases(Slot.START)
        .findFirst()
        .map(said -> whole.withWords(said.from(), said.to(), at()))
        .orElseGet(() -> added(whole));
  }

  private String range(int minutes) {
    int end = start.getHour() * 60 + start.getMinute() + minutes;
    return Wording.time(start) + "-" + Wording.minuteOfDay(end);
  }

  private String at() {
    return Slot.START.said(Wording.time(start));
  }

  private String added(Line whole) {
    String work = line.substring(0, whole.noteWordFrom()).stripTrailing();
    String note = line.substring(whole.noteWordFrom());
    return work + " " + at() + (note.isEmpty() ? "" : " " + note);
  }

  private boolean onlyMoves(Work before, Work after) {
    return after.start().equals(start)
        && after.minutes() == before.minutes()
        && after.operation().equals(before.operation());
  }
}
