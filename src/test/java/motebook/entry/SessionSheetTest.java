package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import motebook.entry.SessionSheet.Contents;
import motebook.entry.SessionSheet.Row;
import motebook.model.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SessionSheetTest {
  private static final String HEADER = "date,start,minutes,operation,material,controls,note\n";

  private static Contents read(String text) {
    return read(text.getBytes(StandardCharsets.UTF_8), Optional.empty(), Scenes.usual());
  }

  private static Contents read(byte[] bytes, Optional<SheetDateOrder> order, Scene scene) {
    return SessionSheet.read(SheetText.of(bytes), scene, order, upTo -> {});
  }

  private static List<String> said(Contents contents) {
    return contents.rows().stream().map(row -> SpokenLine.say(row.work(), Scenes.usual())).toList();
  }

  private static List<String> faults(Contents contents) {
    return contents.faults().stream().map(SheetFault::said).toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "date,start,minutes,operation,material\n2026-03-02,9:15,40,orb sand,oak\n",
        "Wood;Job;Day;Duration (min);Begin\noak;orbital sanding;2.3.2026;40,0;09.15\n",
        "\uFEFFFrom\tTo\tWhat\tWhen\tTimber\n9:15\t9:55\torbital\t2 Mar 2026\toak\n",
        "My work log\n\nwhat,of,on,from,duration\norbital sanding,oak,2-Mar-26,9:15 AM,40 min\n",
        "started,hours,operation,material\n2026-03-02 09:15:00,\"0,667\",orbital sanding,oak\n",
        "date,to,lasted,operation,material\n2026/03/02,9:55,0:40:00,ORBITAL SANDING,Oak\n",
        "\"date\",start,minutes,\"operation\",material\r\n\"2026-03-02\",9:15,40,orbital,oak\r\n",
      })
  void columns_separators_dates_and_times_are_recognised_as_sheets_write_them(String text) {
    Contents contents = read(text);
    assertThat(faults(contents)).isEmpty();
    assertThat(said(contents))
        .containsExactly("40m orbital sanding of oak in shop by me at 09:15 on 2026-03-02");
  }

  @Test
  void every_column_of_a_row_is_read() {
    Contents contents =
        read(
            ("note,using,worn %,checked,respirator,person,place,controls,material,operation,minutes,"
                    + "start,date\n"
                    + "\"two coats, thin\",\"250ml lacquer, 0,5 l lacquer thinner\",\"87,5\",yes,half,"
                    + "ana,big gar,doors open; window fan,oak,finishing,25,9:00,2026-03-02\n")
                .getBytes(StandardCharsets.UTF_8),
            Optional.empty(),
            Scenes.masks("half mask"));
    assertThat(faults(contents)).isEmpty();
    assertThat(said(contents))
        .containsExactly(
            "25m finishing of oak with doors open and window fan using 250ml lacquer and 500ml"
                + " lacquer thinner in Big Garage wearing half mask checked 87.5% by Ana Lee at"
                + " 09:00 on 2026-03-02 note two coats, thin");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-02-30,9:00,40,assembly,, | date | is no date: write it as 2026-03-02",
        "yesterday,9:00,40,assembly,, | date | is no date",
        "2/3/2026,9:00,40,assembly,, | date | --dates day-first or --dates month-first",
        "1026-03-02,9:00,40,assembly,, | date | not believable",
        "2026-03-05,9:00,40,assembly,, | date | still to come",
        ",9:00,40,assembly,, | date | the date is missing",
        "2026-03-02,25:00,40,assembly,, | start | is no time: write it as 9:15",
        "2026-03-02,9,40,assembly,, | start | is no time",
        "2026-03-02,,40,assembly,, | start | the start is missing",
        "2026-03-02,9:00,soon,assembly,, | minutes | is no duration: write it as 40m",
        "2026-03-02,9:00,,assembly,, | minutes | how long it took is missing",
        "2026-03-02,9:00,0,assembly,, | minutes | at least one minute",
        "2026-03-02,0:00,999,assembly,, | minutes | up to 16 hours",
        "2026-03-02,23:00,90,assembly,, | minutes | a row for each of the two dates",
        "2026-03-02,9:00,40,,, | operation | what was done is missing",
        "2026-03-02,9:00,40,orbitel sanding,, | operation | did you mean orbital sanding?",
        "2026-03-02,9:00,40,sanding,, | operation | sanding",
        "2026-03-02,9:00,40,table saw,oke, | material | is no material",
        "2026-03-02,9:00,40,sweeping,,collector | controls | does not help with dry sweeping",
        "2026-03-02,9:00,40,table saw,,air cleaner | controls | give it to the place once",
        "2026-03-02,9:00,40,table saw,,,too long,by two | note | has 8 cells and the header 7",
      })
  void a_bad_row_is_told_with_its_line_its_column_and_what_would_be_right(
      String row, String column, String why) {
    Contents contents = read(HEADER + "2026-03-02,8:00,10,assembly,,\n\n" + row + "\n");
    assertThat(contents.rows()).hasSize(1);
    assertThat(faults(contents)).hasSize(1);
    assertThat(faults(contents).get(0)).startsWith("line 4, " + column + ": ").contains(why);
  }

  @Test
  void all_that_is_wrong_is_told_at_once() {
    Contents contents =
        read(
            """
            date,start,to,operation,material,controls,place,person,mask,checked,worn
            2026-13-02,25:00,9:00,table saw,oke,toaster,attic,Zoë,half mask,perhaps,all
            2026-03-02,9:00,8:00,orbitel sanding,oak,,,,,,
            """);
    assertThat(faults(contents).stream().map(fault -> fault.split(": ", 2)[0]))
        .containsExactly(
            "line 2, date",
            "line 2, start",
            "line 2, checked",
            "line 2, worn",
            "line 3, to",
            "line 3, operation");
  }

  @Test
  void every_wrong_name_of_a_row_is_told() {
    Contents contents =
        read(
            """
            date,start,to,operation,material,controls,place,person,mask
            2026-03-02,9:00,10:00,table saw,oke,toaster,attic,Zoë,half mask
            """);
    assertThat(contents.faults().stream().map(SheetFault::column))
        .containsExactlyInAnyOrder("material", "controls", "place", "person", "mask");
  }

  @Test
  void a_cell_over_several_lines_does_not_shift_the_lines_that_are_told() {
    Contents contents =
        read(
            HEADER
                + "2026-03-02,8:00,10,assembly,,,\"one\ntwo\nthree\"\n2026-03-02,x,1,assembly,,,");
    assertThat(contents.rows().stream().map(Row::line)).containsExactly(2L);
    assertThat(contents.rows().get(0).work().note()).isEqualTo("one two three");
    assertThat(contents.faults().get(0).line()).isEqualTo(5);
  }

  @Test
  void the_three_times_of_a_row_must_agree() {
    Contents contents = read("date,from,to,minutes,what\n2026-03-02,9:00,10:00,40,assembly\n");
    assertThat(faults(contents))
        .containsExactly(
            "line 2, to: start and duration make it end at 09:40: correct one of the three.");
  }

  @Test
  void a_bare_duration_needs_its_unit_in_the_cell_or_in_the_header() {
    assertThat(faults(read("date,from,duration,what\n2026-03-02,9:00,40,assembly\n")))
        .containsExactly(
            "line 2, duration: \"40\" has no unit: write 40m, or head the column minutes or hours.");
    assertThat(said(read("date,from,duration [h],what\n2026-03-02,9:00,1.5,assembly\n")).get(0))
        .startsWith("1h30m ");
  }

  @Test
  void dates_with_slashes_are_read_in_the_order_that_was_said() {
    byte[] sheet =
        "date,from,minutes,what\n3/2/26,9:00,40,assembly\n".getBytes(StandardCharsets.UTF_8);
    Contents month = read(sheet, Optional.of(SheetDateOrder.MONTH_FIRST), Scenes.usual());
    Contents day = read(sheet, Optional.of(SheetDateOrder.DAY_FIRST), Scenes.usual());
    assertThat(month.rows().get(0).work().date()).hasToString("2026-03-02");
    assertThat(day.rows().get(0).work().date()).hasToString("2026-02-03");
  }

  @Test
  void a_mask_that_was_not_worn_is_none_and_a_seal_without_a_mask_is_at_fault() {
    Scene masks = Scenes.masks("half mask");
    String header = "date,from,minutes,what,mask,seal check,worn %\n";
    byte[] rows =
        (header + "2026-03-02,9:00,40,assembly,half mask,no,0\n2026-03-02,10:00,40,assembly,,x,\n")
            .getBytes(StandardCharsets.UTF_8);
    Contents contents = read(rows, Optional.empty(), masks);
    assertThat(contents.rows().get(0).work().mask()).isEmpty();
    assertThat(faults(contents))
        .containsExactly("line 3, mask: the respirator that was worn is missing.");
  }

  @Test
  void unknown_columns_and_guessed_letters_are_told() {
    byte[] sheet =
        "date,from,minutes,what,note,weather,boss\n2026-03-02,9:00,40,assembly,für Zoë,rain,me\n"
            .getBytes(Charset.forName("windows-1252"));
    Contents contents = read(sheet, Optional.empty(), Scenes.usual());
    assertThat(contents.rows().get(0).work().note()).isEqualTo("für Zoë");
    assertThat(contents.remarks()).hasSize(2);
    assertThat(contents.remarks().get(0)).contains("windows-1252");
    assertThat(contents.remarks().get(1))
        .isEqualTo("The columns \"weather\", \"boss\" are not read.");
  }

  @Test
  void what_a_spreadsheet_saves_as_unicode_text_is_read() {
    byte[] sheet =
        "\uFEFFdate\tfrom\tminutes\twhat\tnote\n2026-03-02\t9:00\t40\tassembly\tZoë\n"
            .getBytes(StandardCharsets.UTF_16LE);
    assertThat(read(sheet, Optional.empty(), Scenes.usual()).rows().get(0).work().note())
        .isEqualTo("Zoë");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "nothing here | No row heads the columns",
        "operation,material | two of start, end and minutes",
        "start,minutes,material | No row heads the columns",
        "date,start,begin,minutes,operation | \"start\" and \"begin\" both mean the start",
        "from,until,operation,place,where | \"place\" and \"where\" both mean the place",
      })
  void a_sheet_that_cannot_be_understood_is_refused(String header, String why) {
    assertThatThrownBy(() -> read(header + "\n1,2,3,4,5\n"))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining(why);
  }

  @Test
  void what_is_no_text_is_refused() {
    assertThatThrownBy(() -> SheetText.of(new byte[] {'P', 'K', 3, 4, 0, 0, 1}))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("Save the sheet as CSV");
  }

  @Test
  void a_quote_that_is_not_closed_is_refused_with_its_line() {
    assertThatThrownBy(() -> read(HEADER + "2026-03-02,8:00,10,\"assembly,,,\n"))
        .isInstanceOf(Refusal.class)
        .hasMessageStartingWith("line 2: a quote");
  }
}
