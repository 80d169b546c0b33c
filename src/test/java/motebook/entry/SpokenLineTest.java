package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import motebook.model.MaskUse;
import motebook.model.Work;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpokenLineTest {
  private static String reread(String line) {
    return SpokenLine.say(SpokenLine.read(line, Scenes.usual()), Scenes.usual());
  }

  @Test
  void a_full_line_fills_every_part_of_a_session() {
    String line =
        "40m orbital sanding of mdf with tool vacuum and air cleaner in big garage"
            + " wearing half mask checked 95% by ana lee at 9:15 on 2026-03-02 note end of day";
    assertThat(SpokenLine.read(line, Scenes.masks("half mask")))
        .isEqualTo(
            new Work(
                "Ana Lee",
                "Big Garage",
                LocalDate.of(2026, 3, 2),
                LocalTime.of(9, 15),
                40,
                "orbital-sanding",
                Optional.of("mdf"),
                List.of("tool-vacuum", "air-cleaner"),
                Optional.of(new MaskUse("half mask", true, 95)),
                "end of day"));
  }

  @Test
  void a_short_line_takes_the_rest_from_the_scene_and_has_just_ended() {
    assertThat(SpokenLine.read("40m table saw", Scenes.usual()))
        .isEqualTo(
            new Work(
                "me",
                "shop",
                LocalDate.of(2026, 3, 4),
                LocalTime.of(13, 50),
                40,
                "table-saw",
                Optional.empty(),
                List.of(),
                Optional.empty(),
                ""));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          9:00-9:30 table saw oak with collector | 30m table saw of oak with collector in shop by me at 09:00 on 2026-03-04
          1h20 assembly | 1h20m assembly in shop by me at 13:10 on 2026-03-04
          25m sweeping outdoors note end of day | 25m dry sweeping in yard by me at 14:05 on 2026-03-04 note end of day
          30m in the shop | 30m in shop in shop by me at 14:00 on 2026-03-04
          30m in shop | 30m in shop in shop by me at 14:00 on 2026-03-04
          30m in the shop, no dusty work | 30m in shop in shop by me at 14:00 on 2026-03-04
          20m in shop in garage | 20m in shop in Big Garage by me at 14:10 on 2026-03-04
          20m in the shop in the garage | 20m in shop in Big Garage by me at 14:10 on 2026-03-04
          20m table saw in the shop | 20m table saw in shop by me at 14:10 on 2026-03-04
          25m with damp sweeping | 25m dry sweeping with damp sweeping in shop by me at 14:05 on 2026-03-04
          40m ORB SAND CEDAR WITH TOOL VAC | 40m orbital sanding of western red cedar with tool vacuum in shop by me at 13:50 on 2026-03-04
          40m block-sanding of wood with old paint with wet-sanding | 40m block sanding of old paint with wet sanding in shop by me at 13:50 on 2026-03-04
          40m orbital sanding with vacuum on the tool and doors and windows open | 40m orbital sanding with tool vacuum and doors open in shop by me at 13:50 on 2026-03-04
          40m orbital sanding with vacuum on the tool on monday at 9:00 | 40m orbital sanding with tool vacuum in shop by me at 09:00 on 2026-03-02
          40m orbital sanding with bag or box on the tool of oak | 40m orbital sanding of oak with tool bag in shop by me at 13:50 on 2026-03-04
          40m table saw with over-blade hood with base extraction with doors open | 40m table saw with overhead hood and doors open in shop by me at 13:50 on 2026-03-04
          40m table saw with dust collector with a hood at the machine at 9:00 | 40m table saw with collector in shop by me at 09:00 on 2026-03-04
          40m assembly and bench work | 40m assembly in shop by me at 13:50 on 2026-03-04
          40m emptying bags and canisters outdoors | 40m emptying bags in yard by me at 13:50 on 2026-03-04
          40m table saw, oak, with collector, doors open, by ana | 40m table saw of oak with collector and doors open in shop by Ana Lee at 13:50 on 2026-03-04
          40m by ana in garage with collector of oak at 9am table saw | 40m table saw of oak with collector in Big Garage by Ana Lee at 09:00 on 2026-03-04
          40m table saw with collector and with doors open | 40m table saw with collector and doors open in shop by me at 13:50 on 2026-03-04
          40m table saw with collector of oak with doors open | 40m table saw of oak with collector and doors open in shop by me at 13:50 on 2026-03-04
          40m planer of tropical or exotic wood | 40m planer of tropical or exotic wood in shop by me at 13:50 on 2026-03-04
          40m table saw yesterday at 9:15 | 40m table saw in shop by me at 09:15 on 2026-03-03
          40m assembly pl | 40m assembly of plywood in shop by me at 13:50 on 2026-03-04
          """)
  void a_line_means(String line, String meaning) {
    assertThat(reread(line)).isEqualTo(meaning);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "40m,40", "40 m,40", "40min,40", "40 mins,40", "40 minutes,40", "1 minute,1", "1h,60",
    "1 hour,60", "2 hours,120", "1h20,80", "1h20m,80", "1h 20m,80", "1 h 20 min,80", "1h5,65",
    "1.5h,90", "0.25 h,15", "1:20,80", "0:05,5", "16h,960", "960m,960"
  })
  void a_line_begins_with_a_duration(String duration, int minutes) {
    Scene late = Scenes.at(Scenes.NOW.withHour(23));
    assertThat(SpokenLine.read(duration + " table saw", late).minutes()).isEqualTo(minutes);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "9:00-9:30,09:00,30",
    "9-9:30,09:00,30",
    "9:00–9:30,09:00,30",
    "9:00 - 9:30,09:00,30",
    "9:00 – 9:30,09:00,30",
    "9:00 to 9:30,09:00,30",
    "from 9:00 to 9:30,09:00,30",
    "9am-10am,09:00,60",
    "9am-10,09:00,60",
    "9:00am - 1:30pm,09:00,270",
    "1-2:30pm,13:00,90",
    "11-1pm,11:00,120",
    "12:15pm-1pm,12:15,45",
    "12am-1am,00:00,60",
    "9.30-10.15,09:30,45",
    "14h00-14h30,14:00,30",
    "00:00-00:20,00:00,20"
  })
  void a_line_begins_with_a_stretch(String stretch, LocalTime start, int minutes) {
    Work work = SpokenLine.read(stretch + " table saw", Scenes.usual());
    assertThat(work.start()).isEqualTo(start);
    assertThat(work.minutes()).isEqualTo(minutes);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"23:30-24:00", "23:30-0:00", "23:30-00:00", "11:30pm-12am"})
  void a_stretch_may_end_at_midnight(String stretch) {
    Work work = SpokenLine.read(stretch + " table saw on yesterday", Scenes.usual());
    assertThat(work.endMinute()).isEqualTo(24 * 60);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "9:15,09:15",
    "09:15,09:15",
    "9.30,09:30",
    "14h10,14:10",
    "9am,09:00",
    "9 am,09:00",
    "2:10pm,14:10",
    "2:10 PM,14:10",
    "12pm,12:00",
    "12:05am,00:05",
    "9:15a.m.,09:15"
  })
  void a_start_is_a_time_of_day(String time, LocalTime start) {
    assertThat(SpokenLine.read("10m table saw at " + time + " oak", Scenes.usual()).start())
        .isEqualTo(start);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "2026-03-02,2026-03-02", "2026-3-2,2026-03-02", "today,2026-03-04", "yesterday,2026-03-03",
    "Monday,2026-03-02", "mon,2026-03-02", "wednesday,2026-03-04", "thu,2026-02-26",
    "SUN,2026-03-01", "2024-02-29,2024-02-29"
  })
  void a_weekday_is_the_most_recent_one_today_included(String said, LocalDate date) {
    assertThat(SpokenLine.read("10m table saw on " + said + " at 9:15", Scenes.usual()).date())
        .isEqualTo(date);
  }

  @Test
  void a_note_is_the_rest_of_the_line_joints_and_all() {
    Work work =
        SpokenLine.read("40m table saw note: with Ana, at 9:00; oak's end-grain", Scenes.usual());
    assertThat(work.note()).isEqualTo("with Ana, at 9:00; oak's end-grain");
    assertThat(work.person()).isEqualTo("me");
    assertThat(SpokenLine.read("40m table saw NOTE", Scenes.usual()).note()).isEmpty();
  }

  @Test
  void a_whole_name_beats_a_longer_one_that_begins_with_it() {
    Scene scene = Scenes.places(Scenes.SHOP, renamed("shop annex"), renamed("shop annex two"));
    assertThat(SpokenLine.read("40m table saw in shop", scene).place()).isEqualTo("shop");
    assertThat(SpokenLine.read("40m table saw in shop annex", scene).place())
        .isEqualTo("shop annex");
    assertThat(SpokenLine.read("40m table saw in annex two", scene).place())
        .isEqualTo("shop annex two");
  }

  @Test
  void names_that_differ_in_a_mark_are_told_apart_when_typed_exactly() {
    Scene scene = Scenes.places(renamed("bay 1a"), renamed("Bay-1a"), renamed("bay 1a,"));
    for (String place : List.of("bay 1a", "Bay-1a", "bay 1a,")) {
      assertThat(SpokenLine.read("40m table saw in " + place + " by me", scene).place())
          .isEqualTo(place);
    }
    Refusals.of("40m table saw in BAY 1A", scene)
        .at("BAY 1A")
        .message()
        .contains("bay 1a, Bay-1a or bay 1a,");
  }

  @Test
  void outdoors_is_the_yard_or_the_only_place_outdoors() {
    assertThat(
            SpokenLine.read(
                    "9m assembly outdoors", Scenes.places(Scenes.SHOP, Scenes.MEADOW, Scenes.YARD))
                .place())
        .isEqualTo("yard");
    assertThat(
            SpokenLine.read("9m assembly outdoors", Scenes.places(Scenes.SHOP, Scenes.MEADOW))
                .place())
        .isEqualTo("meadow");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "wearing half mask,false,100",
    "wearing the half checked,true,100",
    "wearing half mask 95%,false,95",
    "wearing half mask 95 % checked,true,95",
    "wearing half checked 12.5% of oak,true,12.5"
  })
  void a_respirator_may_be_checked_and_worn_part_of_the_time(
      String worn, boolean checked, double percent) {
    assertThat(SpokenLine.read("40m table saw " + worn, Scenes.masks("half mask", "hood")).mask())
        .contains(new MaskUse("half mask", checked, percent));
  }

  @Test
  void a_name_said_in_full_goes_before_a_name_behind_a_word_that_says_nothing() {
    assertThat(SpokenLine.read("9m assembly wearing a hood", Scenes.masks("a hood", "hood")).mask())
        .contains(new MaskUse("a hood", false, 100));
  }

  static motebook.model.Place renamed(String name) {
    return new motebook.model.Place(9, name, Scenes.SHOP.surroundings());
  }
}
