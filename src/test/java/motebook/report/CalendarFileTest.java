package motebook.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import motebook.desk.DueItem;
import motebook.desk.DueReport;
import motebook.model.Action;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;

class CalendarFileTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
  private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");

  private static DueItem item(String what, String whose, LocalDate when, DueItem.State state) {
    return new DueItem(
        what,
        DueItem.Kind.FIT_TEST,
        whose,
        when,
        state,
        "A fit test holds for a year; the last one ends on " + when,
        new Action.RecordFitTest("half mask", "Zoë", TODAY, false),
        OptionalDouble.empty());
  }

  private static final DueItem ZOE =
      item("fit test with half mask", "Zoë", TODAY.plusDays(100), DueItem.State.LATER);
  private static final DueItem ANA =
      item("fit test with half mask", "Ana", TODAY.minusDays(3), DueItem.State.OVERDUE);

  private static String text(DueItem... items) {
    return CalendarFile.of(new DueReport(TODAY, List.of(items), List.of()), NOW, Invocation.USUAL);
  }

  private static Calendar read(String text) throws Exception {
    return new CalendarBuilder().build(new StringReader(text));
  }

  private static List<VEvent> events(String text) throws Exception {
    return read(text).getComponents(Component.VEVENT);
  }

  private static String value(VEvent event, String property) {
    return event.getRequiredProperty(property).getValue();
  }

  @Test
  void the_file_is_sound_by_the_librarys_own_validator() throws Exception {
    Calendar calendar = read(text(ZOE, ANA));
    assertThat(calendar.validate().getEntries()).isEmpty();
    assertThat(calendar.validate(true).hasErrors()).isFalse();
    assertThat(events(text(ZOE, ANA))).hasSize(2);
  }

  @Test
  void the_validator_would_tell_of_an_event_without_its_uid() throws Exception {
    String broken = text(ZOE).replaceFirst("UID:[^\r]*\r\n", "");
    assertThat(read(broken).validate(true).hasErrors()).isTrue();
  }

  @Test
  void an_event_says_what_whose_why_and_what_settles_it() throws Exception {
    VEvent event = events(text(ZOE)).get(0);
    assertThat(value(event, Property.SUMMARY)).isEqualTo("fit test with half mask, Zoë");
    assertThat(value(event, Property.DESCRIPTION)).contains("holds for a year", "motebook fit");
    assertThat(value(event, Property.DTSTART)).isEqualTo("20260610");
    assertThat(event.getAlarms()).hasSize(2);
  }

  @Test
  void what_is_overdue_stands_today() throws Exception {
    VEvent event = events(text(ANA)).get(0);
    assertThat(value(event, Property.DTSTART)).isEqualTo("20260302");
    assertThat(value(event, Property.SUMMARY)).contains("overdue since 2026-02-27");
  }

  @Test
  void a_thing_keeps_its_uid_whatever_its_day_and_no_two_share_one() throws Exception {
    DueItem moved = item("fit test with half mask", "Zoë", TODAY.plusYears(1), DueItem.State.LATER);
    String first = value(events(text(ZOE)).get(0), Property.UID);
    assertThat(value(events(text(moved)).get(0), Property.UID)).isEqualTo(first);
    assertThat(value(events(text(ANA)).get(0), Property.UID)).isNotEqualTo(first);
  }

  /**
   * RFC 5545, 3.1: "Lines of text SHOULD NOT be longer than 75 octets, excluding the line break".
   */
  @Test
  void no_line_is_longer_than_75_octets_and_none_parts_a_letter() throws Exception {
    String name = "é".repeat(60) + "\uD834\uDD1E".repeat(40) + ", a;b\\c";
    String text = text(item("fit test with " + name, "Zoë", TODAY, DueItem.State.DUE));
    assertThat(text.split("\r\n"))
        .allSatisfy(
            line -> {
              byte[] octets = line.getBytes(UTF_8);
              assertThat(octets.length).isBetween(1, 75);
              assertThat(new String(octets, UTF_8)).isEqualTo(line);
            });
    assertThat(text.replace("\r\n", "")).doesNotContain("\n", "\r");
    assertThat(value(events(text).get(0), Property.SUMMARY))
        .isEqualTo("fit test with " + name + ", Zoë");
  }

  @Test
  void what_settles_it_is_done_on_its_own_day_not_on_that_of_the_export() throws Exception {
    assertThat(value(events(text(ZOE)).get(0), Property.DESCRIPTION))
        .endsWith(
            "motebook fit record --respirator \"half mask\" --person Zoë"
                + " --method qualitative --agent saccharin --result PASS-OR-FAIL");
  }

  @Test
  void a_mask_that_changes_hands_keeps_the_dates_of_what_is_on_it() throws Exception {
    assertThat(uidOfElement("Ana, Ben")).isEqualTo(uidOfElement("Ana"));
  }

  private static String uidOfElement(String whose) throws Exception {
    DueItem pads =
        new DueItem(
            "pads on half mask",
            DueItem.Kind.ELEMENT,
            whose,
            TODAY,
            DueItem.State.DUE,
            "8 of 8 h",
            new Action.ChangeElement("pads", TODAY, 0, false),
            OptionalDouble.empty());
    return value(events(text(pads)).get(0), Property.UID);
  }

  /** RFC 5545, 3.6: a calendar holds at least one component. */
  @Test
  void a_calendar_without_an_event_is_still_sound() throws Exception {
    Calendar calendar = read(text());
    assertThat(calendar.validate(true).hasErrors()).isFalse();
    assertThat(calendar.getComponents()).hasSize(1);
    assertThat(events(text())).isEmpty();
  }
}
