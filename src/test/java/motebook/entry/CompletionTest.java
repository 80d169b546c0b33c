package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CompletionTest {
  private static List<String> complete(String line) {
    return SpokenLine.complete(line, Scenes.usual());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          4                                          | '4m '
          40m orb                                    | 40m orbital sanding
          40m orbital sa                             | 40m orbital sanding
          40m orb sa                                 | 40m orb sanding
          40m tab                                    | 40m table saw
          40m orbital sanding m                      | 40m orbital sanding mdf
          40m orbital sanding of western r           | 40m orbital sanding of western red cedar
          40m orbital sanding wi                     | '40m orbital sanding with '
          40m orbital sanding with tool v            | 40m orbital sanding with tool vacuum
          40m orbital sanding with tool vacuum an    | '40m orbital sanding with tool vacuum and '
          40m orbital sanding with tool vacuum and d | 40m orbital sanding with tool vacuum and downdraft
          40m table saw in                           | 40m table saw in shop
          40m table saw in the b                     | 40m table saw in the big Garage
          40m table saw in B                         | 40m table saw in Big Garage
          40m table saw by an                        | 40m table saw by ana Lee
          40m table saw on yes                       | 40m table saw on yesterday
          40m table saw outd                         | 40m table saw outdoors
          40m table saw no                           | '40m table saw note '
          40m in sh                                  | 40m in shop
          """)
  void the_best_completion_finishes_the_word(String typed, String completed) {
    assertThat(complete(typed)).first().isEqualTo(completed);
  }

  @Test
  void the_start_offered_is_the_one_that_just_ended() {
    assertThat(complete("40m table saw at ")).containsExactly("40m table saw at 13:50");
  }

  @Test
  void after_a_duration_operations_are_offered_after_them_the_joints() {
    assertThat(complete("40m ")).hasSize(8).startsWith("40m orbital sanding");
    assertThat(complete("40m table saw "))
        .containsExactly(
            "40m table saw of ",
            "40m table saw with ",
            "40m table saw in ",
            "40m table saw outdoors",
            "40m table saw by ",
            "40m table saw at ",
            "40m table saw on ",
            "40m table saw note ");
    assertThat(complete("40m table saw")).first().isEqualTo("40m table saw of ");
  }

  @Test
  void what_was_said_is_not_offered_again() {
    assertThat(complete("9:00-9:30 table saw of oak with collector in shop by me "))
        .containsExactly(
            "9:00-9:30 table saw of oak with collector in shop by me on ",
            "9:00-9:30 table saw of oak with collector in shop by me note ");
  }

  @Test
  void only_controls_that_serve_the_operation_in_the_place_are_offered() {
    assertThat(complete("40m table saw with "))
        .containsExactly(
            "40m table saw with collector",
            "40m table saw with machine vacuum",
            "40m table saw with overhead hood",
            "40m table saw with doors open");
    assertThat(complete("40m table saw in garage with "))
        .contains(
            "40m table saw in garage with air cleaner", "40m table saw in garage with window fan");
    assertThat(complete("40m table saw outdoors with "))
        .containsExactly(
            "40m table saw outdoors with collector",
            "40m table saw outdoors with machine vacuum",
            "40m table saw outdoors with overhead hood");
    assertThat(complete("40m table saw with collector and "))
        .doesNotContain("40m table saw with collector and collector");
  }

  @Test
  void respirators_are_offered_when_the_book_holds_some() {
    assertThat(complete("40m table saw of oak ")).noneMatch(line -> line.endsWith("wearing "));
    assertThat(SpokenLine.complete("40m table saw of oak wearing h", Scenes.masks("Half mask")))
        .first()
        .isEqualTo("40m table saw of oak wearing half mask");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "40m xyzzy ",
        "40m table saw note wi",
        "40m table saw band saw ",
        "orbital",
        "40x"
      })
  void nothing_is_offered_in_a_note_or_after_what_cannot_be_read(String line) {
    assertThat(complete(line)).isEmpty();
  }

  @Test
  void every_beginning_of_a_full_line_leads_on_to_it() {
    String full =
        "40m table saw of western red cedar with overhead hood and doors open in Big Garage by Ana Lee";
    for (int end = "40m ".length(); end < full.length(); end++) {
      String typed = full.substring(0, end);
      List<String> next = complete(typed);
      if (!typed.endsWith(" ") && full.charAt(end) != ' ') {
        assertThat(next).as(typed).anyMatch(line -> full.startsWith(line.strip()));
      }
    }
  }

  @Property
  void completions_extend_the_line_are_few_and_differ(@ForAll String line) {
    for (String typed : List.of(line, "40m " + line, "40m table saw " + line)) {
      assertThat(complete(typed))
          .hasSizeLessThanOrEqualTo(8)
          .doesNotHaveDuplicates()
          .allMatch(next -> next.startsWith(typed) && next.length() > typed.length());
    }
  }
}
