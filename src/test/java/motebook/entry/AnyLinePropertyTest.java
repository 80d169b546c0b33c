package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import motebook.model.Refusal;
import motebook.model.Work;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Whatever is typed is read or refused with a sentence, and what is read can be said back. */
class AnyLinePropertyTest {
  private static final List<String> VALID =
      List.of(
          "40m orbital sanding of mdf with tool vacuum and doors open in shop at 9:15 note a b",
          "9:00-9:30 table saw oak with dust collector with a hood at the machine",
          "1h20 assembly and bench work by ana on yesterday at 9am",
          "25m sweeping damp outdoors wearing half mask checked 95% note end of day",
          "30m in the shop, no dusty work in garage on 2026-03-02 at 14h30",
          "23:30-0:20 block sanding of wood with old paint with wet sanding in the big garage");

  private static final List<String> WORDS =
      List.of(
          "of",
          "with",
          "and",
          "in",
          "the",
          "at",
          "on",
          "by",
          "wearing",
          "using",
          "checked",
          "outdoors",
          "note",
          "oak",
          "sanding",
          "table saw",
          "shop",
          "garage",
          "ana",
          "9:15",
          "9",
          "95%",
          "monday",
          "today",
          "2026-13-40",
          "half mask",
          "collector",
          "air",
          "damp",
          "sweeping",
          "xyzzy",
          ",",
          "-",
          "40m",
          "hood",
          "p");

  @Provide
  Arbitrary<String> heapsOfWords() {
    return Arbitraries.of(WORDS)
        .list()
        .ofMaxSize(14)
        .map(words -> "40m " + String.join(" ", words));
  }

  @Provide
  Arbitrary<String> spoiltLines() {
    return Combinators.combine(
            Arbitraries.of(VALID),
            Arbitraries.integers().between(0, 79),
            Arbitraries.integers().between(0, 6),
            Arbitraries.strings().ofMaxLength(3))
        .as(AnyLinePropertyTest::spoilt);
  }

  private static String spoilt(String line, int place, int length, String instead) {
    int from = Math.min(place, line.length());
    return line.substring(0, from)
        + instead
        + line.substring(Math.min(line.length(), from + length));
  }

  /** Reads the line in a scene with masks; what is refused is refused as it should be. */
  private static Optional<Work> read(String line) {
    Scene scene = Scenes.masks("half mask");
    try {
      return Optional.of(SpokenLine.read(line, scene));
    } catch (Refusal refusal) {
      assertThat(refusal.getMessage()).endsWith(refusal.getMessage().strip()).isNotBlank();
      assertThat(refusal.getMessage()).doesNotContain("null", "Optional[", "[]", "motebook.entry");
      if (refusal.from() >= 0) {
        assertThat(refusal.from()).isLessThan(refusal.to());
        assertThat(refusal.to()).isLessThanOrEqualTo(line.length());
      }
      return Optional.empty();
    }
  }

  private static void assertReadOrRefused(String line) {
    Scene scene = Scenes.masks("half mask");
    read(line)
        .ifPresent(
            work ->
                assertThat(SpokenLine.read(SpokenLine.say(work, scene), scene)).isEqualTo(work));
    assertThat(SpokenLine.complete(line, scene)).hasSizeLessThanOrEqualTo(8);
  }

  @Property
  void any_text_is_read_or_refused(@ForAll String line) {
    assertReadOrRefused(line);
    assertReadOrRefused("40m " + line);
    assertReadOrRefused("40m table saw " + line);
  }

  @Property(tries = 1500)
  void a_spoilt_line_is_read_or_refused(@ForAll("spoiltLines") String line) {
    assertReadOrRefused(line);
  }

  @Property(tries = 1500)
  void any_heap_of_the_lines_own_words_is_read_or_refused(@ForAll("heapsOfWords") String line) {
    assertReadOrRefused(line);
  }

  @Property(tries = 300)
  void any_beginning_of_a_line_is_read_or_refused(
      @ForAll @IntRange(max = 80) int length, @ForAll @IntRange(max = 5) int which) {
    String line = VALID.get(which);
    assertReadOrRefused(line.substring(0, Math.min(length, line.length())));
  }
}
