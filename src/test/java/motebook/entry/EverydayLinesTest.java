package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines as somebody says them who has not read how they are to be said. */
class EverydayLinesTest {
  private static String reread(String line) {
    return SpokenLine.say(SpokenLine.read(line, Scenes.usual()), Scenes.usual());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "about an hour,60",
    "half an hour,30",
    "a half hour,30",
    "an hour and a half,90",
    "a quarter of an hour,15",
    "three quarters of an hour,45",
    "1.5 h,90",
    "'1,5h',90",
    "'1,5 hours',90",
    "about 40m,40",
    "~40m,40",
    "roughly two hours,120",
    "two and a half hours,150",
    "an hour and 20 minutes,80",
    "1h and 20m,80",
    "one hour twenty minutes,80",
    "twenty-five minutes,25",
    "for 20 minutes,20",
    "1½ h,90",
    "1 1/2 hours,90",
    "½ hour,30",
    "2 hours and a quarter,135",
    "some 20 minutes,20"
  })
  void a_duration_may_be_said_in_words(String duration, int minutes) {
    assertThat(reread(duration + " table saw of oak"))
        .isEqualTo(reread(minutes + "m table saw of oak"));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          20 minutes at the table saw                 | 20m table saw
          20 minutes on the table saw of oak          | 20m table saw of oak
          20m at table saw at 9:15                    | 20m table saw at 9:15
          20 minutes of orbital sanding of some oak   | 20m orbital sanding of oak
          40m a table saw, the oak, with the collector | 40m table saw of oak with collector
          40m orbital sanding of oak with a tool vacuum in the shop | 40m orbital sanding of oak with tool vacuum
          40m the table saw                           | 40m table saw
          orbital sanding of oak 40m                  | 40m orbital sanding of oak
          orbital sanding of oak for about 40 minutes | 40m orbital sanding of oak
          orbital sanding oak with tool vacuum 40m at 9:15 | 40m orbital sanding of oak with tool vacuum at 9:15
          table saw oak 9:00-9:30 with collector      | 9:00-9:30 table saw of oak with collector
          at 9:15 40m table saw                       | 40m table saw at 9:15
          40m random orbit sander, oak                | 40m orbital sanding of oak
          40m palm sander on oak                      | -
          40m planer of oak                           | 40m planer of oak
          40m chop saw, red oak                       | 40m mitre saw of oak
          40m orbital sanding, oak, tool vacuum       | 40m orbital sanding of oak with tool vacuum
          40m table saw, oak, doors open, collector   | 40m table saw of oak with doors open and collector
          """)
  void a_line_means_what_another_one_says(String line, String plain) {
    if (plain.equals("-")) {
      Refusals.of(line).message().contains("say: of oak");
    } else {
      assertThat(reread(line)).isEqualTo(reread(plain));
    }
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          19:15 15m table saw of oak         | 19:15        | 15m orbital sanding of oak at 19:15
          sanding 15m sweeping 10m           | 10m          | How long is said twice: "15m" and "10m"
          table saw of oak 9:15              | table        | such as 40m, 1h20 or 9:00-9:30
          table saw of oak                   | table        | such as 40m, 1h20 or 9:00-9:30
          40m sander of oak                  | sander       | orbital sanding, hand belt sanding, stationary belt sanding, disc sanding or drum sanding
          40m belt sander                    | belt sander  | hand belt sanding or stationary belt sanding
          40m router of oak                  | router       | hand router or router table
          40m saw of oak                     | saw          | table saw, circular saw, mitre saw, band saw or jigsaw
          40m sawing oak                     | sawing       | table saw, circular saw, mitre saw, band saw or jigsaw
          40m on the lathe                   | lathe        | lathe sanding or lathe turning
          40m orbital sanding oak, vacuum    | vacuum       | did you mean "with tool vacuum"?
          40m orbital sanding oak vacuum     | vacuum       | did you mean "with tool vacuum"?
          40m table saw with mask            | mask         | is worn, and the book holds no respirator yet
          40m table saw oak this morning     | this morning | say when: at 9:15
          40m table saw oak in the afternoon | afternoon    | say when: at 9:15
          40m table saw at noon              | noon         | say when: at 9:15
          40m table saw of walnut            | walnut       | There is no material "walnut"; hardwood stands for it: say of hardwood.
          40m table saw black walnut         | black walnut | hardwood stands for it
          40m table saw, douglas fir         | douglas fir  | softwood stands for it: say of softwood
          40m table saw of teak              | teak         | tropical or exotic wood stands for it
          40m table saw of birch plywood     | birch        | a material is said already
          25m sweepng                        | sweepng      | did you mean
          40m with table saw                 | table saw    | stands alone: leave out the word before it
          """)
  void what_is_not_understood_is_answered_with_what_would_be_right(
      String line, String words, String answer) {
    Refusals.of(line).at(words).message().contains(answer);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"with mask", "with a half mask", "with respirator", "half mask", "with a N95"})
  void a_mask_is_worn_and_no_control(String said) {
    Refusals.of("40m table saw of oak " + said, Scenes.masks("half mask"))
        .message()
        .contains("say: wearing half mask");
  }

  @Test
  void a_choice_with_a_joint_is_set_off_from_the_others() {
    Refusals.of("25m sweping").message().contains("\"dry sweeping\" or \"with damp sweeping\"");
  }

  @Test
  void a_line_with_its_duration_behind_is_completed_behind_it() {
    List<String> next = SpokenLine.complete("table saw of oak 40m with col", Scenes.usual());
    assertThat(next).contains("table saw of oak 40m with collector");
  }
}
