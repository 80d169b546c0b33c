package motebook.entry;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import motebook.reference.Named;
import motebook.reference.Reference;

/** The names of the tables' rows: the same for every line, so they are cut into words once. */
record TradeNames(Vocabulary operations, Vocabulary materials, Vocabulary controls) {
  private static final Map<Reference, TradeNames> KNOWN = new ConcurrentHashMap<>();

  static TradeNames of(Reference reference) {
    return KNOWN.computeIfAbsent(reference, TradeNames::read);
  }

  private static TradeNames read(Reference reference) {
    return new TradeNames(
        rows(reference.operations(), Saying::name),
        rows(reference.materials(), Saying::name),
        rows(reference.controls(), Named::spoken));
  }

  static <N extends Named> Vocabulary rows(List<N> rows, Function<? super N, String> label) {
    return new Vocabulary(
        rows.stream()
            .map(row -> Vocabulary.Entry.of(row.key(), label.apply(row), row.names()))
            .toList());
  }
}
