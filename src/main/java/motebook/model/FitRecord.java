package motebook.model;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What is on record about a person's face and their being fit to wear a mask. */
public sealed interface FitRecord {
  /** The book's number; 0 before it is written. */
  long id();

  /** Name of the person. */
  String person();

  /** The day, or the first day. */
  LocalDate date();

  /** What it is, in words, such as "the fit test with half mask". */
  String told();

  /** How a fit test was made, and what it gave. */
  sealed interface Method {}

  /**
   * A test that measures, by the regulation's "quantitative".
   *
   * @param factors the fit factor of each exercise, grimace left out; one or more, each above 0
   */
  record Quantitative(List<Double> factors) implements Method {
    private static final int MOST = 50;

    public Quantitative {
      factors = List.copyOf(factors);
      if (factors.isEmpty() || factors.size() > MOST) {
        throw new Refusal(
            "A measured fit test has 1 to " + MOST + " fit factors, one for each exercise.");
      }
      factors.forEach(factor -> Checks.aboveZero("fit factor", factor, 1e7, ""));
    }
  }

  /**
   * A test by smell, taste or irritation, by the regulation's "qualitative".
   *
   * @param agent what was smelled or tasted, such as saccharin
   * @param passed whether nothing was noticed
   */
  record Qualitative(String agent, boolean passed) implements Method {
    /** The four of 29 CFR 1910.134, App. A, part I B, and what they are called at the bench. */
    private static final Pattern WRITTEN =
        Pattern.compile(
            "isoamyl|iaa\\b|banana oil|saccharin|sweet|bitrex|denatonium|bitter|irritant smoke"
                + "|stannic chloride|^smoke",
            Pattern.CASE_INSENSITIVE);

    /** A trade name of it; the protocol knows the substance. */
    private static final Pattern DENATONIUM =
        Pattern.compile("\\bbitrex\\b", Pattern.CASE_INSENSITIVE);

    public Qualitative {
      agent =
          DENATONIUM
              .matcher(Checks.words("agent of a fit test", agent))
              .replaceAll("denatonium benzoate");
    }

    /** Whether a written protocol tells how to test with it. */
    public boolean written() {
      return WRITTEN.matcher(agent).find();
    }
  }

  /**
   * A fit test of one respirator on one face.
   *
   * @param respirator name of the respirator
   */
  record FitTest(long id, String respirator, String person, LocalDate date, Method method)
      implements FitRecord {
    public FitTest {
      respirator = Names.check("respirator", respirator);
      person = Names.check("person", person);
      Checks.believable(date);
    }

    @Override
    public String told() {
      return "the fit test with " + respirator;
    }
  }

  /** A medical evaluation that cleared the person for wearing a respirator. */
  record Medical(long id, String person, LocalDate date) implements FitRecord {
    public Medical {
      person = Names.check("person", person);
      Checks.believable(date);
    }

    @Override
    public String told() {
      return "the medical clearance";
    }
  }

  /** Training in wearing and keeping respirators. */
  record Training(long id, String person, LocalDate date) implements FitRecord {
    public Training {
      person = Names.check("person", person);
      Checks.believable(date);
    }

    @Override
    public String told() {
      return "the training";
    }
  }

  /**
   * Hair under the seal.
   *
   * @param date first day
   * @param to last day; empty while it is still there
   */
  record Hair(long id, String person, LocalDate date, Optional<LocalDate> to) implements FitRecord {
    public Hair {
      person = Names.check("person", person);
      Checks.believable(date);
      to.ifPresent(Checks::believable);
      if (to.isPresent() && to.get().isBefore(date)) {
        throw new Refusal(
            ("The hair is on record from %s and cannot have gone on %s. Give that day or a"
                    + " later one.")
                .formatted(date, to.get()));
      }
    }

    @Override
    public String told() {
      return "hair under the seal";
    }

    /** Whether both tell of the same person and have a day in common. */
    public boolean overlaps(Hair other) {
      return Text.folded(person).equals(Text.folded(other.person))
          && to.map(last -> !other.date.isAfter(last)).orElse(true)
          && other.to.map(last -> !date.isAfter(last)).orElse(true);
    }

    /** Whether it is there on a day. */
    public boolean on(LocalDate day) {
      return !day.isBefore(date) && to.map(last -> !day.isAfter(last)).orElse(true);
    }
  }

  /** A change of the face, after which a new fit test is asked for. */
  record FaceChange(long id, String person, LocalDate date, What what) implements FitRecord {

    /** What changed. */
    public enum What {
      /** 20 lb (9 kg) or more lost or gained. */
      WEIGHT,
      DENTAL,
      FACE;

      /** The word it is given and stored with. */
      public String key() {
        return name().toLowerCase(Locale.ROOT);
      }

      /** What is meant by a word, whatever its case. */
      public static Optional<What> of(String word) {
        String folded = Text.folded(word).replace("teeth", DENTAL.key());
        return Arrays.stream(values()).filter(what -> what.key().equals(folded)).findFirst();
      }
    }

    public FaceChange {
      person = Names.check("person", person);
      Checks.believable(date);
    }

    @Override
    public String told() {
      return "the change of " + (what == What.DENTAL ? "teeth" : what.key());
    }
  }
}
