package motebook.command;

import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import motebook.desk.Allowed;
import motebook.journal.Book;
import motebook.model.Element;
import motebook.model.Respirator;
import motebook.model.Retirement;
import motebook.report.GearReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "element",
    description = {
      "Adds a filter or cartridge to a respirator. Without --opened it is opened today, or, with",
      "--sealed-until, kept sealed as a spare.",
      "Example: motebook gear add element \"dust pads\" --for \"half mask\" --class P100 --pair"
    })
final class ElementAdd implements Callable<Integer> {
  private final Desk desk;

  @Parameters(paramLabel = "NAME")
  private String name;

  @Option(
      names = "--for",
      required = true,
      paramLabel = "RESPIRATOR",
      description = "The respirator it is for.")
  private String respirator;

  @Option(
      names = "--class",
      required = true,
      paramLabel = "CLASS",
      description = "As on its label: P100, N95, FFP3, P3, \"organic vapour\", formaldehyde, …")
  private String elementClass;

  @Option(names = "--pair", description = "Two are worn side by side and changed together.")
  private boolean pair;

  @Option(
      names = "--single-use",
      description = "A fresh one on each day, without a change being told: disposable masks.")
  private boolean singleUse;

  @Option(names = "--opened", paramLabel = "DATE", description = "When it was unpacked.")
  private String opened;

  @Option(
      names = "--from",
      paramLabel = "DATE",
      description = "First day on the mask, if later than its opening.")
  private String from;

  @Option(
      names = "--sealed-until",
      paramLabel = "DATE",
      description = "Last day of its shelf life in the package.")
  private String sealedUntil;

  @Option(
      names = "--until",
      paramLabel = "DATE",
      description = "The day on which the next one took its place, of one that is gone.")
  private String until;

  @Option(
      names = "--limit-hours",
      paramLabel = "H",
      description = "Hours worn after which it is changed.")
  private String limitHours;

  @Option(
      names = "--limit-mg",
      paramLabel = "MG",
      description = "Dust load after which it is changed, mg.")
  private String limitMg;

  @Option(names = "--carbon", paramLabel = "G", description = "Carbon that it holds altogether, g.")
  private String carbon;

  ElementAdd(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    Allowed allowed = GearCommand.allowed();
    try (Book book = desk.open()) {
      Respirator mask = book.rack().respirator(respirator, first());
      String key = allowed.elementClass(mask, elementClass).key();
      Element added = book.rack().add(element(mask, key));
      String told = new GearReport(allowed).told(added);
      desk.out().println("Added %s to %s: %s".formatted(added.name(), mask.name(), told));
    }
    return ExitCode.DONE;
  }

  private Optional<LocalDate> unpacked() {
    return opened == null && sealedUntil != null && from == null
        ? Optional.empty()
        : Optional.of(desk.date(opened == null ? from : opened));
  }

  private LocalDate first() {
    return from == null ? unpacked().orElseGet(desk::today) : desk.date(from);
  }

  private Element element(Respirator mask, String key) {
    return new Element(
        0,
        name,
        mask.name(),
        key,
        pair,
        first(),
        unpacked(),
        Desk.optional(sealedUntil).map(desk::date),
        GearAdd.figure("--limit-hours", limitHours),
        GearAdd.figure("--limit-mg", limitMg),
        GearAdd.figure("--carbon", carbon),
        Desk.optional(until).map(desk::date).map(day -> new Retirement(day, Retirement.CHANGED)),
        0,
        singleUse);
  }
}
