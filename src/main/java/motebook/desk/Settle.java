package motebook.desk;

import static motebook.model.ShellWord.quoted;

import java.time.LocalDate;
import java.util.Optional;
import motebook.model.FitRecord;
import motebook.model.Gear;
import motebook.model.MinuteOfDay;
import motebook.model.Text;

/** The commands that settle what is due and mend what is refused, as a person types them. */
final class Settle {
  private static final String GEAR = "motebook gear ";
  private static final String FIT = "motebook fit ";
  private static final int NUMBER_LENGTH = 4;

  private Settle() {}

  static String addRespirator(String name) {
    return GEAR
        + "add respirator "
        + quoted(name)
        + " --facepiece \"half mask\" --kind air-purifying --scheme osha";
  }

  static String addSuppliedAir(Gear gear) {
    return GEAR
        + "add respirator "
        + quoted(fresh("air line", gear))
        + " --facepiece \"helmet or hood\""
        + " --kind \"supplied air, continuous flow\" --scheme osha";
  }

  /** That another respirator was worn in a session than is said, as a sentence. */
  static String ifWorn(long session, String respirator) {
    return "If %s was worn, say so: %swore %d %s"
        .formatted(respirator, FIT, session, quoted(respirator));
  }

  static String remove(FitRecord record) {
    return FIT + "remove " + record.id();
  }

  static String addElement(Gear gear, String respirator, String elementClass, LocalDate opened) {
    return GEAR
        + "add element "
        + quoted(fresh(named(respirator, elementClass), gear))
        + " --for "
        + quoted(respirator)
        + " --class "
        + quoted(elementClass)
        + " --opened "
        + opened;
  }

  /** The same of one whose place another has taken since. */
  static String until(Optional<LocalDate> next) {
    return next.map(day -> " --until " + day).orElse("");
  }

  /** A name that nothing has yet. */
  private static String fresh(String name, Gear gear) {
    String free = name;
    for (int number = 2; gear.holds(free); number++) {
      free = name + " " + number;
    }
    return free;
  }

  // A name must differ from the respirator's own and fit into one column.
  private static String named(String respirator, String elementClass) {
    String whole = elementClass + " " + respirator;
    return whole.length() <= Text.NAME_LENGTH - NUMBER_LENGTH ? whole : elementClass + " element";
  }

  static String change(String element, LocalDate on) {
    return GEAR + "change " + quoted(element) + " --on " + on;
  }

  /** The same at a minute of the day: the work before it stays with the one taken off. */
  static String change(String element, LocalDate on, int minute) {
    return change(element, on) + " --at " + MinuteOfDay.told(minute);
  }

  static String retire(String name) {
    return GEAR + "retire " + quoted(name);
  }

  static String upkeep(String filter, String what) {
    return GEAR + "upkeep " + quoted(filter) + " " + what;
  }

  static String qualitativeFit(String respirator, String person, LocalDate on) {
    return fit(respirator, person, on) + " --method qualitative --agent saccharin --passed";
  }

  static String quantitativeFit(String respirator, String person, LocalDate on) {
    return fit(respirator, person, on) + " --method quantitative --factors F1,F2,F3";
  }

  private static String fit(String respirator, String person, LocalDate on) {
    return FIT
        + "record --respirator "
        + quoted(respirator)
        + " --person "
        + quoted(person)
        + " --on "
        + on;
  }

  static String medical(String person, LocalDate on) {
    return FIT + "medical --person " + quoted(person) + " --on " + on;
  }

  static String training(String person, LocalDate on) {
    return FIT + "training --person " + quoted(person) + " --on " + on;
  }

  static String shaved(String person, LocalDate lastDay) {
    return FIT + "hair --person " + quoted(person) + " --to " + lastDay;
  }

  static String checked(long session) {
    return FIT + "checked " + session;
  }
}
