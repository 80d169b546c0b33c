package motebook.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import motebook.desk.Credit;
import motebook.desk.Objection;
import motebook.desk.Remedy;
import motebook.desk.Verdict;
import motebook.model.Action;
import motebook.model.Figures;

/** Why a mask is not credited, and what was found to mend it. */
public final class CreditText {
  private final Function<Action, String> offer;

  private CreditText(Function<Action, String> offer) {
    this.offer = offer;
  }

  /** For work that was done: each action with its command. */
  public static CreditText done(Invocation program) {
    return new CreditText(new ActionText(program)::offer);
  }

  /** For work that is planned. */
  public static CreditText ahead(Invocation program) {
    return new CreditText(new ActionText(program)::ahead);
  }

  /** The first reason for each thing in the air, its remedy, and the factor after all steps. */
  public Optional<String> refused(Credit credit) {
    if (credit.objections().isEmpty()) {
      return Optional.empty();
    }
    Optional<Remedy> remedy = credit.remedy();
    List<String> sentences = new ArrayList<>(List.of(reasons(credit, remedy)));
    remedy.map(one -> promise(one, credit)).ifPresent(sentences::add);
    return Optional.of(String.join(" ", sentences));
  }

  private String reasons(Credit credit, Optional<Remedy> remedy) {
    Optional<Objection> ofDust = foremost(credit.dust(), remedy);
    Optional<Objection> ofVapour = credit.vapour().flatMap(one -> foremost(one, remedy));
    Set<String> said = new LinkedHashSet<>();
    if (credit.vapour().isEmpty() || ofDust.equals(ofVapour)) {
      ofDust.ifPresent(one -> said.add(sentence(one, remedy)));
    } else {
      ofDust.ifPresent(one -> said.add("Against dust: " + sentence(one, remedy)));
      ofVapour.ifPresent(one -> said.add("Against vapour: " + sentence(one, remedy)));
    }
    return String.join(" ", said);
  }

  // The one that is mended first, else the first there is.
  private static Optional<Objection> foremost(Verdict verdict, Optional<Remedy> remedy) {
    return remedy.stream()
        .flatMap(one -> one.steps().stream())
        .map(Remedy.Step::against)
        .filter(verdict.objections()::contains)
        .findFirst()
        .or(() -> verdict.objections().stream().findFirst());
  }

  private String sentence(Objection one, Optional<Remedy> remedy) {
    String check = one.check().map(offer).map(" "::concat).orElse("");
    String way = way(one, remedy);
    return one.reason() + "." + check + (way.isEmpty() ? "" : " " + way);
  }

  private String way(Objection one, Optional<Remedy> remedy) {
    return remedy.flatMap(all -> all.against(one)).map(offer).orElse("");
  }

  /** What else there is to do or to know, one sentence each, after what is told first. */
  public List<String> others(Credit credit) {
    Optional<Remedy> remedy = credit.remedy();
    String first = reasons(credit, remedy);
    return credit.toTell().stream()
        .map(one -> first.contains(one.reason()) ? way(one, remedy) : sentence(one, remedy))
        .filter(said -> !first.contains(said))
        .toList();
  }

  /** What the mask counts for once all of a remedy is done, a sentence. */
  public static String promise(Remedy remedy, Credit now) {
    boolean result =
        remedy.steps().stream()
            .map(Remedy.Step::action)
            .anyMatch(
                one ->
                    one instanceof Action.RecordFitTest || one instanceof Action.RecordSealCheck);
    int more = remedy.steps().size() - 1;
    String begin =
        more == 0
            ? result ? "If passed," : "Then"
            : "With that and "
                + (more == 1 ? "one thing more" : more + " things more")
                + (result ? ", tests and checks passed," : "");
    return begin + " it would count as " + factors(remedy.then(), now) + ".";
  }

  private static String factors(Credit then, Credit now) {
    String dust = Figures.plain(then.apf());
    if (now.vapour().isEmpty()) {
      return dust;
    }
    String vapour = Figures.plain(then.vapourApf());
    return dust.equals(vapour)
        ? dust + " against dust and vapour"
        : dust + " against dust and " + vapour + " against vapour";
  }
}
