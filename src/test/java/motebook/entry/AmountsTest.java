package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import motebook.model.Amount;
import motebook.model.MaskUse;
import motebook.model.OwnFinish;
import motebook.model.Work;
import motebook.reference.Finishes;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Amounts of finishes in the spoken line. */
class AmountsTest {
  private static Work read(String line) {
    return SpokenLine.read(line, Scenes.usual());
  }

  @Test
  void the_line_of_a_lacquered_day_is_read_and_said_back_in_full() {
    Scene scene = Scenes.masks("half mask");
    Work work =
        SpokenLine.read(
            "25m finishing with doors open using 250ml lacquer and 50ml lacquer thinner wearing"
                + " half mask checked",
            scene);
    assertThat(work.amounts())
        .containsExactly(new Amount("lacquer", 250), new Amount("lacquer-thinner", 50));
    assertThat(work.controls()).containsExactly("doors-open");
    assertThat(work.mask()).contains(new MaskUse("half mask", true, 100));
    assertThat(SpokenLine.say(work, scene))
        .isEqualTo(
            "25m finishing with doors open using 250ml lacquer and 50ml lacquer thinner in shop"
                + " wearing half mask checked by me at 14:05 on 2026-03-04");
  }

  @ParameterizedTest
  @CsvSource({
    // A US gallon is 231 cubic inches, an inch 2.54 cm, both by definition; 128 ounces to it.
    "8 fl oz,236.5882365",
    "8floz,236.5882365",
    "1 fl. oz.,29.5735295625",
    "2 fluid ounces,59.147059125",
    "1 pint,473.176473",
    "1/2 pt,236.5882365",
    "1 quart,946.352946",
    "2 qt,1892.705892",
    "1 gallon,3785.411784",
    "250ml,250",
    "250 ML,250",
    "250 millilitres,250",
    "250 milliliters,250",
    "0.5l,500",
    "'0,75 l',750",
    "1.5 litres,1500",
    "1 liter of,1000"
  })
  void an_amount_is_understood_in_every_unit(String amount, double millilitres) {
    assertThat(read("25m finishing using " + amount + " shellac").amounts())
        .singleElement()
        .satisfies(it -> assertThat(it.finish()).isEqualTo("shellac"))
        .satisfies(it -> assertThat(it.millilitres()).isCloseTo(millilitres, within(1e-6)));
  }

  @ParameterizedTest
  @CsvSource({
    "lacquer,lacquer",
    "nitrocellulose lacquer,lacquer",
    "lacquer thinner,lacquer-thinner",
    "thinner,lacquer-thinner",
    "precat lacquer,acrylic-lacquer",
    "danish oil,wiping-oil",
    "linseed oil,drying-oil",
    "mineral spirits,spirits",
    "white spirit,spirits",
    "contact cement,contact-cement",
    "two-part polyurethane,two-part-polyurethane",
    "water-borne finish,waterborne",
    "shel,shellac"
  })
  void a_finish_answers_to_its_names_and_to_their_beginnings(String name, String key) {
    assertThat(read("25m finishing using 100ml " + name + " at 9:00").amounts())
        .containsExactly(new Amount(key, 100));
  }

  @Test
  void amounts_are_joined_by_and_or_a_comma_and_stand_anywhere() {
    List<Amount> both = List.of(new Amount("oil-stain", 40), new Amount("spirits", 20));
    for (String line :
        List.of(
            "25m finishing of oak using 40ml oil stain, 20ml spirits in shop",
            "25m finishing of oak with 40ml oil stain and 20ml spirits in shop",
            "25m finishing using 40 ml of oil stain and 20 ml of spirits of oak",
            "25m using 40ml oil stain and 20ml spirits finishing oak with doors open")) {
      assertThat(read(line).amounts()).as(line).isEqualTo(both);
    }
  }

