package motebook.report;

import static motebook.model.ShellWord.quoted;

import java.time.LocalDate;
import java.util.Optional;
import motebook.model.Action;
import motebook.model.Action.AddElement;
import motebook.model.Action.AddFinish;
import motebook.model.Action.AddPerson;
import motebook.model.Action.AddPlace;
import motebook.model.Action.AddRespirator;
import motebook.model.Action.ChangeElement;
import motebook.model.Action.DiscardSpare;
import motebook.model.Action.EndHair;
import motebook.model.Action.GiveFlow;
import motebook.model.Action.OpenElement;
import motebook.model.Action.RecordFitTest;
import motebook.model.Action.RecordMedical;
import motebook.model.Action.RecordSealCheck;
import motebook.model.Action.RecordTraining;
import motebook.model.Action.RecordUpkeep;
import motebook.model.Action.RemoveFitRecord;
import motebook.model.Action.ReplaceFinish;
import motebook.model.Action.SeeCopies;
import motebook.model.Action.SeeFit;
import motebook.model.Action.SeeGearHelp;
import motebook.model.Action.WearInSession;
import motebook.model.MinuteOfDay;
import motebook.model.Refusal;
import motebook.model.Upkeep;

/**
 * Actions as command lines and as questions.
 *
 * <p>What has a result, such as a test, leaves it for the person to fill in: the line as it stands
 * is refused, and so are the words in their place.
 */
public final class ActionText {
  /** Stands where a person says how something ended; no shell reads it as anything but a word. */
  public static final String RESULT = "PASS-OR-FAIL";

  /** Stands where the factors of a fit test are filled in. */
  public static final String FACTORS = "F1,F2,F3";

  /** Stands where a person says on which day something was done. */
  public static final String DAY = "DATE";

  private static final String RESULT_OPTION = " --result " + RESULT;

  private final Invocation program;

  /** For the book that an invocation opens. */
  public ActionText(Invocation program) {
    this.program = program;
  }

  /** The command line that does it. */
  public String command(Action action) {
    return program.command(words(action, true));
  }

  /** The same without the day, for whoever runs it on the day it is done. */
  public String undated(Action action) {
    return program.command(words(action, false));
  }

  // Java 17 has no switch over the kinds of a sealed type; what is forgotten is found by a test.
  private static String words(Action action, boolean dated) {
    if (action instanceof RecordSealCheck check) {
      return "fit checked " + check.session() + RESULT_OPTION;
    }
    if (action instanceof WearInSession wear) {
      return "fit wore " + wear.session() + " " + quoted(wear.respirator());
    }
    if (action instanceof RecordFitTest test) {
      return "fit record --respirator "
          + quoted(test.respirator())
          + person(test.person())
          + on(test.on(), dated)
          + (test.measured()
              ? " --method quantitative --factors " + FACTORS
              : " --method qualitative --agent saccharin" + RESULT_OPTION);
    }
    if (action instanceof RecordMedical medical) {
      return "fit medical" + person(medical.person()) + on(medical.on(), dated) + RESULT_OPTION;
    }
    if (action instanceof RecordTraining training) {
      return "fit training" + person(training.person()) + " --on " + DAY;
    }
    if (action instanceof EndHair hair) {
      return "fit hair"
          + person(hair.person())
          + " --to "
          + hair.lastDay().map(LocalDate::toString).orElse(DAY);
    }
    if (action instanceof RemoveFitRecord remove) {
      return "fit remove " + remove.id();
    }
    return ofTheBook(action).orElseGet(() -> "gear " + ofGear(action, dated));
  }

  private static Optional<String> ofTheBook(Action action) {
    if (action instanceof AddPlace) {
      return Optional.of("place add NAME --volume 90");
    }
    if (action instanceof AddPerson) {
      return Optional.of("person add NAME");
    }
    if (action instanceof SeeFit) {
      return Optional.of("fit list");
    }
    if (action instanceof SeeCopies) {
      return Optional.of("backup --list");
    }
    if (action instanceof GiveFlow give) {
      String option =
          give.of() == Action.Flow.AIR_CLEANER ? " --cleaner-flow 400cfm" : " --fan-flow 400cfm";
      return Optional.of("place change " + quoted(give.place()) + option);
    }
    return Optional.empty();
  }

  private static String ofGear(Action action, boolean dated) {
    if (action instanceof AddRespirator add) {
      return "add respirator "
          + quoted(add.name())
          + " --facepiece "
          + quoted(add.facepiece())
          + " --kind "
          + quoted(add.kind())
          + " --scheme "
          + add.scheme().key();
    }
    if (action instanceof AddElement add) {
      return "add element "
          + quoted(add.name())
          + " --for "
          + quoted(add.respirator())
          + " --class "
          + quoted(add.elementClass())
          + (dated ? " --opened " + add.opened() : "")
          + add.until().map(day -> " --until " + day).orElse("");
    }
    if (action instanceof OpenElement open) {
      return "open " + quoted(open.element());
    }
    if (action instanceof ChangeElement change) {
      return "change "
          + quoted(change.element())
          + on(change.on(), dated)
          + (dated && change.minute() > 0 ? " --at " + MinuteOfDay.told(change.minute()) : "");
    }
    if (action instanceof DiscardSpare discard) {
      return "retire " + quoted(discard.element());
    }
    if (action instanceof RecordUpkeep upkeep) {
      return "upkeep "
          + quoted(upkeep.filter())
          + " "
          + upkeep.what().key()
          + (upkeep.what() == Upkeep.What.INSPECTED ? RESULT_OPTION : "");
    }
    if (action instanceof AddFinish add) {
      return "add finish "
          + quoted(add.finish())
          + " --like "
          + quoted(add.finish())
          + " --volatile G/L --solvents SHARES";
    }
    if (action instanceof ReplaceFinish finish) {
      return "add finish "
          + quoted(finish.name())
          + " --replace --like FINISH --volatile G/L --solvents SHARES";
    }
    if (action instanceof SeeGearHelp) {
      return "add --help";
    }
    throw new IllegalArgumentException("an action without a command: " + action);
  }

