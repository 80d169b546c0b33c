package motebook.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class WoodsTest {
  private static final Reference TABLES = Reference.shipped();

  @Test
  void every_wood_has_a_row_that_stands_for_it_and_says_where_that_is_from() {
    assertThat(Woods.shipped().all())
        .hasSize(62)
        .allSatisfy(wood -> assertThat(wood.source()).containsAnyOf("from memory", "no source"));
  }

  @Test
  void no_wood_bears_a_name_that_a_material_answers_to_and_none_bears_it_twice() {
    Set<String> materials =
        TABLES.materials().stream().flatMap(m -> m.names().stream()).collect(Collectors.toSet());
    List<String> woods =
        Woods.shipped().all().stream().flatMap(wood -> wood.names().stream()).toList();
    assertThat(woods).doesNotHaveDuplicates().doesNotContainAnyElementsOf(materials);
  }

  @Test
  void what_is_no_wood_has_advice_in_the_place_of_a_row() {
    assertThat(Woods.shipped().all())
        .filteredOn(wood -> wood.stands().isEmpty())
        .extracting(Wood::name)
        .containsExactly("epoxy", "acrylic", "metal");
    assertThatThrownBy(
            () -> Woods.edited(name -> text -> Edits.replaceFirst(text, ",hardwood,,", ",,,")))
        .isInstanceOf(WrongTable.class)
        .hasMessageStartingWith("woods.csv, row 2, column advice: given where");
  }

  @Test
  void a_wood_that_no_material_stands_for_is_told_by_row_and_column() {
    assertThatThrownBy(
            () -> Woods.edited(name -> text -> Edits.replaceFirst(text, ",hardwood,", ",hard,")))
        .isInstanceOf(WrongTable.class)
        .hasMessage("woods.csv, row 2, column stands: \"hard\" is not in materials.csv");
  }
}
