package motebook.report;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import motebook.desk.DueItem;
import motebook.desk.DueItem.Kind;
import motebook.desk.DueItem.State;
import motebook.desk.DueReport;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.component.Standard;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.component.VTimeZone;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.TzId;
import net.fortuna.ical4j.model.property.TzOffsetFrom;
import net.fortuna.ical4j.model.property.TzOffsetTo;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableAction;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/**
 * What is due as an iCalendar, RFC 5545: a whole-day event for each thing, with two alarms.
 *
 * <p>An event keeps its UID from one export to the next whatever its day, so that reading the file
 * again moves it instead of adding a second one.
 */
public final class CalendarFile {
  /** Stands at the beginning of every file. */
  public static final String MARK = "-//Motebook//";

  private static final Duration EVENING_BEFORE = Duration.ofHours(-6);
  private static final Duration THAT_MORNING = Duration.ofHours(8);
  private static final int OCTETS_OF_A_LINE = 75;

  static {
    // Whole days need no time zones; without this the library would look for newer ones outside.
    System.setProperty("net.fortuna.ical4j.timezone.update.enabled", "false");
  }

  private CalendarFile() {}

  /**
   * The text of the file.
   *
   * @param report what has a date; where nothing has, the calendar holds no event, and reading it
   *     still replaces an older one
   * @param stamp the moment it is made
   * @param program how a shell opens the book; each event says what settles it, without a day: a
   *     command means the day on which it is run
   */
  public static String of(DueReport report, Instant stamp, Invocation program) {
    ActionText commands = new ActionText(program);
    Calendar calendar = new Calendar();
    calendar.add(new ProdId(MARK + "Due//EN"));
    calendar.add(ImmutableVersion.VERSION_2_0);
    calendar.add(ImmutableCalScale.GREGORIAN);
    report.items().forEach(item -> calendar.add(event(item, report.today(), stamp, commands)));
    if (report.items().isEmpty()) {
      calendar.add(universalTime());
    }
    StringWriter text = new StringWriter();
    try {
      new CalendarOutputter(false).output(calendar, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return folded(text.toString());
  }

  // RFC 5545, 3.6: a calendar holds at least one component; a time zone is one that shows nothing.
  private static VTimeZone universalTime() {
    Standard always = new Standard();
    always.add(new DtStart<>(LocalDate.EPOCH.atStartOfDay()));
    always.add(new TzOffsetFrom(ZoneOffset.UTC));
    always.add(new TzOffsetTo(ZoneOffset.UTC));
    VTimeZone zone = new VTimeZone(new ComponentList<>(List.of(always)));
    zone.add(new TzId("Etc/UTC"));
    return zone;
  }

  // RFC 5545, 3.1: lines of at most 75 octets. The library counts characters, so that it makes
  // longer ones of letters with accents and may part a letter from its other half.
  private static String folded(String text) {
    return text.replace("\r\n ", "")
        .lines()
        .map(CalendarFile::fold)
        .collect(Collectors.joining("\r\n", "", "\r\n"));
  }

  private static String fold(String line) {
    StringBuilder folded = new StringBuilder();
    int octets = 0;
    for (int point : line.codePoints().toArray()) {
      String letter = Character.toString(point);
      int size = letter.getBytes(StandardCharsets.UTF_8).length;
      if (octets + size > OCTETS_OF_A_LINE) {
        folded.append("\r\n ");
        octets = 1;
      }
      folded.append(letter);
      octets += size;
    }
    return folded.toString();
  }

  // What is overdue stands on the day of the export: in the past nobody would see it.
  private static VEvent event(DueItem item, LocalDate today, Instant stamp, ActionText commands) {
    LocalDate day = item.when().isBefore(today) ? today : item.when();
    VEvent event = new VEvent(false);
    event.add(new DtStamp(stamp));
    event.add(new Uid(uid(item)));
    event.add(new DtStart<>(day));
    event.add(new net.fortuna.ical4j.model.property.Summary(summary(item)));
    event.add(new Description(item.why() + "\n" + commands.undated(item.settle())));
    event.add(ImmutableTransp.TRANSPARENT);
    event.add(alarm(EVENING_BEFORE, item));
    event.add(alarm(THAT_MORNING, item));
    return event;
  }

  private static String summary(DueItem item) {
    String named = DueText.named(item);
    return item.state() == State.OVERDUE ? named + " (overdue since " + item.when() + ")" : named;
  }

  private static VAlarm alarm(Duration trigger, DueItem item) {
    VAlarm alarm = new VAlarm(trigger);
    alarm.add(ImmutableAction.DISPLAY);
    alarm.add(new Description(summary(item)));
    return alarm;
  }

  // A mask may change hands; what is on it stays the same thing.
  private static String uid(DueItem item) {
    boolean onMask = item.kind() == Kind.ELEMENT || item.kind() == Kind.SPARE;
    String thing = item.kind().key() + "|" + item.what() + (onMask ? "" : "|" + item.whose());
    return UUID.nameUUIDFromBytes(thing.getBytes(StandardCharsets.UTF_8)) + "@motebook";
  }
}
