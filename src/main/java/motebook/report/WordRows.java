package motebook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import motebook.entry.Scene;
import motebook.entry.SpokenLine;
import motebook.model.Figures;
import motebook.model.Text;
import motebook.reference.Control;
import motebook.reference.Figure;
import motebook.reference.Finish;
import motebook.reference.Grade;
import motebook.reference.Material;
import motebook.reference.Named;
import motebook.reference.Operation;
import motebook.reference.Reference;
import motebook.reference.Wood;
import motebook.reference.WoodClass;
import motebook.report.WordPart.Word;

/** What the rows of the tables are called, and what is to be told of them. */
final class WordRows {
  private final Scene scene;
  private final Reference reference;

  WordRows(Scene scene) {
    this.scene = scene;
    this.reference = scene.reference();
  }

  Word operation(Operation row) {
    Figure air = row.referenceMgPerM3();
    String dust =
        row.dusty() ? "about " + ranged(air, " mg/m³") + grade(row.grade()) : "no dust of its own";
    List<String> told = new ArrayList<>(List.of(dust));
    if (row.finishes()) {
      told.add("takes finishes, such as: using " + example());
    }
    boolean outdoors = row.where() == Operation.Where.OUTDOORS;
    if (outdoors) {
      told.add("outdoors only: the figure is what it would be in a room");
    }
    return word(
        row,
        told,
        row.grade(),
        Json.object(
            "family",
            row.family().name().toLowerCase(Locale.ROOT),
            "reference_mg_m3",
            air.typical(),
            "low_mg_m3",
            air.low(),
            "high_mg_m3",
            air.high(),
            "finishes",
            row.finishes(),
            "where",
            outdoors ? "outdoors" : "any"));
  }

  private String example() {
    return SpokenLine.exampleAmounts(scene).stream().findFirst().orElse("an amount");
  }

  Word material(Material row) {
    boolean known = row.woodClass() != WoodClass.UNKNOWN;
    String wood =
        known ? row.woodClass().name().toLowerCase(Locale.ROOT).replace('_', ' ') : "any wood";
    return word(
        row,
        List.of(
            wood
                + "; sanding "
                + ranged(row.sandingFactor(), "")
                + ", cutting "
                + Figures.plain(row.cuttingFactor())
                + grade(row.grade())),
        row.grade(),
        Json.object(
            "wood_class",
            row.woodClass().name().toLowerCase(Locale.ROOT).replace('_', '-'),
            "sanding_factor",
            row.sandingFactor().typical(),
            "sanding_low",
            row.sandingFactor().low(),
            "sanding_high",
            row.sandingFactor().high(),
            "cutting_factor",
            row.cuttingFactor()));
  }

  Word wood(Wood row) {
    String note =
        row.stands()
            .map(key -> "say " + SpokenLine.name(reference.material(Optional.of(key))))
            .orElse(row.advice());
    return new Word(
        row.name(),
        row.also(),
        List.of(note),
        Json.object(
            "name",
            row.name(),
            "aliases",
            row.also(),
            "material",
            row.stands().orElse(null),
            "note",
            note));
  }

  Word control(Control row) {
    List<String> told = row.rows().stream().map(part -> serves(row, part)).toList();
    Grade worst = row.rows().stream().map(Control.Row::grade).max(Grade::compareTo).orElseThrow();
    return word(
        row, told, worst, Json.object("rows", row.rows().stream().map(this::object).toList()));
  }

  private String serves(Control control, Control.Row row) {
    String whom =
        row.serves().isEmpty()
            ? "every operation"
            : reference.operations().stream()
                .filter(operation -> row.serves().contains(operation.key()))
                .map(Named::spoken)
                .collect(Collectors.joining(", "));
    boolean source = control.actsOn() == Control.ActsOn.SOURCE;
    return source
        ? "lets " + percent(row.passFactor()) + " through at " + whom + grade(row.grade())
        : "cleans or changes the air of the room, at " + whom;
  }

  private Map<String, Object> object(Control.Row row) {
    return Json.object(
        "serves",
        row.serves().isEmpty() ? null : row.serves().stream().sorted().toList(),
        "pass_factor",
        row.passFactor().typical(),
        "pass_low",
        row.passFactor().low(),
        "pass_high",
        row.passFactor().high(),
        "grade",
        row.grade().name());
  }

  Word finish(Finish row) {
    Figure volatiles = row.volatileGPerL();
    return word(
        row,
        List.of(
            "gives off "
                + ranged(volatiles, " g/L of vapour")
                + (row.own() ? ", from its data sheet" : grade(row.grade()))),
        row.grade(),
        Json.object(
            "volatile_g_l",
            volatiles.typical(),
            "volatile_low_g_l",
            volatiles.low(),
            "volatile_high_g_l",
            volatiles.high(),
            "own",
            row.own()));
  }

  private static Word word(Named row, List<String> told, Grade grade, Map<String, Object> figures) {
    String said = SpokenLine.name(row);
    List<String> also =
        row.names().stream().filter(n -> !Text.folded(n).equals(Text.folded(said))).toList();
    Map<String, Object> object =
        Json.object(
            "key", row.key(),
            "name", row.name(),
            "spoken", said,
            "aliases", also,
            "note", String.join("; ", told),
            "grade", grade.name());
    object.putAll(figures);
    return new Word(said, also, told, object);
  }

  private static String ranged(Figure figure, String unit) {
    String middle = Figures.plain(figure.typical());
    return figure.low() == figure.high()
        ? middle + unit
        : middle
            + unit
            + " ("
            + Figures.plain(figure.low())
            + " to "
            + Figures.plain(figure.high())
            + ")";
  }

  private static String percent(Figure share) {
    return "%s (%s to %s)"
        .formatted(
            Figures.percent(100 * share.typical()),
            Figures.percent(100 * share.low()),
            Figures.percent(100 * share.high()));
  }

  private static String grade(Grade grade) {
    return ", grade " + grade + (grade.rough() ? ", rough" : "");
  }
}
