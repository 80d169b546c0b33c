package motebook.journal;

import static motebook.journal.Shop.MONDAY;
import static motebook.journal.Shop.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.Element;
import motebook.model.FitRecord;
import motebook.model.FitRecord.FaceChange;
import motebook.model.FitRecord.FitTest;
import motebook.model.FitRecord.Hair;
import motebook.model.FitRecord.Medical;
import motebook.model.FitRecord.Qualitative;
import motebook.model.FitRecord.Quantitative;
import motebook.model.FitRecord.Training;
import motebook.model.Gear;
import motebook.model.Refusal;
import motebook.model.Respirator;
import motebook.model.Retirement;
import motebook.model.Scheme;
import motebook.model.ShopFilter;
import motebook.model.Upkeep;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Masks, filters and fit in the book. */
class GearBookTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final LocalDate TOMORROW = MONDAY.plusDays(1);

  @TempDir Path folder;
  private Book book;

  @BeforeEach
  void open() {
    book = Shop.open(folder);
    book.premises().addPerson("Ana");
  }

  @AfterEach
  void close() {
    book.close();
  }

  static Respirator mask(String name, String... people) {
    return new Respirator(
        0,
        name,
        Scheme.OSHA,
        "air-purifying",
        "half mask",
        Optional.of("M"),
        Optional.of("Acme 6"),
        List.of(people),
        Optional.empty());
  }

  static Element element(String name, String respirator, LocalDate opened) {
    return new Element(
        0,
        name,
        respirator,
        "p100",
        true,
        opened,
        Optional.of(opened),
        Optional.of(opened.plusYears(2)),
        OptionalDouble.of(40),
        OptionalDouble.of(200.1),
        OptionalDouble.of(26),
        Optional.empty());
  }

  private static Element sealed(String name, String respirator) {
    return new Element(
        0,
        name,
        respirator,
        "p100",
        false,
        MONDAY.minusDays(5),
        Optional.empty(),
        Optional.of(MONDAY.plusYears(1)),
        NONE,
        NONE,
        NONE,
        Optional.empty());
  }

  static ShopFilter filter(String name, LocalDate from) {
    return new ShopFilter(
        0,
        name,
        "collector",
        "shop",
        from,
        OptionalDouble.of(10),
        NONE,
        OptionalDouble.of(0.5),
        OptionalDouble.of(2.25),
        Optional.empty());
  }

  private static Upkeep upkeep(String filter, LocalDate date, Upkeep.What what) {
    return new Upkeep(0, filter, date, Optional.empty(), what, NONE);
  }

  private void refuses(ThrowingCallable act, String why) {
    List<String> before = Shop.content(folder);
    assertThatThrownBy(act).isInstanceOf(Refusal.class).hasMessageContaining(why);
    assertThat(Shop.content(folder)).isEqualTo(before);
  }

  @Test
  void what_hangs_on_the_rack_is_read_back_as_it_was_written() {
    Respirator mask = book.rack().add(mask("half mask", "ana", "me"));
    assertThat(mask.people()).containsExactly("Ana", "me");
    Element worn = book.rack().add(element("filters", "Half Mask", MONDAY));
    assertThat(worn.respirator()).isEqualTo("half mask");
    assertThat(worn.limitMg()).hasValue(200.1);
    ShopFilter bag = book.rack().add(filter("bag", MONDAY));
    book.rack()
        .note(
            new Upkeep(
                0,
                "Bag",
                MONDAY,
                Optional.of(LocalTime.of(17, 30)),
                Upkeep.What.GAUGE,
                OptionalDouble.of(1.4)));
    book.rack().note(upkeep("bag", MONDAY, Upkeep.What.EMPTIED));
    Gear gear = book.gear();
    assertThat(gear.respirators()).containsExactly(mask);
    assertThat(gear.elements()).containsExactly(worn);
    assertThat(gear.filters()).containsExactly(bag);
    assertThat(gear.upkeepOf("bag"))
        .extracting(Upkeep::what)
        .containsExactly(Upkeep.What.GAUGE, Upkeep.What.EMPTIED);
    assertThat(gear.upkeepOf("bag").get(0).time()).contains(LocalTime.of(17, 30));
    assertThat(book.verify()).isEmpty();
  }

  @Test
  void what_is_known_of_a_face_is_read_back_as_it_was_written() {
    book.rack().add(mask("half mask"));
    List<FitRecord> records =
        List.of(
            new FitTest(1, "half mask", "Ana", MONDAY, new Quantitative(List.of(200.0, 1e2 / 3))),
            new FitTest(2, "half mask", "Ana", MONDAY, new Qualitative("saccharin", false)),
            new Medical(3, "Ana", MONDAY),
            new Training(4, "Ana", MONDAY),
            new Hair(5, "Ana", MONDAY, Optional.of(MONDAY)),
            new FaceChange(6, "Ana", MONDAY, FaceChange.What.DENTAL));
    records.forEach(book.fits()::note);
    assertThat(book.gear().fit()).isEqualTo(records);
    book.premises().renamePerson("Ana", "Anna");
    assertThat(book.gear().fitTests("Anna", "half mask")).hasSize(2);
  }

  @Test
  void a_change_takes_the_old_element_off_and_puts_a_fresh_one_under_its_name() {
    book.rack().add(mask("half mask"));
    book.rack().add(element("filters", "half mask", MONDAY.minusDays(9)));
    Element fresh = book.rack().change("FILTERS", MONDAY.minusDays(2));
    assertThat(fresh.name()).isEqualTo("filters");
    assertThat(fresh.opened()).contains(MONDAY.minusDays(2));
    assertThat(fresh.limitHours()).hasValue(40);
    assertThat(fresh.sealedUntil()).isEmpty();
    assertThat(book.gear().elements())
        .extracting(Element::retired)
        .containsExactly(
            Optional.of(new Retirement(MONDAY.minusDays(2), "changed")), Optional.empty());
    book.changes().undo();
    assertThat(book.gear().elements()).hasSize(1);
    assertThat(book.gear().element("filters").orElseThrow().opened()).contains(MONDAY.minusDays(9));
  }

  @Test
  void a_change_before_the_opening_or_in_the_future_is_refused() {
    book.rack().add(mask("half mask"));
    book.rack().add(element("filters", "half mask", MONDAY));
    refuses(
        () -> book.rack().change("filters", MONDAY.minusDays(1)),
        "\"filters\" was opened on 2026-03-02, so it cannot be retired on 2026-03-01.");
    refuses(
        () -> book.rack().change("filters", TOMORROW),
        "Nothing can have been changed on 2026-03-03: today is 2026-03-02.");
  }

  @Test
  void a_sealed_element_is_opened_before_it_is_changed() {
    book.rack().add(mask("half mask"));
    book.rack().add(sealed("spare", "half mask"));
    refuses(() -> book.rack().change("spare", MONDAY), "still sealed and on no mask");
    refuses(() -> book.rack().open("spare", TOMORROW), "today is 2026-03-02");
    assertThat(book.rack().open("spare", MONDAY).wornOn(MONDAY)).isTrue();
    refuses(() -> book.rack().open("spare", MONDAY), "open since 2026-03-02 already");
  }

  @Test
  void an_element_needs_a_respirator_in_use() {
    refuses(
        () -> book.rack().add(element("filters", "half mask", MONDAY)),
        "The book holds no respirator \"half mask\". It holds none yet.");
    book.rack().add(mask("half mask"));
    refuses(() -> book.rack().add(element("filters", "hood", MONDAY)), "It holds: half mask.");
    LocalDate sunday = MONDAY.minusDays(1);
    book.retiring().retire("half mask", new Retirement(sunday, "damaged"));
    refuses(
        () -> book.rack().add(element("filters", "half mask", MONDAY)),
        "\"half mask\" was retired on 2026-03-01 already (damaged).");
  }

  @Test
  void an_element_that_was_on_a_respirator_now_retired_goes_with_it() {
    book.rack().add(mask("half mask"));
    book.retiring().retire("half mask", new Retirement(MONDAY.minusDays(1), "damaged"));
    Element late = book.rack().add(element("filters", "half mask", MONDAY.minusDays(3)));
    assertThat(late.wornAt(MONDAY.minusDays(1), 600)).isTrue();
    assertThat(late.wornAt(MONDAY, 0)).isFalse();
  }

  @Test
  void the_future_is_refused_where_the_past_is_meant() {
    book.rack().add(mask("half mask"));
    book.rack().add(filter("bag", MONDAY));
    String today = "today is 2026-03-02. Give today or an earlier day.";
    refuses(() -> book.rack().add(element("filters", "half mask", TOMORROW)), today);
    refuses(() -> book.rack().add(filter("sack", TOMORROW)), today);
    refuses(() -> book.rack().note(upkeep("bag", TOMORROW, Upkeep.What.CLEANED)), today);
    refuses(() -> book.retiring().retire("bag", new Retirement(TOMORROW, "torn")), today);
    refuses(() -> book.retiring().delete("bag", TOMORROW), today);
    refuses(() -> book.fits().note(new Medical(0, "Ana", TOMORROW)), today);
    refuses(
        () ->
            book.fits()
                .note(
                    new FitTest(0, "half mask", "Ana", TOMORROW, new Qualitative("bitter", true))),
        today);
    refuses(() -> book.fits().note(new Hair(0, "Ana", MONDAY, Optional.of(TOMORROW))), today);
  }

  @Test
  void a_name_is_one_things_only() {
    book.rack().add(mask("half mask"));
    book.rack().add(element("filters", "half mask", MONDAY));
    book.rack().add(filter("bag", MONDAY));
    refuses(() -> book.rack().add(mask("Filters")), "\"filters\" is an element already.");
    refuses(() -> book.rack().add(filter("HALF MASK", MONDAY)), "is a respirator already.");
    refuses(() -> book.rack().add(element("bag", "half mask", MONDAY)), "is a shop filter");
    book.retiring().retire("half mask", new Retirement(MONDAY, "damaged"));
    refuses(
        () -> book.rack().add(mask("half mask")),
        "was a respirator until 2026-03-02, and its past goes by that name.");
    assertThat(book.rack().add(mask("filters")).name()).isEqualTo("filters");
  }

  @Test
  void people_and_places_must_be_in_the_book() {
    refuses(() -> book.rack().add(mask("half mask", "Zed")), "no person \"Zed\"");
    refuses(() -> book.fits().note(new Training(0, "Zed", MONDAY)), "no person \"Zed\"");
    ShopFilter elsewhere =
        new ShopFilter(
            0, "bag", "vacuum", "attic", MONDAY, NONE, NONE, NONE, NONE, Optional.empty());
    refuses(() -> book.rack().add(elsewhere), "no place \"attic\"");
  }

  @Test
  void upkeep_needs_a_filter_that_was_there() {
    refuses(() -> book.rack().note(upkeep("bag", MONDAY, Upkeep.What.EMPTIED)), "no shop filter");
    book.rack().add(filter("bag", MONDAY));
    refuses(
        () -> book.rack().note(upkeep("bag", MONDAY.minusDays(1), Upkeep.What.EMPTIED)),
        "was put to use on 2026-03-02");
    book.retiring().retire("bag", new Retirement(MONDAY, "torn"));
    refuses(
        () -> book.rack().note(upkeep("bag", MONDAY, Upkeep.What.EMPTIED)),
        "retired on 2026-03-02");
  }

  @Test
  void a_respirator_is_retired_with_its_elements() {
    book.rack().add(mask("half mask"));
    book.rack().add(element("filters", "half mask", MONDAY));
    book.retiring().retire("half mask", new Retirement(MONDAY, "perished"));
    Gear gear = book.gear();
    assertThat(gear.respirators().get(0).retired()).contains(new Retirement(MONDAY, "perished"));
    assertThat(gear.elements().get(0).retired())
        .contains(new Retirement(MONDAY, 24 * 60, "with its respirator"));
    refuses(
        () -> book.retiring().retire("half mask", new Retirement(MONDAY, "again")),
        "was retired on 2026-03-02 already (perished)");
    refuses(
        () -> book.retiring().retire("filters", new Retirement(MONDAY, "again")),
        "was retired on 2026-03-02 already (with its respirator)");
    refuses(
        () -> book.retiring().retire("visor", new Retirement(MONDAY, "lost")),
        "The book holds no mask or filter \"visor\".");
  }

  @Test
  void a_respirator_is_not_worn_after_it_was_retired() {
    book.rack().add(mask("half mask"));
    book.log(work("09:00", 60));
    refuses(
        () -> book.retiring().retire("half mask", new Retirement(MONDAY.minusDays(1), "lost")),
        "\"half mask\" was worn on 2026-03-02. Give that day or a later one.");
    book.retiring().retire("half mask", new Retirement(MONDAY, "lost"));
    assertThat(book.log(work("11:00", 60)).work().mask()).isPresent();
    refuses(
        () -> book.log(work("me", TOMORROW, "09:00", 60)),
        "\"half mask\" was retired on 2026-03-02 and cannot have been worn on 2026-03-03.");
  }

  @Test
  void what_nothing_refers_to_is_deleted() {
    book.rack().add(mask("half mask", "Ana"));
    book.rack().add(element("filters", "half mask", MONDAY));
    book.rack().add(filter("bag", MONDAY));
    assertThat(book.retiring().delete("filters", MONDAY)).isTrue();
    assertThat(book.retiring().delete("half mask", MONDAY)).isTrue();
    assertThat(book.retiring().delete("bag", MONDAY)).isTrue();
    assertThat(book.gear()).isEqualTo(Gear.NONE);
    assertThat(book.changes().history(1).get(0).what()).isEqualTo("Deleted bag");
    book.changes().undo();
    book.changes().undo();
    assertThat(book.gear().respirator("half mask").orElseThrow().people()).containsExactly("Ana");
  }

  @Test
  void what_sessions_refer_to_is_retired_instead_of_deleted() {
    book.rack().add(mask("half mask"));
    book.rack().add(element("filters", "half mask", MONDAY));
    book.rack().add(filter("bag", MONDAY));
    book.log(work("09:00", 60));
    assertThat(book.retiring().delete("filters", MONDAY)).isFalse();
    assertThat(book.retiring().delete("half mask", MONDAY)).isFalse();
    assertThat(book.retiring().delete("bag", MONDAY)).isFalse();
    assertThat(book.changes().history(1).get(0).what()).isEqualTo("Retired bag");
    Gear gear = book.gear();
    assertThat(gear.elements().get(0).retired()).isPresent();
    assertThat(gear.respirators().get(0).retired()).isPresent();
    assertThat(gear.filters().get(0).retired()).isPresent();
  }

  @Test
  void a_respirator_with_a_fit_test_is_retired_instead_of_deleted() {
    book.rack().add(mask("half mask"));
    book.fits().note(new FitTest(0, "half mask", "Ana", MONDAY, new Quantitative(List.of(150.0))));
    assertThat(book.retiring().delete("half mask", MONDAY)).isFalse();
    assertThat(book.gear().fitTestsOf("half mask")).hasSize(1);
  }

  @Test
  void hair_is_on_record_once_and_ends_once() {
    book.fits().note(new Hair(0, "Ana", MONDAY.minusDays(20), Optional.empty()));
    refuses(
        () -> book.fits().note(new Hair(0, "ana", MONDAY, Optional.empty())),
        "Hair under the seal of Ana is on record from 2026-02-10 on already.");
    refuses(() -> book.fits().endHair("Ana", TOMORROW), "today is 2026-03-02");
    refuses(() -> book.fits().endHair("Ana", MONDAY.minusDays(21)), "cannot have gone");
    book.fits().endHair("ana", MONDAY.minusDays(5));
    assertThat(book.gear().hairOn("Ana", MONDAY.minusDays(5))).isTrue();
    assertThat(book.gear().hairOn("Ana", MONDAY)).isFalse();
    refuses(() -> book.fits().endHair("Ana", MONDAY), "is on record without an end");
    book.fits().note(new Hair(0, "Ana", MONDAY, Optional.empty()));
    assertThat(book.gear().fit(Hair.class, "Ana")).hasSize(2);
  }

  @Test
  void hair_from_the_same_day_is_the_same_hair_and_its_end_is_put_right() {
    LocalDate first = MONDAY.minusDays(20);
    book.fits().note(new Hair(0, "Ana", first, Optional.empty()));
    book.fits().note(new Hair(0, "Ana", first, Optional.of(MONDAY)));
    book.fits().note(new Hair(0, "Ana", first, Optional.of(MONDAY.minusDays(1))));
    assertThat(book.gear().fit(Hair.class, "Ana"))
        .extracting(Hair::to)
        .containsExactly(Optional.of(MONDAY.minusDays(1)));
    book.changes().undo();
    assertThat(book.gear().hairOn("Ana", MONDAY)).isTrue();
  }
}
