package motebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The whole book out and in, as a person says it. */
class BookExchangeTest {
  @TempDir Path folder;
  private Shell shell;
  private Path csv;
  private Path json;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db"));
    csv = folder.resolve("out");
    json = folder.resolve("out.json");
  }

  private String done(String line) {
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(line + ": " + said.err()).isZero();
    return said.out();
  }

  private String refused(String line) {
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(line).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    return said.err();
  }

  /** A name in the folder of this test. */
  private Path at(String name) {
    return folder.resolve(name);
  }

  private static Map<String, String> files(Path of) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(of)) {
      for (Path file : (Iterable<Path>) all::iterator) {
        files.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return files;
  }

  private List<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  private void change(String file, String from, String to) throws IOException {
    String text = Files.readString(csv.resolve(file));
    assertThat(text).contains(from);
    Files.writeString(csv.resolve(file), text.replace(from, to));
  }

  private void simpleBook() {
    done("person add Zoë");
    done("place change shop --fan-flow 10");
    done("log 40m finishing with doors open and window fan using 250ml lacquer at 9:15 by Zoë");
    done("log 30m table saw of oak at 11:00");
    done("export --csv " + csv + " --json " + json);
  }

  @Test
  void the_sample_shop_comes_back_to_the_last_byte() throws IOException {
    done("sample-shop");
    assertThat(done("export --csv " + csv + " --json " + json))
        .contains("The book is in the folder")
        .contains(" rows");
    done("import " + csv + " --book " + at("a.db"));
    done("import " + json + " --book " + at("b.db"));
    for (String other : List.of("a", "b")) {
      String book = " --book " + at(other + ".db");
      done("export --csv " + at(other) + " --json " + at(other + ".json") + book);
      assertThat(files(at(other))).isEqualTo(files(csv));
      assertThat(Files.readString(at(other + ".json"))).isEqualTo(Files.readString(json));
      assertThat(done("verify" + book)).isNotBlank();
      assertThat(done("week" + book)).isEqualTo(done("week"));
    }
    assertThat(files(csv).get("sessions.csv").lines().count()).isGreaterThan(200);
  }

  @Test
  void the_columns_tell_their_units_and_stand_in_the_table_that_goes_with_them()
      throws IOException {
    simpleBook();
    assertThat(files(csv).get("sessions.csv").lines().toList())
        .first()
        .isEqualTo(
            "id,date,start,minutes,person,place,operation,material,controls,finishes_ml,respirator,"
                + "seal_checked,worn_percent,note,zone,starts_at");
    assertThat(files(csv).get("sessions.csv"))
        .contains(
            "\r\n1,2026-03-02,09:15,40,Zoë,shop,finishing,,doors-open; window-fan,lacquer=250,,,,,"
                + "Europe/Berlin,2026-03-02T08:15:00Z\r\n");
    String table = files(csv).get("columns.csv");
    for (Map.Entry<String, String> file : files(csv).entrySet()) {
      String name = file.getKey().replace(".csv", "");
      if (!name.equals("columns") && !name.equals("format")) {
        for (String column : file.getValue().lines().findFirst().orElseThrow().split(",", -1)) {
          assertThat(table).contains("\n" + name + "," + column + ",");
        }
      }
    }
  }

  @Test
  void the_document_is_json_that_says_what_it_is_with_lists_as_lists() throws IOException {
    simpleBook();
    Map<String, Object> document = JSON.std.mapFrom(Files.readString(json));
    assertThat(document).containsEntry("format", "motebook-book").containsEntry("version", 4);
    Object session = Shell.at(document, "sessions", 0);
    assertThat(Shell.at(session, "controls")).isEqualTo(List.of("doors-open", "window-fan"));
    assertThat(Shell.at(session, "finishes_ml"))
        .isEqualTo(List.of(Map.of("finish", "lacquer", "ml", 250)));
    assertThat(Shell.at(session, "respirator")).isNull();
    assertThat(Files.readString(json)).endsWith("]}\n");
  }

  @Test
  void no_text_is_a_formula_to_a_spreadsheet_and_all_come_back() throws IOException {
    List<String> notes =
        List.of("=1+1", "+49 30 1", "-5", "@cell", "'quoted", "''twice", "plain", "a \"b\", c");
    int hour = 8;
    for (String note : notes) {
      assertThat(shell.run("log", "10m assembly at " + hour++ + ":00 note " + note).code())
          .isZero();
    }
    done("export --csv " + csv);
    String sessions = files(csv).get("sessions.csv");
    assertThat(sessions)
        .contains(",'=1+1,", ",'+49 30 1,", ",'-5,", ",'@cell,", ",''quoted,", ",'''twice,")
        .contains(",plain,", ",\"a \"\"b\"\", c\",");
    done("import " + csv + " --book " + at("new.db"));
    List<Object> back = new ArrayList<>();
    Object day = shell.json("day --book " + at("new.db"));
    for (Object session : (List<?>) Shell.at(day, "sessions")) {
      back.add(Shell.at(session, "note"));
    }
    assertThat(back).isEqualTo(notes);
  }

  @Test
  void an_earlier_export_gives_way_and_nothing_else_does() throws IOException {
    simpleBook();
    done("log 20m assembly at 14:00");
    done("export --csv " + csv);
    assertThat(files(csv).get("sessions.csv")).contains("assembly");
    Files.writeString(csv.resolve("mine.txt"), "mine");
    done("log 20m assembly at 15:00");
    assertThat(refused("export --csv " + csv)).contains("mine.txt");
    assertThat(files(csv).get("sessions.csv")).doesNotContain(",15:00,");
    assertThat(refused("export --csv " + at("book.db"))).contains("is a file");
    Files.writeString(at("mine.json"), "{\"mine\":1}");
    assertThat(refused("export --json " + at("mine.json"))).contains("--force");
    assertThat(Files.readString(at("mine.json"))).isEqualTo("{\"mine\":1}");
    Shell.Said nowhere = shell.say("export --csv " + at("no/such"));
    assertThat(nowhere.code()).isEqualTo(1);
    assertThat(nowhere.err()).contains("no folder for it");
    Files.createDirectory(at("other"));
    Files.writeString(at("other").resolve("people.csv"), "not ours");
    assertThat(refused("export --csv " + at("other"))).contains("people.csv");
  }

  @Test
  void nothing_half_written_is_left_behind_and_what_a_kill_left_goes() throws IOException {
    simpleBook();
    Files.createDirectory(at(".out-999999999.motebook-part"));
    Files.writeString(at(".out-999999999.motebook-part").resolve("people.csv"), "id");
    Files.writeString(at(".out.json-999999999-4.motebook-part"), "{");
    Files.writeString(at(".outer-999999999.motebook-part"), "another one's");
    Files.move(csv, at(".out.motebook-earlier"));
    done("export --csv " + csv + " --json " + json);
    assertThat(names())
        .containsExactly(
            ".outer-999999999.motebook-part", "book.db", "book.db.copies", "out", "out.json");
  }

  @Test
  void a_book_in_use_is_left_alone_and_a_fresh_one_may_have_been_set_up() throws IOException {
    simpleBook();
    assertThat(refused("import " + csv))
        .contains("is in use already: it holds sessions, more than one person")
        .contains("--book FILE");
    Shell fresh = new Shell(at("fresh.db"));
    assertThat(fresh.say("person rename me Hedda").code()).isZero();
    assertThat(fresh.say("place change shop --volume 50").code()).isZero();
    assertThat(fresh.say("import " + csv).code()).isZero();
    assertThat(fresh.say("person list").out()).contains("me", "Zoë").doesNotContain("Hedda");
    assertThat(fresh.say("undo").out()).contains("Imported the book from");
    assertThat(fresh.say("person list").out()).contains("Hedda").doesNotContain("Zoë");
    assertThat(fresh.say("place list").out()).contains("50 m³");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sessions.csv | ,40,Zoë | ,40m,Zoë | line 2, column minutes: It needs a whole number such as 40, not \"40m\"",
        "sessions.csv | ,40,Zoë | ,4000,Zoë | line 2: A session lasts up to 16 hours",
        "sessions.csv | ,40,Zoë | ,,Zoë | line 2, column minutes: It must not be empty",
        "sessions.csv | ,Zoë, | ,Zoe, | line 2: \"Zoe\" does not stand among the people",
        "sessions.csv | ,09:15, | ,9.15, | line 2, column start: It needs a time such as 09:15",
        "sessions.csv | 2026-03-02,09:15 | 2.3.2026,09:15 | line 2, column date: It needs a date",
        "sessions.csv | =250, | , | line 2, column finishes_ml: It needs items such as \"finish=ml\"",
        "sessions.csv | lacquer=250 | lacquer=250=3 | line 2, column finishes_ml: It needs items",
        "sessions.csv | lacquer=250 | lacquer=lots | line 2, column finishes_ml: It needs a number",
        "sessions.csv | Europe/Berlin | Europe/Nowhere | line 2: There is no time zone",
        "sessions.csv | ,11:00,30,me | ,09:30,30,Zoë | The book as a whole: Sessions 1 and 2 of one person overlap",
        "sessions.csv | 2,2026 | 1,2026 | line 3: Another row has that number",
        "sessions.csv | 2,2026 | -2,2026 | line 3: The id is a number from 1 on",
        "sessions.csv | ,minutes, | ,hours, | line 1: the column \"hours\" is not known",
        "sessions.csv | ,material, | ,minutes, | line 1: the column \"minutes\" comes twice",
        "sessions.csv | 1,2026 | 1,2,2026 | line 2: 17 cells, but 16 columns",
        "sessions.csv | 1,2026 | \"1\"x,2026 | The file sessions.csv cannot be read",
        "sessions.csv | table-saw | tabel-saw | line 3, column operation: It names \"tabel-saw\", which this Motebook does not know; near it is table-saw",
        "sessions.csv | ,oak, | ,oaj, | line 3, column material: It names \"oaj\"",
        "sessions.csv | window-fan | robot | line 2, column controls: It names \"robot\"",
        "sessions.csv | lacquer=250 | laquer=250 | line 2, column finishes_ml: It names \"laquer\", which this Motebook does not know; near it is lacquer",
        "settings.csv | acgih | acgi | line 2, column limit_set: It names \"acgi\", which this Motebook does not know; near it is acgih",
        "settings.csv | ,1.5, | ,15, | line 2: The conversion",
        "settings.csv | me,shop | nobody,shop | \"nobody\" does not stand among the people",
        "places.csv | 2,yard | 2,yard\\n3,attic | The place \"attic\" has no figures",
        "place-figures.csv | outdoors | upstairs | line 3: The kind is indoors or outdoors",
        "place-figures.csv | ,100, | ,0, | line 2: The volume must lie between",
        "format.csv | motebook-book,4 | motebook-book,5 | version 5 of the form, and this Motebook reads up to version 4",
        "format.csv | motebook-book | letter | is no export of a book",
      })
  void what_is_wrong_in_a_folder_is_told_with_file_line_and_column_and_nothing_comes_in(
      String file, String from, String to, String why) throws IOException {
    simpleBook();
    change(file, from, to == null ? "" : to.replace("\\n", "\r\n"));
    String told = refused("import " + csv + " --book " + at("new.db"));
    assertThat(told).contains(why).doesNotContain("Exception");
    if (why.startsWith("line")) {
      assertThat(told).contains(file);
    }
    assertThat(shell.json("history --book " + at("new.db"))).containsEntry("changes", List.of());
    assertThat(done("person list --book " + at("new.db"))).contains("me").doesNotContain("Zoë");
  }

  @Test
  void a_gas_class_that_an_older_program_let_onto_a_filtering_facepiece_comes_in()
      throws IOException {
    done("gear add respirator cup --facepiece \"filtering facepiece\"");
    done("gear add element n95 --for cup --class N95 --opened 2026-03-01");
    done("export --csv " + csv);
    change("elements.csv", ",n95,", ",organic-vapour-n95,");
    done("import " + csv + " --book " + at("new.db"));
    assertThat(done("gear list --book " + at("new.db"))).contains("cup", "n95");
    assertThat(shell.say("gear add element gas --for cup --class organic-vapour-n95").err())
        .contains("\"cup\" is a filtering facepiece");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"operation\":\"table-saw\" | \"operation\":\"tabel-saw\" | column operation: It names \"tabel-saw\", which this Motebook does not know; near it is table-saw",
        "\"minutes\":40 | \"minutes\":\"soon\" | out.json, line 23, column minutes: It needs a whole number",
        "\"minutes\":40 | \"minutes\":[40] | column minutes: It holds no list and no object",
        "\"minutes\":40 | \"minutes\":null | column minutes: It must not be empty",
        "\"minutes\":40 | \"hours\":40 | column hours: It is not known",
        "\"minutes\":40, | '' | column minutes: It is missing",
        "\"minutes\":40 | \"minutes\":40,\"minutes\":41 | column minutes: It comes twice",
        "\"ml\":250 | \"litres\":250 | column finishes_ml: It knows no \"litres\"",
        "\"finish\":\"lacquer\", | '' | column finishes_ml: It holds an item without finish",
        "[\"doors-open\" | [[\"doors-open\"] | column controls: It holds no list and no object",
        "\"people\":[ | \"folk\":[ | \"people\" should stand where \"folk\" stands",
        "\"stopwatches\":[] | \"stopwatches\":[],\"more\":[] | the end should stand where \"more\" stands",
        "\"version\":4 | \"version\":9 | version 9 of the form",
        "\"format\":\"motebook-book\" | \"format\":\"letter\" | is no export of a book",
        "]} | ] | is no whole JSON: at line",
      })
  void what_is_wrong_in_a_document_is_told_with_line_and_column_and_nothing_comes_in(
      String from, String to, String why) throws IOException {
    simpleBook();
    String text = Files.readString(json);
    int at = text.lastIndexOf(from);
    assertThat(at).as(from).isNotNegative();
    Files.writeString(json, text.substring(0, at) + to + text.substring(at + from.length()));
    String told = refused("import " + json + " --book " + at("new.db"));
    assertThat(told).contains(why).doesNotContain("Exception");
    assertThat(shell.json("history --book " + at("new.db"))).containsEntry("changes", List.of());
  }

  @Test
  void an_export_of_an_older_form_brings_its_outdoor_air_speeds_as_they_are_meant_now()
      throws IOException {
    simpleBook();
    change("format.csv", ",4", ",2");
    change("place-figures.csv", "outdoors,15,", "outdoors,270,");
    done("import " + csv + " --book " + at("new.db"));
    assertThat(done("place list --book " + at("new.db")))
        .contains("yard: outdoors, air speed at the face 30 m/min");
    change("format.csv", ",2", ",4");
    change("place-figures.csv", "outdoors,270,", "outdoors,90,");
    done("import " + csv + " --book " + at("other.db"));
    assertThat(done("place list --book " + at("other.db")))
        .contains("yard: outdoors, air speed at the face 90 m/min, estimated as 60");
    done("log 30m assembly of oak outdoors at 13:00 --book " + at("other.db"));
    assertThat(done("day --book " + at("other.db")))
        .contains("The air at the face in yard is estimated as 60 m/min");
  }

  @Test
  void a_control_on_record_that_no_longer_serves_stays_counts_as_none_and_is_named()
      throws IOException {
    done("log 30m orbital sanding of oak with tool vacuum at 9:00");
    done("export --csv " + csv);
    change("sessions.csv", ",tool-vacuum,", ",wet-sanding,");
    done("import " + csv + " --book " + at("new.db"));
    String there = " --book " + at("new.db");
    assertThat(done("verify" + there)).contains("The book is whole: 1 session");
    Map<String, Object> day = shell.json("day 2026-03-02" + there);
    assertThat(Shell.at(day, "sessions", 0, "controls")).isEqualTo(List.of("wet-sanding"));
    // Without a control 25 mg/m³ over the first hour, a little less over its first half.
    assertThat((Double) Shell.at(day, "sessions", 0, "mean_outside_mg_m3")).isBetween(22.0, 25.0);
    assertThat(Shell.at(day, "remarks").toString())
        .contains(
            "In session 1 wet sanding counts as none: it does not help with orbital sanding."
                + " Water and a mains tool do not go together");
    assertThat(refused("log 30m orbital sanding of oak with wet sanding at 11:00" + there))
        .contains("Wet sanding does not help with orbital sanding. Water and a mains tool")
        .contains("It works with block sanding.");
    done("log 30m block sanding of oak with wet sanding at 11:00" + there);
    done("undo" + there);
    done("undo" + there);
    done("export --csv " + at("again") + there);
  }

  @Test
  void every_bad_row_is_told_and_of_very_many_the_first_twenty() throws IOException {
    simpleBook();
    change("sessions.csv", ",40,", ",x,");
    change("sessions.csv", ",30,", ",y,");
    assertThat(refused("import " + csv + " --book " + at("new.db")).lines())
        .satisfiesExactly(
            first -> assertThat(first).contains("line 2, column minutes"),
            second -> assertThat(second).contains("line 3, column minutes"),
            last -> assertThat(last).contains("Nothing was written"));
    String row = "9,2026-03-02,x,1,me,shop,assembly,,,,,,,,UTC,2026-03-02T08:00:00Z\r\n";
    Files.writeString(
        csv.resolve("sessions.csv"),
        Files.readString(csv.resolve("sessions.csv")) + row.repeat(30));
    assertThat(refused("import " + csv + " --book " + at("new.db")).lines().toList())
        .hasSize(22)
        .contains("and 12 more");
  }

  @Test
  void a_folder_or_file_that_is_no_export_is_told() throws IOException {
    simpleBook();
    Files.delete(csv.resolve("upkeep.csv"));
    Files.delete(csv.resolve("samples.csv"));
    assertThat(refused("import " + csv + " --book " + at("new.db")))
        .contains("it lacks upkeep.csv, samples.csv");
    Files.createDirectory(at("empty"));
    assertThat(refused("import " + at("empty") + " --book " + at("new.db")))
        .contains("it holds no format.csv");
    assertThat(refused("import " + at("nowhere"))).contains("There is no file or folder");
    Files.writeString(at("list.json"), "[1,2]");
    assertThat(refused("import " + at("list.json") + " --book " + at("new.db")))
        .contains("is no export of a book");
  }

  @Test
  void a_file_that_is_not_utf_8_is_told() throws IOException {
    simpleBook();
    Path people = csv.resolve("people.csv");
    Files.write(people, Files.readString(people).getBytes(StandardCharsets.ISO_8859_1));
    assertThat(refused("import " + csv + " --book " + at("new.db")))
        .contains("people.csv is not UTF-8 text");
  }

  /** Spreadsheets put a mark in front and end lines their own way; people move columns about. */
  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n"})
  void what_a_spreadsheet_makes_of_a_file_comes_in_too(String end) throws IOException {
    simpleBook();
    Path people = csv.resolve("people.csv");
    String turned =
        Files.readString(people)
            .lines()
            .map(line -> line.split(",", -1)[1] + "," + line.split(",", -1)[0])
            .collect(Collectors.joining(end, "\uFEFF", end + end));
    Files.writeString(people, turned);
    done("import " + csv + " --book " + at("new.db"));
    assertThat(done("person list --book " + at("new.db"))).contains("me", "Zoë");
  }

  @Test
  void several_things_go_out_at_once() {
    simpleBook();
    assertThat(
            done(
                "export --json "
                    + json
                    + " --calendar "
                    + at("due.ics")
                    + " --html "
                    + at("w.html")))
        .contains("The book is in", "The sheet of the week", "Nothing has a date yet");
  }

  @Test
  void where_there_is_no_sheet_the_book_does_not_go_out_either() throws IOException {
    simpleBook();
    List<String> before = names();
    assertThat(refused("export --csv %s --html %s --week 2001-01-01".formatted(csv, at("w.html"))))
        .contains("there is no sheet");
    assertThat(names()).isEqualTo(before);
  }
}
