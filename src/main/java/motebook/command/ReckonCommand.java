package motebook.command;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** A desk calculator over the science; writes into no book. */
final class ReckonCommand {
  private ReckonCommand() {}

  @Command(name = "reckon", description = "A desk calculator; writes into no book.")
  static final class Group extends GroupCommand {}

  /** The calculator with all its reckonings. */
  static CommandLine line(Desk desk) {
    return new CommandLine(new Group())
        .addSubcommand(new ReckonLimits.Twa(desk))
        .addSubcommand(new ReckonLimits.Mixture(desk))
        .addSubcommand(new ReckonLimits.Shift(desk))
        .addSubcommand(new ReckonAir.Clear(desk))
        .addSubcommand(new ReckonAir.Air(desk))
        .addSubcommand(new ReckonAir.RoundDuct(desk))
        .addSubcommand(figures(new ReckonMask.Fit(desk)))
        .addSubcommand(new ReckonMask.Wear(desk))
        .addSubcommand(new ReckonMask.Filter(desk))
        .addSubcommand(new ReckonCartridge(desk))
        .addSubcommand(new ReckonSample(desk))
        .addSubcommand(figures(new ReckonStatistics.Stats(desk)))
        .addSubcommand(figures(new ReckonStatistics.Trend(desk)));
  }

  /** A row of figures may hold one below zero, which is no option; the reckoning itself tells. */
  private static CommandLine figures(Reckoning reckoning) {
    return new CommandLine(reckoning).setUnmatchedOptionsArePositionalParams(true);
  }
}
