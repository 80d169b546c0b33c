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

  private static String masked(String line) {
    Scene scene = Scenes.masks("half mask");
    return SpokenLine.say(SpokenLine.read(line, scene), scene);
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
          40m palm sander on oak                      | 40m orbital sanding of oak
          40m planer of oak                           | 40m planer of oak
          40m chop saw, red oak                       | 40m mitre saw of oak
          40m orbital sanding, oak, tool vacuum       | 40m orbital sanding of oak with tool vacuum
          40m table saw, oak, doors open, collector   | 40m table saw of oak with doors open and collector
          40m table saw of barn wood                  | 40m table saw of reclaimed wood
          40m table saw oriented strand board         | 40m table saw of particleboard
          40m table saw of OSB                        | 40m table saw of particleboard
          40m table saw of pallet wood                | 40m table saw of reclaimed wood
          40m planer of thuja                         | 40m planer of western red cedar
          40m planer, white cedar                     | 40m planer of western red cedar
          40m table saw of oak with shop vac          | 40m table saw of oak with machine vacuum
          40m planer of oak with vac                  | 40m planer of oak with machine vacuum
          40m orbital sanding of oak with shop vac    | 40m orbital sanding of oak with tool vacuum
          40m track saw of plywood with shop vac      | 40m track saw of plywood with tool vacuum
          40m plunge saw of plywood                   | 40m track saw of plywood
          40m floor sander                            | 40m floor sanding
          40m spindle moulder, oak                    | 40m shaper of oak
          40m CNC of mdf                              | 40m cnc router of mdf
          40m fretsaw                                 | 40m scroll saw
          40m plate joiner                            | 40m biscuit joining
          40m hollow chisel mortiser                  | 40m mortising
          40m electric planer                         | 40m power planing
          40m power chisel                            | 40m reciprocating power chisel
          40m sawing oak by hand                      | 40m hand sawing of oak
          40m dovetail saw                            | 40m hand sawing
          40m hand scraping of old paint              | 40m card scraping of wood with old paint
          40m scraping old paint by hand              | 40m card scraping of wood with old paint
          40m cleaning the filter                     | 40m filter cleaning
          40m sanding drum                            | 40m drum hand sanding
          40m pocket holes                            | 40m drilling
          """)
  void a_line_means_what_another_one_says(String line, String plain) {
    assertThat(reread(line)).isEqualTo(reread(plain));
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
          40m sander of oak                  | sander       | orbital sanding, hand belt sanding, stationary belt sanding, disc sanding, drum sanding, floor sanding, spindle sanding, edge sanding or wide-belt sanding
          40m belt sander                    | belt sander  | hand belt sanding, stationary belt sanding or wide-belt sanding
          40m router of oak                  | router       | hand router, router table or CNC router
          40m saw of oak                     | saw          | table saw, circular saw, mitre saw, band saw, jigsaw, track saw, scroll saw, chainsaw milling or hand sawing
          40m sawing oak                     | sawing       | table saw, circular saw, mitre saw, band saw, jigsaw, track saw, scroll saw or hand sawing
          40m on the lathe                   | lathe        | lathe sanding or lathe turning
          40m orbital sanding oak, vacuum    | vacuum       | did you mean "with tool vacuum"?
          40m orbital sanding oak vacuum     | vacuum       | did you mean "with tool vacuum"?
          40m table saw with mask            | mask         | is worn, and the book holds no respirator yet
          40m table saw oak this morning     | this morning | say when: at 9:15
          40m table saw oak in the afternoon | afternoon    | say when: at 9:15
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
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1 hr 15 finishing with 200 ml lacquer windows open | 75m finishing with doors open using 200ml lacquer
          1 hour 30 table saw oak                     | 90m table saw of oak
          10 min sweeping up                          | 10m dry sweeping
          swept the shop 5m                           | 5m dry sweeping in shop
          swept up for 10 minutes                     | 10m dry sweeping
          vacuumed the floor 10m                      | 10m vacuum clean-up
          emptied the dust collector 5 minutes        | 5m emptying bags
          drilled holes in oak 10m                    | 10m drilling of oak
          ran the planer for half an hour             | 30m planer
          thicknessed oak boards, 20m                 | 20m planer of oak
          jointed some pine boards 20m                | 20m jointer of pine
          spent 2 hours on the bandsaw cutting pine   | 2h band saw of pine
          cut plywood on the table saw for 25 minutes | 25m table saw of plywood
          45 minutes at the mitre saw with dust collector on | 45m mitre saw with collector
          5 minutes chop saw                          | 5m mitre saw
          30m tracksaw mdf with vac                   | 30m track saw of MDF with tool vacuum
          glue up 40 minutes                          | 40m assembly
          40 minutes of glue-up                       | 40m assembly
          assembled a cabinet for 2 hours             | 2h assembly
          1h oiling with 100ml danish oil             | 1h finishing using 100ml wiping oil
          sprayed 250ml nitro lacquer outside 20m     | 20m finishing outdoors using 250ml lacquer
          brushed on 250ml of shellac for 40 min      | 40m finishing using 250ml shellac
          30 min sanding oak by hand                  | 30m block sanding of oak
          30m planing oak by hand                     | 30m hand planing of oak
          30m hand sanding oak 120 grit               | 30m block sanding of oak
          yesterday 2h turning pine 9am               | 2h lathe turning of pine on yesterday at 9:00
          30m orbital sanding of oak at noon          | 30m orbital sanding of oak at 12:00
          orbital sanding oak from 1pm until 1:30pm   | 13:00-13:30 orbital sanding of oak
          20m random orbit sanding mdf, outside, no mask | 20m orbital sanding of mdf outdoors
          30m orbital sanding of oak without a mask   | 30m orbital sanding of oak
          40m table saw of oak, wore half mask, checked | 40m table saw of oak wearing half mask checked
          30m orbital sanding of oak with vacuum attached | 30m orbital sanding of oak with tool vacuum
          sanded on the lathe 15m                     | 15m lathe sanding
          planed oak 10m on the planer                | 10m planer of oak
          30m sanding drawers with my random orbital with vac | 30m orbital sanding with tool vacuum
          sanded a table top with the random orbit sander and shop vac 40 minutes at 9am | 9:00-9:40 orbital sanding with tool vacuum
          40m planer of oak and the air cleaner in big garage | 40m planer of oak with air cleaner in big garage
          sanding oak 40m with orbital                | 40m orbital sanding of oak
          40m sanding oak using an orbital sander with shop vac | 40m orbital sanding of oak with tool vacuum
          cut plywood with a jigsaw 10m               | 10m jigsaw of plywood
          Ran oak through the planer 15 min           | 15m planer of oak
          sanded a desk with the orbital sander for 40 mins | 40m orbital sanding
          20min table saw plywood w/ dust collector   | 20m table saw of plywood with collector
          40m orbital oak w/o a mask                  | 40m orbital sanding of oak
          40m orbital oak no vac                      | 40m orbital sanding of oak
          40m orbital oak, no dust collection         | 40m orbital sanding of oak
          40m orbital oak doors open, tool vacuum running | 40m orbital sanding of oak with doors open and tool vacuum
          40m orbital oak with vac hooked up at 9:00  | 40m orbital sanding of oak with tool vacuum at 9:00
          crosscut some 2x4s on the miter saw 15m     | 15m mitre saw
          planed 20 boards on the planer 40m          | 40m planer
          wiped on 50ml danish oil 15m                | 15m finishing using 50ml wiping oil
          emptied the dust bin 5 min                  | 5m emptying bags
          Ana Lee 40m table saw of oak                | 40m table saw of oak by Ana Lee
          Ana Lee: 40m table saw of oak               | 40m table saw of oak by Ana Lee
          40m table saw of oak, Ana Lee               | 40m table saw of oak by Ana Lee
          Ana Lee did 40m table saw of oak            | 40m table saw of oak by Ana Lee
          30m orbital sanding of oak with the doors open  | 30m orbital sanding of oak with doors open
          """)
  void a_day_is_told_as_somebody_tells_it(String line, String plain) {
    assertThat(masked(line)).isEqualTo(masked(plain));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          planed pine for 20 minutes        | planed      | may be planer, power planing or hand planing. Say which.
          sanded a table top for half an hour | sanded    | may be orbital sanding, hand belt sanding,
          routed edges 15 mins pine         | routed      | may be hand router, router table or CNC router
          cleaned up 10 minutes             | cleaned up  | may be dry sweeping, vacuum clean-up or compressed-air blow-down
          tidied up 15m                     | tidied up   | may be dry sweeping, vacuum clean-up
          45m ripping oak                   | ripping     | may be table saw, circular saw, track saw, mitre saw, band saw, jigsaw or hand sawing
          built a shelf for an hour         | built       | say assembly
          30m orbital sanding with dust extraction | dust extraction | may be tool vacuum or collector
          20m sprayed lacquer               | lacquer     | say: using 250ml lacquer
          30m table saw oak and then 10m sweeping | 10m   | Say two jobs in two lines.
          30m table saw of oak 20 minutes ago | 20 minutes ago | say when: at 9:15
          an hour turning a bowl in cherry  | cherry      | hardwood stands for it: say of hardwood
          sanding oak with belt sander 10m  | belt sander | may be hand belt sanding, stationary belt sanding or wide-belt sanding. Say which.
          varnishing 30m 100 ml             | 100 ml      | of what? Say the finish behind it: using 100 ml lacquer.
          applied 2 oz of shellac 10m       | 2 oz        | say: using 2 fl oz
          20m reciprocating saw of oak      | reciprocating saw | There are no figures for "reciprocating saw"; jigsaw comes nearest. Say that.
          30m radial arm saw, oak           | radial arm saw | mitre saw comes nearest. Say that.
          30m radial arm                    | radial arm  | mitre saw comes nearest. Say that.
          30m stripping                     | stripping   | may be finishing, card scraping or orbital sanding. Say which. A liquid stripper is finishing
          20m between coats                 | between coats | may be block sanding or orbital sanding. Say which.
          30m epoxy sanding                 | epoxy       | There is no material "epoxy". Cured epoxy is not wood
          30m sanding epoxy                 | epoxy       | no wood-dust limit covers it
          20m bobbin sander of oak          | bobbin sander | "bobbin sander": say spindle sanding.
          30m orbital sanding of epoxy      | epoxy       | There is no material "epoxy". Cured epoxy is not wood
          30m laser                         | laser       | what it gives off is smoke, not wood dust, and nothing here estimates it
          30m laser cutting plywood         | laser cutting | There are no figures for "laser cutting". A laser burns the wood
          30m laser cutting then sanding of plywood | laser cutting | nothing here estimates it
          30m heat gun of old paint         | heat gun    | There are no figures for "heat gun". Heat turns lead paint into fumes: do not use a heat gun or torch
          30m stripping old paint with a heat gun | heat gun | have the paint tested
          30m blowtorch of old paint        | blowtorch   | Heat turns lead paint into fumes
          30m burning off paint             | burning off paint | Heat turns lead paint into fumes
          30m joiner of oak                 | joiner      | may be jointer or biscuit joining. Say which.
          resawed oak 20m                   | resawed     | may be band saw or table saw
          swept floor 10 minutes after lunch | after lunch | is no time of day
          40m sanding oak on the table saw  | table saw   | The operation is said twice
          40m no mask table saw wearing half mask | half mask | twice
          """)
  void what_may_be_several_things_is_asked_about(String line, String words, String answer) {
    Refusals.of(line, Scenes.masks("half mask")).at(words).message().contains(answer);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"mask on", "and P100", "with mask on", "with my respirator on"})
  void a_mask_is_never_credited_that_was_not_named(String said) {
    Refusals.of("40m table saw of oak " + said, Scenes.masks("half mask", "hood"))
        .message()
        .contains("say: wearing half mask");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"wearing a mask", "wearing my respirator checked", "wore a mask"})
  void a_mask_at_large_is_asked_about_where_the_book_holds_several(String said) {
    Refusals.of("40m table saw of oak " + said, Scenes.masks("half mask", "hood"))
        .message()
        .contains("may be half mask or hood. Say which.");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"with mask", "with a half mask", "with respirator", "half mask", "with a N95"})
  void a_mask_is_worn_and_no_control(String said) {
    Refusals.of("40m table saw of oak " + said, Scenes.masks("half mask"))
        .message()
        .contains("say: wearing half mask");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          40m table saw of walnut at 9:00   | 40m table saw of hardwood at 9:00
          40m table saw, Black Walnut, dull | ''
          40m table saw black walnut        | 40m table saw hardwood
          40m table saw of birch plywood    | ''
          40m table saw of oak              | ''
          """)
  void a_line_with_a_wood_that_has_no_figures_is_offered_with_what_stands_for_it(
      String line, String offered) {
    assertThat(SpokenLine.withKnownWood(line, Scenes.usual()).orElse("")).isEqualTo(offered);
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
