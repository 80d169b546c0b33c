package motebook.entry;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.reference.Finish;
import motebook.reference.Finishes;
import motebook.reference.Solvent;
import motebook.reference.Solvents;

/** What a maker's data sheet says a finish is made of, as a person types it. */
public final class MakeUp {
  private static final Pattern PART =
      Pattern.compile("\\G[ ,]*(\\S.*?)[ :]+(\\d{1,3}(?:\\.\\d{1,9})?)( *%)?(?=[ ,]|\\z)");
  private static final double PERCENT = 100;

  private MakeUp() {}

  /**
   * Solvents and their shares by weight, from {@code toluene 0.2 acetone 0.8} or {@code toluene
   * 20%, acetone 80%}.
   *
   * @return shares by key of the solvent, in the order said; not yet checked to add to 1
   * @throws Refusal if it cannot be read, or names a solvent that is not known
   */
  public static Map<String, Double> read(String text) {
    String clean = Text.clean(text);
    Map<String, Double> parts = new LinkedHashMap<>();
    Matcher part = PART.matcher(clean);
    int to = 0;
    while (part.find()) {
      String key = solvent(part.group(1)).key();
      double share = Double.parseDouble(part.group(2)) / (part.group(3) == null ? 1 : PERCENT);
      if (parts.put(key, share) != null) {
        throw new Refusal("\"" + part.group(1) + "\" is said twice. Add the shares together.");
      }
      to = part.end();
    }
    if (parts.isEmpty() || !clean.substring(to).isBlank()) {
      throw new Refusal(
          "\"%s\" is no list of solvents: say each with its share by weight, such as toluene 0.2 acetone 0.8."
              .formatted(Wording.shortened(clean)));
    }
    return parts;
  }

  private static Solvent solvent(String name) {
    return Solvents.shipped()
        .find(name)
        .filter(Solvent::weighed)
        .orElseThrow(() -> new Refusal(unknown("solvent with a molar mass", name, known())));
  }

  private static List<String> known() {
    return Solvents.shipped().all().stream().filter(Solvent::weighed).map(Solvent::spoken).toList();
  }

  /**
   * The shipped finish that one is like.
   *
   * @throws Refusal if none answers to the name
   */
  public static Finish like(String name) {
    Finishes shipped = Finishes.shipped();
    List<String> all = shipped.all().stream().map(Finish::spoken).toList();
    return shipped.named(name).orElseThrow(() -> new Refusal(unknown("shipped finish", name, all)));
  }

  private static String unknown(String kind, String name, List<String> known) {
    List<String> near = NearMiss.words(Text.folded(name), known);
    return "\"%s\" is no %s. %s"
        .formatted(
            Wording.shortened(Text.clean(name)),
            kind,
            near.isEmpty()
                ? "Known are " + Wording.list(known, "and") + "."
                : "Did you mean " + Wording.list(near, "or") + "?");
  }
}
