package motebook.command;

import static motebook.command.Shell.at;
import static motebook.command.Shell.number;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import motebook.desk.Choice;
import motebook.desk.Choices;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettingsCommandTest {
  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db"));
  }

  private String said(String line) {
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(said.err()).isZero();
    return said.out();
  }

  private void refused(String line, String why) {
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(line).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).contains(why);
  }

  @Test
  void all_choices_are_listed_with_value_unit_and_what_they_are() {
    String all = said("settings");
    assertThat(all)
        .contains("cartridge-safety-fraction  0.75  (share of a vapour life that is used)")
        .contains("opened-gas-months          6 months  (that an opened gas element holds)")
        .contains("motebook settings KEY VALUE");
    assertThat(all.lines()).allMatch(line -> line.length() <= 79);
    assertThat(all.lines().filter(line -> line.startsWith("*"))).isEmpty();
    assertThat(Choices.ALL).allMatch(choice -> all.contains(choice.key()));
  }

  @Test
  void limits_are_told_with_their_figures_wherever_they_are_chosen() {
    assertThat(said("settings").lines())
        .contains(
            " ".repeat(29) + "1 mg/m³ inhalable, most woods", " ".repeat(29) + "0.5 red cedar");
    assertThat(said("settings limits"))
        .contains("          1 mg/m³ inhalable, most woods\n")
        .contains("allowed   niosh          1 mg/m³ total, all wood\n");
    assertThat(said("settings limits niosh"))
        .contains("limits: niosh, was acgih")
        .contains("  1 mg/m³ total, all wood\n");
  }

  @Test
  void a_changed_choice_is_marked_told_and_undone() {
    assertThat(said("settings opened-gas-months 3"))
        .isEqualTo(
            "opened-gas-months: 3 months, was 6 months (that an opened gas element holds)\n");
    assertThat(said("settings").lines())
        .contains("* opened-gas-months          3 months  (that an opened gas element holds)");
    assertThat(said("settings opened-gas-months").lines())
        .containsExactly(
            "opened-gas-months: 3 months (that an opened gas element holds)",
            "shipped   6 months",
            "allowed   1 to 24, whole",
            "basis     six months at most is common, from memory; the maker's figure comes first",
            "change    motebook settings opened-gas-months VALUE");
    assertThat(said("history")).contains("Set opened-gas-months to 3 months, was 6 months");
    said("undo");
    assertThat(said("settings opened-gas-months")).contains("opened-gas-months: 6 months");
  }

  @Test
  void a_value_may_bear_its_unit_and_goes_back_to_what_is_shipped() {
    said("settings soon-working-days 5 working days");
    assertThat(said("settings soon-working-days --default"))
        .startsWith("soon-working-days: 3 working days, was 5 working days");
    assertThat(said("settings \"soon working days\" 3")).contains(", as it was");
    assertThat((List<?>) at(shell.json("history"), "changes")).hasSize(2);
  }

  @Test
  void json_answers_values_as_numbers_words_and_lists() {
    said("settings equipment collector, tool vacuum");
    said("settings vapour-limits osha");
    Map<String, Object> all = shell.json("settings");
    assertThat((List<?>) at(all, "settings")).hasSize(Choices.ALL.size());
    Map<String, Object> fraction = shell.json("settings cartridge-safety-fraction 0.5");
    assertThat(number(fraction, "value")).isEqualTo(0.5);
    assertThat(number(fraction, "shipped")).isEqualTo(0.75);
    assertThat(at(fraction, "unit")).isNull();
    assertThat(at(fraction, "changed")).isEqualTo(true);
    assertThat(at(shell.json("settings soon-days"), "unit")).isEqualTo("days");
    assertThat(at(shell.json("settings vapour-limits"), "value")).isEqualTo("osha");
    assertThat(at(shell.json("settings equipment"), "value"))
        .isEqualTo(List.of("collector", "tool-vacuum"));
    assertThat(at(shell.json("settings person"), "shipped")).isNull();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "settings safety|The nearest: cartridge-safety-fraction",
        "settings cartridge-safety-fraction 1.5|must lie between 0.1 and 1",
        "settings cartridge-safety-fraction much|needs a number",
        "settings fit-months-uk 6.5|whole number of months",
        "settings vapour-limits mars|stricter, osha or niosh",
        "settings limits mars|There is no set of limits",
        "settings units imperial|Units are metric or us",
        "settings person Bob|knows no person",
        "settings place attic|knows no place",
        "settings equipment broom|There is no control",
        "settings longest-gap 2000|between 0 and 1440",
        "settings total-conversion 0.5|between 1 and 10",
        "settings person --default|has no shipped value",
        "settings --default|goes with the one setting",
        "settings soon-days 3 --default|goes with the one setting"
      })
  void what_cannot_be_chosen_is_told_and_nothing_is_written(String line, String why) {
    refused(line, why);
    assertThat(said("history")).contains("Nothing was changed yet.");
  }

  @Test
  void every_choice_says_back_what_it_takes() {
    for (Choice choice : Choices.ALL) {
      String now = String.valueOf(at(shell.json("settings " + choice.key()), "value"));
      if (choice.several()) {
        continue;
      }
      String bare = choice.number() ? now.replaceFirst("\\.0$", "") : now;
      assertThat(said("settings " + choice.key() + " " + bare)).contains(", as it was");
    }
  }

  @Test
  void a_lower_fraction_brings_the_cartridge_due() {
    said("gear add respirator \"half mask\" --facepiece \"half mask\" --for me");
    said(
        "gear add element carts --for \"half mask\" --class \"organic vapour\" --pair --opened 2026-02-20");
    said(
        "fit record --respirator \"half mask\" --on 2026-02-20 --method qualitative --agent saccharin --passed");
    for (int day = 23; day < 28; day++) {
      said(
          "log 30m finishing using 400ml contact cement wearing half mask checked at 9:00 on"
              + " 2026-02-"
              + day);
    }
    double usual = number(shell.json("gear clocks"), "elements", 0, "clocks", 1, "used");
    // what holds gases alone is not said to be loaded with dust
    assertThat(said("gear clocks")).contains("carts on half mask: 2.50 h worn, open 10 days");
    said("settings cartridge-safety-fraction 0.5");
    double careful = number(shell.json("gear clocks"), "elements", 0, "clocks", 1, "used");
    assertThat(careful / usual).isBetween(1.4999, 1.5001);
  }

  @Test
  void the_chosen_figures_judge_the_vapour() {
    said("log 30m finishing using 200ml stripper at 9:00");
    assertThat(at(shell.json("day"), "vapour", "limits")).isEqualTo("stricter");
    said("settings vapour-limits niosh");
    assertThat(at(shell.json("day"), "vapour", "limits")).isEqualTo("niosh");
    assertThat(at(shell.json("day"), "vapour", "not_judged"))
        .isEqualTo(List.of("methylene-chloride"));
    assertThat(said("day")).contains("by NIOSH");
  }

  @Test
  void the_calculator_counts_on_the_owners_fraction_too() {
    assertThat(said("reckon cartridge toluene --ppm 200")).contains("0.75 of it is counted on");
    said("settings cartridge-safety-fraction 0.5");
    assertThat(said("reckon cartridge toluene --ppm 200")).contains("0.5 of it is counted on");
    assertThat(said("reckon cartridge toluene --ppm 200 --safety 0.6"))
        .contains("0.6 of it is counted on");
  }
}
