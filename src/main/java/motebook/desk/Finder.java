package motebook.desk;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import motebook.journal.Book;
import motebook.journal.Wanted;
import motebook.model.Session;
import motebook.model.Text;
import motebook.reference.Named;
import motebook.reference.Reference;

/** The question "when did we do that". */
public final class Finder {
  private static final Set<String> JOINTS = Set.of("of", "with", "and", "in", "by", "on", "the");

  private Finder() {}

  /**
   * Everyone's sessions in which every word is found, newest first: in the names of the work, the
   * people and places, the note, or the date as it is written in the book.
   *
   * @param text some words; joints such as "of" are passed over
   * @param before only sessions from before this one
   * @param most how many at most
   */
  public static List<Session> find(
      Book book, Reference reference, String text, Optional<Session> before, int most) {
    List<Wanted> words =
        Arrays.stream(Text.folded(text).split(" ", -1))
            .filter(word -> !word.isEmpty() && !JOINTS.contains(word))
            .map(word -> wanted(word, reference))
            .toList();
    return book.find(words, before, most);
  }

  private static Wanted wanted(String word, Reference reference) {
    Stream<Named> named =
        Stream.of(reference.operations(), reference.materials(), reference.controls())
            .flatMap(rows -> rows.stream());
    return new Wanted(
        word, named.filter(row -> answersTo(row, word)).map(Named::key).distinct().toList());
  }

  private static boolean answersTo(Named row, String word) {
    return row.names().stream().anyMatch(name -> Text.folded(name).contains(word));
  }
}