  private static String person(String name) {
    return " --person " + quoted(name);
  }

  private static String on(LocalDate day, boolean dated) {
    return dated ? " --on " + day : "";
  }

  /** The action as what a person may do about something that counts against a mask, a sentence. */
  public String offer(Action action) {
    return lead(action) + ": " + command(action) + "." + beside(action).orElse("");
  }

  /** The same before the work is done, a sentence. */
  public String ahead(Action action) {
    if (action instanceof RecordSealCheck) {
      return "Check the seal when you put it on, and say \"checked\" in the line.";
    }
    if (action instanceof WearInSession wear) {
      return "Wear " + wear.respirator() + " instead.";
    }
    return "Before then: " + undated(action) + ".";
  }

  private static Optional<String> beside(Action action) {
    return action instanceof ChangeElement change && change.oneShift()
        ? Optional.of(" If a fresh one is put on each day, add --single-use to that.")
        : Optional.empty();
  }

  /** What was refused, and the command for what can be done about it. */
  public String told(Refusal refusal) {
    return refusal.getMessage()
        + refusal.next().map(next -> " " + instead(next) + ": " + command(next)).orElse("");
  }

  private static String instead(Action next) {
    if (next instanceof OpenElement) {
      return "Open it";
    }
    if (next instanceof AddRespirator) {
      return "Add it";
    }
    if (next instanceof AddPlace || next instanceof AddPerson) {
      return "Add one with";
    }
    if (next instanceof RecordUpkeep) {
      return "Enter what was done to it";
    }
    if (next instanceof EndHair) {
      return "Once it is gone, enter that";
    }
    if (next instanceof ReplaceFinish) {
      return "To use it again, enter its data sheet again";
    }
    return next instanceof GiveFlow ? "Run" : "See";
  }

  private static String lead(Action action) {
    if (action instanceof RecordSealCheck) {
      return "If it was done, record how it ended";
    }
    if (action instanceof WearInSession wear) {
      return "If " + wear.respirator() + " was worn, enter it";
    }
    if (action instanceof AddRespirator add) {
      return add.kind().startsWith("supplied air")
          ? "If supplied air was worn, or will be, add it"
          : "Add it";
    }
    if (action instanceof AddElement add) {
      return "If one (" + add.elementClass() + ") was on it, enter it";
    }
    if (action instanceof ChangeElement) {
      return "If it was changed by then, enter it";
    }
    if (action instanceof RecordFitTest) {
      return "If a test was made by then, record it";
    }
    if (action instanceof EndHair) {
      return "If it was gone by then, enter it";
    }
    if (action instanceof RemoveFitRecord) {
      return "If that is wrong, take it out";
    }
    if (action instanceof AddFinish) {
      return "Enter what it says";
    }
    return "Enter it";
  }

  /** What is asked before the action is done with a yes. */
  public static String asked(Action action) {
    if (action instanceof ChangeElement change) {
      return change.element() + ": changed for a fresh one, on the mask from " + change.on() + "?";
    }
    if (action instanceof DiscardSpare discard) {
      return "Is the spare " + discard.element() + " thrown away?";
    }
    if (action instanceof RecordUpkeep upkeep) {
      return upkeep.what() == Upkeep.What.INSPECTED
          ? "Was " + upkeep.filter() + " examined, and found in order?"
          : "Is " + upkeep.filter() + " " + upkeep.what().key() + " now?";
    }
    if (action instanceof RecordMedical medical) {
      return "Has " + medical.person() + " been cleared by a medical evaluation?";
    }
    if (action instanceof RecordTraining training) {
      return "Has " + training.person() + " been trained in wearing and keeping respirators?";
    }
    if (action instanceof RecordSealCheck) {
      return "Was the seal checked when the mask was put on, and did it hold?";
    }
    if (action instanceof WearInSession wear) {
      return "Was " + wear.respirator() + " worn instead?";
    }
    if (action instanceof OpenElement open) {
      return "Is " + open.element() + " unpacked and on its mask?";
    }
    if (action instanceof EndHair hair) {
      return "Was the hair under the seal there until " + hair.lastDay().orElseThrow() + " only?";
    }
    if (action instanceof RemoveFitRecord) {
      return "Is that record wrong, and is it to be taken out?";
    }
    throw new IllegalArgumentException("more than a yes is needed: " + action);
  }
}
