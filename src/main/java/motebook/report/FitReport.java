package motebook.report;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import motebook.desk.Allowed;
import motebook.desk.FitResult;
import motebook.model.Figures;
import motebook.model.FitRecord;
import motebook.model.FitRecord.FaceChange;
import motebook.model.FitRecord.FitTest;
import motebook.model.FitRecord.Hair;
import motebook.model.FitRecord.Medical;
import motebook.model.FitRecord.Qualitative;
import motebook.model.FitRecord.Quantitative;
import motebook.model.FitRecord.Training;
import motebook.model.Gear;
import motebook.model.Respirator;
import motebook.reference.ProtectionFactor.Seal;

/** Who is fit to wear what, in words and as JSON. */
public final class FitReport {
  private final Allowed allowed;
  private final Gear gear;

  public FitReport(Allowed allowed, Gear gear) {
    this.allowed = allowed;
    this.gear = gear;
  }

  /** {@code 2026-03-02 Ana fit test with half mask: overall fit factor 138.56, passed …}. */
  public String line(FitRecord record) {
    return record.date() + "  " + record.person() + "  " + told(record);
  }

  /** The same behind its number, by which it is taken out. */
  public String numbered(FitRecord record) {
    return String.format(Locale.ROOT, "%4d  %s", record.id(), line(record));
  }

  /** The record without its person and day. */
  public String told(FitRecord record) {
    if (record instanceof FitTest test) {
      return "fit test with " + test.respirator() + ": " + outcome(test);
    }
    if (record instanceof Hair hair) {
      return "hair under the seal" + hair.to().map(day -> " until " + day).orElse(", still there");
    }
    if (record instanceof FaceChange change) {
      return "change of " + word(change) + ": a new fit test is asked for";
    }
    return record instanceof Medical ? "medical clearance" : "training";
  }

  private static String word(FaceChange change) {
    return change.what() == FaceChange.What.DENTAL ? "teeth" : change.what().key();
  }

  /** {@code overall fit factor 139, passed (100 is asked)}. */
  public String outcome(FitTest test) {
    FitResult result = result(test);
    String outcome = result.passed() ? "passed" : "not passed";
    if (test.method() instanceof Qualitative told) {
      return told.agent() + ", " + outcome + most(test, result);
    }
    return "overall fit factor %s, %s (%s is asked%s)"
        .formatted(
            overall(result.overall().orElseThrow(), result.asked()),
            outcome,
            Figures.plain(result.asked()),
            result.everyExercise() ? " in every exercise" : "");
  }

  /** An overall fit factor, which is never rounded up to the one that is asked. */
  public static String overall(double overall, double asked) {
    String shown = Figures.rounded(overall);
    return overall < asked && shown.equals(Figures.rounded(asked)) ? "just under " + shown : shown;
  }

  private String most(FitTest test, FitResult result) {
    return result.passed()
            && result.most().isPresent()
            && seal(test).filter(Seal.FULL::equals).isPresent()
        ? " (so tested, a full facepiece is credited %s at most)"
            .formatted(Figures.plain(result.most().orElseThrow()))
        : "";
  }

  private Optional<Seal> seal(FitTest test) {
    return gear.respirator(test.respirator()).flatMap(allowed::seal);
  }

  private FitResult result(FitTest test) {
    Respirator respirator = gear.respirator(test.respirator()).orElseThrow();
    return FitResult.of(
        test, respirator.scheme(), seal(test).orElse(Seal.HALF), allowed.fitRule(respirator));
  }

  /** One record as a JSON object. */
  public Map<String, Object> object(FitRecord record) {
    Map<String, Object> object =
        Json.object(
            "id", record.id(),
            "kind", kind(record),
            "person", record.person(),
            "date", record.date().toString());
    if (record instanceof FitTest test) {
      put(object, test);
    } else if (record instanceof Hair hair) {
      object.put("to", hair.to().map(LocalDate::toString).orElse(null));
    } else if (record instanceof FaceChange change) {
      object.put("what", change.what().key());
    }
    return object;
  }

  private static String kind(FitRecord record) {
    if (record instanceof FitTest) {
      return "fit test";
    }
    if (record instanceof Hair) {
      return "hair";
    }
    if (record instanceof Training) {
      return "training";
    }
    return record instanceof Medical ? "medical" : "change";
  }

  private void put(Map<String, Object> object, FitTest test) {
    FitResult result = result(test);
    object.put("respirator", test.respirator());
    if (test.method() instanceof Quantitative measured) {
      object.put("method", "quantitative");
      object.put("factors", measured.factors());
      object.put("fit_factor", result.overall().orElseThrow());
    } else if (test.method() instanceof Qualitative told) {
      object.put("method", "qualitative");
      object.put("agent", told.agent());
    }
    object.put("passed", result.passed());
  }
}
