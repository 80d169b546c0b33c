package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.desk.DueItem.Kind;
import motebook.desk.DueItem.State;
import motebook.model.Action.AddElement;
import motebook.model.Action.ChangeElement;
import motebook.model.Action.DiscardSpare;
import motebook.model.Action.RecordFitTest;
import motebook.model.Action.RecordMedical;
import motebook.model.Action.RecordUpkeep;
import motebook.model.Element;
import motebook.model.FitRecord.FaceChange;
import motebook.model.FitRecord.FitTest;
import motebook.model.FitRecord.Medical;
import motebook.model.FitRecord.Qualitative;
import motebook.model.FitRecord.Training;
import motebook.model.Retirement;
import motebook.model.Upkeep.What;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DueTest {
  private static final LocalDate DAY = Workshop.DAY;
  private static final OptionalDouble NO = OptionalDouble.empty();

  private static Workshop worn() {
    Workshop shop =
        new Workshop()
            .halfMask()
            .element("half mask", "p100", DAY.minusDays(20))
            .fit(new Medical(1, "me", DAY.minusYears(3)))
            .fit(new Training(2, "me", DAY.minusMonths(1)));
    shop.wore(DAY.minusDays(3), "09:00", 60, "half mask", "drilling of oak");
    return shop;
  }

  private static List<DueItem> due(Workshop shop) {
    return shop.care(DAY).due().items();
  }

  private static Optional<DueItem> due(Workshop shop, Kind kind) {
    return due(shop).stream().filter(item -> item.kind() == kind).findFirst();
  }

  @Test
  void nothing_is_due_of_a_shop_without_gear() {
    DueReport report = new Workshop().care(DAY).due();
    assertThat(report.items()).isEmpty();
    assertThat(report.pressing()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "2025-03-01,OVERDUE,2026-03-01",
    "2025-03-02,DUE,2026-03-02",
    "2025-03-03,SOON,2026-03-03",
    "2025-03-16,SOON,2026-03-16",
    "2025-03-17,LATER,2026-03-17"
  })
  void a_fit_test_comes_due_with_its_year(LocalDate tested, State state, LocalDate when) {
    Workshop shop = worn().tasted("half mask", "me", tested);
    DueItem item =
        shop.care(DAY).ahead().items().stream()
            .filter(one -> one.kind() == Kind.FIT_TEST)
            .findFirst()
            .orElseThrow();
    assertThat(item.state()).isEqualTo(state);
    assertThat(item.when()).isEqualTo(when);
    assertThat(item.whose()).isEqualTo("me");
    assertThat(item.settle()).isEqualTo(new RecordFitTest("half mask", "me", DAY, false));
    assertThat(due(shop, Kind.FIT_TEST).isEmpty()).isEqualTo(state == State.LATER);
  }

  @Test
  void a_missing_or_failed_test_and_a_changed_face_are_due() {
    assertThat(due(worn(), Kind.FIT_TEST).orElseThrow().state()).isEqualTo(State.DUE);
    Workshop failed =
        worn()
            .fit(
                new FitTest(
                    5, "half mask", "me", DAY.minusDays(5), new Qualitative("saccharin", false)));
    assertThat(due(failed, Kind.FIT_TEST).orElseThrow().why()).contains("was not passed");
    Workshop changed =
        worn()
            .tasted("half mask", "me", DAY.minusMonths(2))
            .fit(new FaceChange(9, "me", DAY.minusDays(4), FaceChange.What.WEIGHT));
    DueItem item = due(changed, Kind.FIT_TEST).orElseThrow();
    assertThat(item.state()).isEqualTo(State.OVERDUE);
    assertThat(item.when()).isEqualTo(DAY.minusDays(4));
    assertThat(item.why()).contains("weight");
  }

  @Test
  void a_missing_medical_evaluation_and_an_old_training_are_due() {
    Workshop shop = new Workshop().halfMask().element("half mask", "p100", DAY.minusDays(20));
    shop.wore(DAY, "09:00", 60, "half mask", "drilling of oak");
    shop.fit(new Training(2, "me", DAY.minusYears(1).minusDays(9)));
    assertThat(due(shop, Kind.MEDICAL).orElseThrow().settle())
        .isEqualTo(new RecordMedical("me", DAY));
    DueItem training = due(shop, Kind.TRAINING).orElseThrow();
    assertThat(training.state()).isEqualTo(State.OVERDUE);
    assertThat(training.when()).isEqualTo(DAY.minusDays(9));
  }

  @Test
  void whoever_wears_no_mask_is_asked_for_nothing() {
    Workshop shop = new Workshop().halfMask();
    shop.session("Ana", DAY, "09:00", 60, "drilling of oak", Optional.empty());
    assertThat(due(shop)).isEmpty();
  }

  @Test
  void an_element_at_its_end_is_overdue_and_one_near_it_is_due_soon() {
    Workshop shop = worn().tasted("half mask", "me", DAY.minusDays(30));
    shop.element("half mask", "p100", DAY.minusDays(10), true, OptionalDouble.of(1), NO);
    shop.element("half mask", "p100", DAY.minusDays(10), true, OptionalDouble.of(4), NO);
    shop.element("half mask", "p100", DAY.minusDays(10), true, OptionalDouble.of(40), NO);
    List<DueItem> items = due(shop);
    assertThat(items)
        .extracting(DueItem::what)
        .containsExactly("p100 1 on half mask", "p100 2 on half mask");
    DueItem over = items.get(0);
    assertThat(over.state()).isEqualTo(State.OVERDUE);
    assertThat(over.when()).isEqualTo(DAY.minusDays(3));
    assertThat(over.settle()).isEqualTo(new ChangeElement("p100 1", DAY, 0, false));
    DueItem near = items.get(1);
    assertThat(near.state()).isEqualTo(State.SOON);
    assertThat(near.workingDaysLeft()).hasValue(3);
    assertThat(near.why()).isEqualTo("hours worn (1.00 of 4 h), about 3 working days at this rate");
  }

  @Test
  void a_mask_that_is_worn_without_an_element_wants_one() {
    Workshop shop = worn().tasted("half mask", "me", DAY.minusDays(30));
    Element gone = shop.elements.get(0).retired(new Retirement(DAY.minusDays(1), "damaged"));
    shop.elements.set(0, gone);
    assertThat(due(shop, Kind.ELEMENT).orElseThrow().settle())
        .isEqualTo(new AddElement("P100 half mask", "half mask", "P100", DAY, Optional.empty()));
  }

  @Test
  void a_spare_past_its_shelf_life_is_thrown_away() {
    Workshop shop = worn().tasted("half mask", "me", DAY.minusDays(30));
    shop.add(
        new Element(
            7,
            "spare",
            "half mask",
            "organic-vapour",
            true,
            DAY.minusDays(90),
            Optional.empty(),
            Optional.of(DAY.minusDays(1)),
            NO,
            NO,
            NO,
            Optional.empty()));
    DueItem item = due(shop, Kind.SPARE).orElseThrow();
    assertThat(item.state()).isEqualTo(State.OVERDUE);
    assertThat(item.settle()).isEqualTo(new DiscardSpare("spare"));
  }

  @Test
  void a_full_bag_raises_the_caution_of_combustible_dust() {
    Workshop shop = new Workshop();
    shop.filter("bag", "collector", DAY.minusDays(9), OptionalDouble.of(1), NO);
    shop.session(
        "me", DAY.minusDays(2), "09:00", 90, "table-saw of oak", Optional.empty(), "collector");
    DueReport report = shop.care(DAY).due();
    DueItem item = report.items().get(0);
    assertThat(item.kind()).isEqualTo(Kind.CLEANING);
    assertThat(item.whose()).isEqualTo("shop");
    assertThat(item.state()).isEqualTo(State.OVERDUE);
    assertThat(item.settle()).isEqualTo(new RecordUpkeep("bag", What.CLEANED));
    assertThat(report.cautions()).extracting(c -> c.key()).containsExactly("combustible-dust");
    shop.did(What.CLEANED, "bag", DAY);
    assertThat(shop.care(DAY).due().cautions()).isEmpty();
  }
}
