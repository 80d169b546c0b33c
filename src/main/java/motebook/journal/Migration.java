package motebook.journal;

import java.util.List;

/**
 * One numbered step of the book's form.
 *
 * @param version the version of the book that it leads to
 * @param script its statements, the last of which sets {@code user_version}
 */
record Migration(int version, String script) {
  /** The files of the steps, in order; the first leads to version 1. */
  static final List<String> FILES =
      List.of(
          "001-book.sql",
          "002-bench.sql",
          "003-gear.sql",
          "004-finishes.sql",
          "005-samples.sql",
          "006-element-times.sql",
          "007-plain-views.sql",
          "008-plain-record.sql",
          "009-rows-by-history.sql",
          "010-deeds.sql",
          "011-outdoor-air.sql",
          "012-sample-use.sql");

  /** The steps this program knows, read when a book needs one. */
  static Migration shipped(int version) {
    return new Migration(version, Resources.text("sql/" + FILES.get(version - 1)));
  }
}