  @Test
  void and_after_an_amount_joins_amounts_and_after_a_control_controls() {
    Work work =
        SpokenLine.read(
            "25m finishing using 40ml lacquer and 20ml thinner with doors open and window fan in"
                + " big garage",
            Scenes.usual());
    assertThat(work.amounts()).hasSize(2);
    assertThat(work.controls()).containsExactly("doors-open", "window-fan");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          40m table saw using 250ml lacquer              | lacquer         | No finish is used at table saw: amounts belong to assembly and finishing
          40m finishing using                            | using           | "using" wants a finish after it: using 250ml lacquer
          40m finishing using 250ml                      | using 250ml     | wants a finish after it
          40m finishing using 250ml with doors open      | using 250ml     | wants a finish after it
          40m finishing using lacquer in shop            | lacquer         | does not begin with an amount. Say how much
          40m finishing using -5ml lacquer               | 5ml lacquer     | "-5ml lacquer" does not begin with an amount
          40m finishing using 250 lacquer                | 250 lacquer     | does not begin with an amount
          40m finishing using 1,500ml lacquer            | 1,500ml lacquer | does not begin with an amount
          40m finishing using 250ml laquer               | laquer          | did you mean lacquer
          40m finishing using 250ml xyzzy                | xyzzy           | is no finish. Known are lacquer, acrylic lacquer
          40m finishing with 250ml xyzzy                 | xyzzy           | is no finish. Known are lacquer, acrylic lacquer
          40m finishing in 250ml lacquer                 | in              | "in" wants a place after it
          40m finishing using 50ml lacquer and 9ml xyzzy | xyzzy           | is no finish
          40m finishing using 250ml poly                 | poly            | may be oil polyurethane or two part polyurethane
          40m finishing using 9ml lacquer and 9ml lacquer | lacquer        | is said twice. Add the amounts
          40m finishing using 9ml lacquer using 9ml lacquer | lacquer      | is said twice
          40m finishing using 0ml lacquer                | lacquer         | must lie between 0.1 and 100000 ml
          40m finishing using 101l lacquer               | lacquer         | must lie between 0.1 and 100000 ml
          40m finishing with doors open and 9ml lacquer  | 9ml lacquer     | -
          40m finishing lacquer                          | lacquer         | is a finish; say: using 250ml lacquer
          """)
  void a_line_is_refused_at_the_word_that_is_wrong(String line, String words, String message) {
    Refusals refused = Refusals.of(line);
    if (!message.equals("-")) {
      refused.message().contains(message);
      refused.at(words);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"40m finishing with doors open and 9ml lacquer", "40m finishing 9ml oil"})
  void an_amount_that_no_using_opens_is_refused(String line) {
    Refusals.of(line).message().isNotBlank();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          40m finishing us                                | '40m finishing using '
          40m finishing using                             | '40m finishing using 250ml '
          40m finishing using 40ml lacq                   | 40m finishing using 40ml lacquer
          40m finishing using 40ml lacquer th             | 40m finishing using 40ml lacquer thinner
          40m finishing using 40ml lacquer an             | '40m finishing using 40ml lacquer and '
          40m finishing using 40ml lacquer and            | 40m finishing using 40ml lacquer and 250ml
          40m finishing using 40ml lacquer and 9ml spi    | 40m finishing using 40ml lacquer and 9ml spirits
          """)
  void the_best_completion_finishes_the_word(String typed, String completed) {
    assertThat(SpokenLine.complete(typed, Scenes.usual()))
        .first()
        .satisfies(it -> assertThat(it.strip()).isEqualTo(completed.strip()));
  }

  @Test
  void finishes_are_offered_after_an_amount_and_using_only_where_finishes_are_used() {
    assertThat(SpokenLine.complete("40m finishing using 40ml ", Scenes.usual()))
        .hasSize(8)
        .startsWith("40m finishing using 40ml lacquer");
    assertThat(SpokenLine.complete("40m finishing ", Scenes.usual()))
        .contains("40m finishing using ");
    assertThat(SpokenLine.complete("40m table saw ", Scenes.usual()))
        .noneMatch(line -> line.contains("using"));
  }

  @Test
  void an_own_finish_is_read_and_said_by_its_own_name() {
    Scene scene = with(new OwnFinish("Quick Clear 2/1", "lacquer", 600, Map.of("acetone", 1.0)));
    Work work = SpokenLine.read("25m finishing using 30ml quick clear at 9:00", scene);
    assertThat(work.amounts()).containsExactly(new Amount("quick-clear-2-1", 30));
    assertThat(SpokenLine.say(work, scene)).contains("using 30ml Quick Clear 2/1 in shop");
  }

  private static Scene with(OwnFinish... own) {
    Scene usual = Scenes.usual();
    return new Scene(
        LocalDateTime.of(2026, 3, 4, 14, 30),
        usual.person(),
        usual.place(),
        usual.people(),
        usual.places(),
        usual.respirators(),
        usual.reference(),
        () -> Finishes.shipped().with(List.of(own)),
        false,
        false);
  }

  @Property
  void any_amount_is_written_so_that_it_reads_as_the_same(
      @ForAll @DoubleRange(min = 0.1, max = 100_000) double millilitres) {
    String line = "25m finishing using " + Amounts.written(millilitres) + " shellac";
    assertThat(read(line).amounts()).containsExactly(new Amount("shellac", millilitres));
  }

  @ParameterizedTest
  @CsvSource({
    "250ml,250ml",
    "0.25 l,250ml",
    "12.5 ml,12.5ml",
    "8 fl oz,8 fl oz",
    "1/2 pt,8 fl oz",
    "3fl oz,3 fl oz",
    "0.75 fl oz,0.75 fl oz",
    "1 pint,1 pint",
    "1/3 pint,1/3 pint",
    "2 quarts,2 quart",
    "1 gallon,1 gallon",
    "1/7 pint,67.596639ml",
    "88.720589 ml,3 fl oz"
  })
  void an_amount_is_said_back_in_few_digits(String said, String back) {
    Work work = read("25m finishing using " + said + " shellac at 9:00");
    String line = SpokenLine.say(work, Scenes.usual());
    assertThat(line).contains("using " + back + " shellac");
    assertThat(read(line).amounts()).isEqualTo(work.amounts());
  }

  @Property
  void what_is_said_in_american_units_is_said_back_in_them_and_reads_the_same(
      @ForAll @IntRange(min = 1, max = 100) int quarters, @ForAll("american") String unit) {
    Work work = read("25m finishing using " + quarters / 4.0 + " " + unit + " shellac at 9:00");
    String line = SpokenLine.say(work, Scenes.usual());
    assertThat(read(line).amounts()).isEqualTo(work.amounts());
    assertThat(line).doesNotContainPattern("\\.\\d{3}");
  }

  @Provide
  Arbitrary<String> american() {
    return Arbitraries.of("fl oz", "pint", "quart", "gallon");
  }
}
