package motebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What a refused credit promises is what doing what it says gives, with any masks at any work. */
class RemedyProperties {
  private static final Pattern COMMAND =
      Pattern.compile("motebook ((?:\"[^\"]*\"|[^\".])+)(?=\\. |\\.$)");
  private static final Pattern PROMISE =
      Pattern.compile(
          "it would count as ([\\d,]+)(?: against dust and (?:(vapour)|([\\d,]+) against vapour))?");
  private static final LocalDate FIRST = LocalDate.parse("2026-03-16");
  private static final int ROUNDS = 12;

  private static final List<String> MASKS =
      List.of(
          "--facepiece \"half mask\"",
          "--facepiece \"full facepiece\"",
          "--facepiece \"filtering facepiece\"",
          "--facepiece hood --kind powered",
          "--facepiece \"half mask\" --kind powered",
          "--facepiece \"half mask\" --kind \"supplied air, demand\"",
          "--facepiece hood --kind \"supplied air, continuous flow\"",
          "--facepiece \"half mask\" --scheme uk",
          "--facepiece \"full facepiece\" --scheme uk",
          "--facepiece \"filtering facepiece\" --scheme uk");
  private static final List<String> CLASSES =
      List.of(
          "P100",
          "N95",
          "HE",
          "organic vapour",
          "OV/P100",
          "formaldehyde",
          "multi-gas and P100",
          "P3",
          "P2",
          "FFP3",
          "A1P3",
          "ABEK");
  private static final List<String> WORK =
      List.of(
          "90m orbital sanding oak",
          "60m hand router mdf",
          "30m finishing using 200ml acrylic lacquer",
          "20m finishing using 50ml shellac",
          "25m finishing using 60ml wiping oil",
          "20m finishing using 100ml lacquer thinner",
          "20m finishing using 60ml two-part polyurethane",
          "30m finishing using 80ml conversion varnish",
          "120m table saw pine");

  // What a data sheet says decides by itself; what is promised holds without it.
  private static final String DATA_SHEET = "gear add finish";

  private record Promise(double dust, double vapour) {
    static Promise in(String refused) {
      Matcher found = PROMISE.matcher(refused);
      if (!found.find()) {
        return null;
      }
      double dust = factor(found.group(1));
      if (found.group(3) != null) {
        return new Promise(dust, factor(found.group(3)));
      }
      return new Promise(dust, found.group(2) == null ? Double.NaN : dust);
    }

    private static double factor(String text) {
      return Double.parseDouble(text.replace(",", ""));
    }
  }

  @Property(tries = 40)
  void what_is_promised_is_what_doing_it_gives(@ForAll long seed) throws IOException {
    Path folder = Files.createTempDirectory("remedy");
    try {
      Shell shell = new Shell(folder.resolve("book.db")).at("2026-03-27T18:00");
      List<LocalDate> days = fill(shell, new Random(seed));
      for (LocalDate day : days) {
        for (int index = 0; index < sessions(shell, day).size(); index++) {
          mend(shell, day, index);
        }
      }
    } finally {
      try (Stream<Path> all = Files.walk(folder)) {
        all.sorted(Comparator.reverseOrder()).forEach(path -> path.toFile().delete());
      }
    }
  }

  private static void mend(Shell shell, LocalDate day, int index) {
    String why = refused(shell, day, index);
    Promise first = why == null ? null : Promise.in(why);
    for (int round = 0; first != null && why != null && Promise.in(why) != null; round++) {
      assertThat(round).as("comes to an end: " + why).isLessThan(ROUNDS);
      assertThat(Promise.in(why)).as(why).isEqualTo(first);
      List<String> commands =
          COMMAND
              .matcher(why)
              .results()
              .map(found -> found.group(1))
              .filter(command -> !command.startsWith(DATA_SHEET))
              .distinct()
              .toList();
      assertThat(commands).as(why).isNotEmpty();
      for (String command : commands) {
        Shell.Said said = shell.say(Shell.filled(command));
        assertThat(said.code()).as(why + "\n" + command + "\n" + said.err()).isZero();
      }
      why = refused(shell, day, index);
    }
    if (first == null) {
      assertThat(why == null ? "" : why).doesNotContain("motebook ");
      return;
    }
    Map<?, ?> session = (Map<?, ?>) sessions(shell, day).get(index);
    assertThat(Shell.number(session, "credited_apf")).isEqualTo(first.dust());
    if (!Double.isNaN(first.vapour())) {
      assertThat(Shell.number(session, "credited_apf_vapour")).isEqualTo(first.vapour());
    }
  }

  private static List<?> sessions(Shell shell, LocalDate day) {
    return (List<?>) shell.json("day " + day).get("sessions");
  }

  private static String refused(Shell shell, LocalDate day, int index) {
    return (String) Shell.at(sessions(shell, day).get(index), "credit_refused");
  }

  // What the book refuses, such as a cartridge on a disposable mask, is left out of it.
  private static List<LocalDate> fill(Shell shell, Random random) {
    int masks = 1 + random.nextInt(3);
    for (int mask = 0; mask < masks; mask++) {
      shell.say("gear add respirator mask" + mask + " " + of(MASKS, random));
      for (int element = random.nextInt(3); element > 0; element--) {
        shell.say(
            "gear add element e%d%d --for mask%d --class \"%s\" --opened %s%s"
                .formatted(
                    mask,
                    element,
                    mask,
                    of(CLASSES, random),
                    FIRST.minusDays(random.nextInt(9)),
                    random.nextInt(3) == 0 ? " --limit-hours 2" : ""));
      }
      String result =
          List.of("--agent saccharin --passed", "--agent saccharin --failed", "--factors 3000,2500")
              .get(random.nextInt(3));
      if (random.nextBoolean()) {
        shell.say("fit record --respirator mask" + mask + " --on 2026-03-02 " + result);
      }
    }
    if (random.nextInt(4) == 0) {
      shell.say("fit hair --from 2026-03-10" + (random.nextBoolean() ? " --to 2026-03-20" : ""));
    }
    List<LocalDate> days = new ArrayList<>();
    for (int day = 0; day < 3; day++) {
      LocalDate date = FIRST.plusDays(day * 2L);
      for (int hour : List.of(8, 11, 14)) {
        shell.say(
            "log %s wearing mask%d%s at %d:00 on %s"
                .formatted(
                    of(WORK, random),
                    random.nextInt(masks),
                    random.nextInt(3) == 0 ? "" : " checked",
                    hour,
                    date));
      }
      days.add(date);
    }
    if (random.nextInt(4) == 0) {
      shell.say("gear retire mask0 --on " + FIRST.plusDays(1));
    }
    return days;
  }

  private static String of(List<String> all, Random random) {
    return all.get(random.nextInt(all.size()));
  }
}
