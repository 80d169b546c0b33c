package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RefusedLinesTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          orbital sanding                            | orbital      | begins with how long the work took
          note hello                                 | -            | says nothing
          40 orbital sanding                         | 40           | say 40m for minutes, or a stretch
          2 orbital sanding                          | 2            | say 2m for minutes, 2h for hours
          1.5 orbital sanding                        | 1.5          | has no unit
          -40m table saw                             | 40m          | "-40m" is no duration
          40m table saw at -9:15                     | 9:15         | no time of day
          0m table saw                               | 0m           | at least one minute
          9:00-9:00 table saw                        | 9:00-9:00    | at least one minute
          17h table saw                              | 17h          | up to 16 hours; this one would last 17h
          961m table saw                             | 961m         | up to 16 hours; this one would last 16h1m
          999999m table saw                          | 999999m      | up to 16 hours
          9-10 table saw                             | 9-10         | say 9:00-10:00
          9:30-9:00 table saw                        | 9:30-9:00    | ends before it begins
          9:00-25:00 table saw                       | 9:00-25:00   | a time that no clock shows
          13pm-2pm table saw                         | 13pm-2pm     | a time that no clock shows
          40m                                        | -            | What was done is missing
          40m of oak                                 | -            | 40m orbital sanding of oak
          30m in garage                              | -            | say: 30m in shop in Big Garage
          40m xyzzy                                  | xyzzy        | names neither an operation nor a material
          40m sand oak                               | sand         | orbital sanding, hand belt sanding, block sanding
          40m table saw with hood                    | hood         | collector or overhead hood
          40m table saw of p                         | p            | pine, plywood
          25m damp sweeping                          | damp         | say: with damp sweeping
          40m table saw big garage                   | big garage   | say: in Big Garage
          40m table saw ana                          | ana          | say: by Ana Lee
          40m table saw with oak                     | oak          | say: of oak
          40m table saw monday at 9:00               | monday       | say: on monday
          40m table saw 9:15                         | 9:15         | say: at 9:15
          40m table saw band saw                     | band saw     | The operation is said twice: "table saw" and "band saw"
          40m table saw of oak pine                  | pine         | The material is said twice: "oak" and "pine"
          40m table saw in shop in garage            | garage       | The place is said twice: "shop" and "garage"
          40m table saw outdoors in shop             | shop         | The place is said twice: "outdoors" and "shop"
          40m table saw by me by ana                 | ana          | The person is said twice
          40m table saw at 9:00 at 9:15              | 9:15         | The start is said twice: "9:00" and "9:15"
          9:00-9:30 table saw at 9:15                | 9:15         | The start is said twice: "9:00-9:30" and "9:15"
          40m table saw on monday on tuesday at 9:00 | tuesday      | The date is said twice
          40m table saw with collector and collector | collector    | The control "collector" is said twice
          40m table saw in nowhere                   | nowhere      | It has shop, Big Garage and yard
          40m table saw by zachary                   | zachary      | It has me and Ana Lee
          40m table saw of xyzzy                     | xyzzy        | is no material. Known are hardwood, oak
          40m table saw with xyzzy                   | xyzzy        | is no control. Known are tool vacuum
          40m table saw at 9                         | 9            | say at 9:00, at 9am or at 9pm
          40m table saw at 25:00                     | 25:00        | say it as 9:15, 14:30 or 2:30pm
          40m table saw by Bob                       | Bob          | The book has no person "Bob". It has
          40m table saw by Bob                       | Bob          | The book has no person "Bob"
          40m table saw oak wiht collector           | wiht         | did you mean with?
          40m table saw oak nte slow                 | nte slow     | did you mean note?
          40m table saw at lunch                     | lunch        | no time of day
          40m table saw on yesterday                 | yesterday    | the start must be said too
          40m table saw today                        | today        | the start must be said too
          40m table saw on 2026-02-30 at 9:00        | 2026-02-30   | is no date
          40m table saw on 3/2 at 9:00               | 3/2          | say it as 2026-03-02, today
          40m table saw on 1850-01-01 at 9:00        | -            | outside 1900 to 2199
          40m table saw at                           | at           | wants a time of day after it: at 9:15
          40m table saw with                         | with         | wants a control after it
          40m table saw with collector and           | and          | joins one control to another
          40m table saw and collector                | collector    | say: with collector
          40m table saw the                          | the          | has no name after it. Leave it out
          40m table saw checked                      | checked      | belongs after a respirator
          40m table saw wearing half mask checked 95% at 9:15 | half mask | Leave "wearing half mask" out
          40m table saw with tool vacuum of oak      | tool vacuum  | does not help with table saw. It works with orbital sanding
          40m table saw with air cleaner             | air cleaner  | does not know the clean-air flow
          40m table saw with window fan              | window fan   | does not know the flow of the window fan
          40m table saw with doors open outdoors     | doors open   | yard is outdoors
          40m table saw at 14:00                     | 14:00        | would end at 14:40 on 2026-03-04, which is still to come
          14:00-15:00 table saw                      | 14:00-15:00  | still to come: it is 14:30
          40m table saw on 2026-03-05 at 9:00        | 9:00         | would end at 09:40 on 2026-03-05
          """)
  void a_line_is_refused_at_the_word_that_is_wrong(String line, String words, String message) {
    Refusals refused = Refusals.of(line);
    refused.message().contains(message);
    if (words.equals("-")) {
      refused.nowhere();
    } else {
      refused.at(words);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\t\n", "\u200b\u202e", "-", ",,/"})
  void an_empty_line_is_told_what_to_say(String line) {
    Refusals.of(line).nowhere().message().contains("40m orbital sanding of oak");
  }

  @Test
  void offsets_hold_where_characters_are_stripped() {
    Refusals.of("\u202e40\u200bm\u0007  \t orb\u200bitel\u202c sanding\u0000")
        .at("orb\u200bitel")
        .message()
        .contains("did you mean orbital sanding?");
    Refusals.of("40m table saw in cafe\u0301 \ud83e\udeb5").at("cafe\u0301 \ud83e\udeb5");
  }

  @Test
  void stripped_characters_do_not_hinder_reading() {
    assertThat(
            SpokenLine.read("\u202e4\u200b0\u200dm\u00a0ta\u00adble\u2003saw\u0000", Scenes.usual())
                .operation())
        .isEqualTo("table-saw");
  }

  @Test
  void a_long_note_is_refused_and_pointed_at() {
    String line = "40m table saw note" + " x".repeat(5000);
    Refusals.of(line).at(" x".repeat(5000)).message().contains("a note holds up to 1000");
  }

  @Test
  void a_long_line_is_refused() {
    Refusals.of("40m table saw " + "oak ".repeat(1000)).message().contains("up to 4000 characters");
    Refusals.of("4".repeat(1_000_000)).message().contains("up to 4000 characters");
  }

  @Test
  void the_longest_line_of_unknown_words_is_refused_with_a_short_message() {
    Refusals.of("40m " + "zq ".repeat(1300)).message().contains("zq zq").hasSizeLessThan(400);
    Refusals.of("40m " + "z".repeat(3900)).message().contains("…").hasSizeLessThan(400);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "40m table saw'; DROP TABLE session; --",
        "40m table saw in '\"; delete from place",
        "40m \ud83e\udeb5\ud83e\ude9a of \ud83c\udf33",
        "40m table saw in ../../etc/passwd",
        "40m table saw by %s%n$1"
      })
  void hostile_words_are_only_unknown_words(String line) {
    assertThat(Refusals.of(line).refusal().from()).isPositive();
  }

  @Test
  void outdoors_asks_which_where_several_places_would_do_and_none_is_the_yard() {
    Scene several =
        Scenes.places(
            Scenes.SHOP,
            Scenes.MEADOW,
            new motebook.model.Place(5, "lane", Scenes.MEADOW.surroundings()));
    Refusals.of("9m assembly outdoors", several)
        .at("outdoors")
        .message()
        .contains("Say which: in meadow or in lane");
    Refusals.of("9m assembly outdoors", Scenes.places(Scenes.SHOP))
        .at("outdoors")
        .message()
        .contains("no place outdoors");
  }

  @Test
  void a_respirator_not_held_is_told_with_those_that_are() {
    Refusals.of("40m table saw wearing xyzzy", Scenes.masks("half mask", "hood"))
        .at("xyzzy")
        .message()
        .contains("It holds half mask and hood");
    Refusals.of("40m table saw wearing half mask 0%", Scenes.masks("half mask"))
        .at("half mask 0%")
        .message()
        .contains("between 1 and 100 % of the session");
  }

  @Test
  void a_line_that_can_be_read_in_two_ways_offers_both() {
    Refusals.of("9m par pal")
        .nowhere()
        .message()
        .contains("two ways")
        .contains("\"9m orbital sanding of particleboard in shop")
        .contains("\"9m floor sanding of reclaimed wood in shop");
  }
}
