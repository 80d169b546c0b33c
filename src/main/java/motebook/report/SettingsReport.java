package motebook.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import motebook.desk.Choice;
import motebook.desk.Choices;
import motebook.desk.LimitFigures;
import motebook.journal.Settings;

/** The owner's choices as text and as JSON. */
public final class SettingsReport {
  private static final String LIMITS = "limits";

  private SettingsReport() {}

  /** All of them, a line each; what differs from what is shipped is marked. */
  public static List<String> lines(Settings settings, Invocation program) {
    List<String> lines = new ArrayList<>();
    lines.add("Your choices, those that you changed with a star:");
    int keys = Choices.ALL.stream().mapToInt(choice -> choice.key().length()).max().orElseThrow();
    for (Choice choice : Choices.ALL) {
      String mark = choice.changed(settings) ? "* " : "  ";
      String key = choice.key() + " ".repeat(keys - choice.key().length());
      lines.add(mark + key + "  " + choice.told(settings) + "  (" + choice.what() + ")");
      figures(choice, settings).forEach(f -> lines.add(" ".repeat(keys + 4) + f));
    }
    lines.add("More on one: " + program.command("settings KEY"));
    lines.add("Change it: " + program.command("settings KEY VALUE"));
    lines.add("Back to what is shipped: " + program.command("settings KEY --default"));
    return lines;
  }

  /** One of them at length. */
  public static List<String> lines(Choice choice, Settings settings, Invocation program) {
    List<String> lines = new ArrayList<>();
    lines.add(choice.key() + ": " + choice.told(settings) + " (" + choice.what() + ")");
    figures(choice, settings).forEach(figure -> lines.add("          " + figure));
    choice.shipped().ifPresent(value -> lines.add("shipped   " + choice.withUnit(value)));
    lines.addAll(allowed(choice));
    if (!choice.basis().isEmpty()) {
      lines.add("basis     " + choice.basis());
    }
    lines.add("change    " + program.command("settings " + choice.key() + " VALUE"));
    return lines;
  }

  /** What the chosen limits come to; nothing for what tells its value itself. */
  public static List<String> figures(Choice choice, Settings settings) {
    return choice.key().equals(LIMITS)
        ? Arrays.asList(LimitFigures.of(choice.told(settings)).split("; ", -1))
        : List.of();
  }

  private static List<String> allowed(Choice choice) {
    if (!choice.key().equals(LIMITS)) {
      return List.of("allowed   " + choice.allowed());
    }
    return choice.offered().stream()
        .map(set -> String.format("allowed   %-13s  %s", set, LimitFigures.of(set)))
        .toList();
  }

  /** All of them. */
  public static Map<String, Object> object(Settings settings) {
    return Json.object(
        "settings", Choices.ALL.stream().map(choice -> object(choice, settings)).toList());
  }

  /** One of them. */
  public static Map<String, Object> object(Choice choice, Settings settings) {
    return Json.object(
        "key", choice.key(),
        "value", value(choice, choice.value(settings)),
        "unit", choice.unit().isEmpty() ? null : choice.unit(),
        "shipped", choice.shipped().map(shipped -> value(choice, shipped)).orElse(null),
        "changed", choice.changed(settings),
        "what", choice.what(),
        "allowed", choice.allowed(),
        "basis", choice.basis().isEmpty() ? null : choice.basis(),
        "change", Invocation.USUAL.command("settings " + choice.key() + " VALUE"));
  }

  private static Object value(Choice choice, String text) {
    if (choice.number()) {
      return Double.valueOf(text);
    }
    return choice.several() ? words(text) : text;
  }

  private static List<String> words(String text) {
    return text.equals(Choice.NONE) ? List.of() : Arrays.asList(text.split(", ", -1));
  }
}
