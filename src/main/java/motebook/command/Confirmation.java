package motebook.command;

import java.util.List;
import motebook.desk.Unlikely;
import motebook.model.Refusal;
import motebook.model.Units;
import motebook.report.UnlikelyText;
import picocli.CommandLine.Option;

/** Asks before a figure is kept that is out of any shop's range. */
final class Confirmation {
  @Option(
      names = "--yes",
      description = "Keep what would be asked about, such as figures out of any shop's range.")
  private boolean yes;

  /**
   * Whether the figures may be kept; says so where a person did not agree.
   *
   * @throws Refusal where there are such figures and nobody can be asked
   */
  boolean given(World world, List<Unlikely> unlikely, Units units) {
    return given(world, describe(unlikely, units), List.of());
  }

  static List<String> describe(List<Unlikely> unlikely, Units units) {
    return unlikely.stream().map(one -> UnlikelyText.of(one, units)).toList();
  }

  /**
   * Whether something may be kept; says so where a person did not agree. One question for all,
   * since what is typed ahead is read with the first answer.
   *
   * @param doubts what speaks against it, in sentences
   * @param changes what it would change, in lines that a person at the terminal is shown first
   * @throws Refusal where there are doubts and nobody can be asked
   */
  boolean given(World world, List<String> doubts, List<String> changes) {
    if (yes || (doubts.isEmpty() && changes.isEmpty())) {
      return true;
    }
    String all = String.join(" ", doubts);
    if (!Asking.possible(world)) {
      if (doubts.isEmpty()) {
        return true;
      }
      throw new Refusal(all + " If that is right, add --yes.");
    }
    changes.forEach(world.err()::println);
    boolean agreed =
        Asking.yes(world, doubts.isEmpty() ? "Keep it and change these?" : all + " Is that right?");
    if (!agreed) {
      world.err().println("Nothing was changed.");
    }
    return agreed;
  }
}
