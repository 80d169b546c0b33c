package motebook.command;

import java.util.List;
import java.util.stream.Collectors;
import motebook.desk.Unlikely;
import motebook.model.Refusal;
import motebook.model.Units;
import motebook.report.UnlikelyText;
import picocli.CommandLine.Option;

/** Asks before a figure is kept that is out of any shop's range. */
final class Confirmation {
  @Option(names = "--yes", description = "Keep what would be asked about, such as figures out of any shop's range.")
  private boolean yes;

  /** Whether it was said in advance. */
  boolean yes() {
    return yes;
  }

  /**
   * Whether the figures may be kept; says so where a person did not agree.
   *
   * @throws Refusal where there are such figures and nobody can be asked
   */
  boolean given(World world, List<Unlikely> unlikely, Units units) {
    if (yes || unlikely.isEmpty()) {
      return true;
    }
    String doubts =
        unlikely.stream().map(one -> UnlikelyText.of(one, units)).collect(Collectors.joining(" "));
    if (!Asking.possible(world)) {
      throw new Refusal(doubts + " If that is right, add --yes.");
    }
    boolean agreed = Asking.yes(world, doubts + " Is that right?");
    if (!agreed) {
      world.out().println("Nothing was changed.");
    }
    return agreed;
  }
}
