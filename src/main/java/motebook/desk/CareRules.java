package motebook.desk;

import motebook.model.OwnFigure;
import motebook.model.OwnFigures;
import motebook.model.Scheme;

/**
 * How long things last where no clock of their own says otherwise.
 *
 * @param fitMonthsOsha months from one fit test to the next, 29 CFR 1910.134(f)(2)
 * @param fitMonthsUk the same in the UK, where no rule fixes it: the owner's choice
 * @param trainingMonths months from one training to the next, 29 CFR 1910.134(k)(5)
 * @param openedGasMonths months that an opened gas element is used at most; common, from memory
 * @param examinationMonths months between thorough examinations of exhaust in the UK, COSHH
 *     regulation 9
 * @param dirtyHours hours that class N is worn in a dirty place, and class R where there is oil,
 *     unless its load stays low, NIOSH 96-101; also the hours of one shift, from memory
 * @param dirtyMg the load that ends them after those hours, mg in all, NIOSH 96-101
 * @param safetyFraction share of an estimated vapour life that is used
 * @param humidityPercent humidity that vapour lives are reckoned at
 * @param soonWorkingDays working days ahead in which what ends is due soon
 * @param soonDays days ahead in which what has a date is due soon
 */
public record CareRules(
    int fitMonthsOsha,
    int fitMonthsUk,
    int trainingMonths,
    int openedGasMonths,
    int examinationMonths,
    double dirtyHours,
    double dirtyMg,
    double safetyFraction,
    double humidityPercent,
    int soonWorkingDays,
    int soonDays) {

  private static final double DIRTY_HOURS = 8;
  private static final double DIRTY_MG = 200;

  /** What counts unless the owner chooses otherwise. */
  public static final CareRules USUAL = of(OwnFigures.SHIPPED);

  /** What counts by the owner's choices. */
  public static CareRules of(OwnFigures own) {
    return new CareRules(
        own.whole(OwnFigure.FIT_MONTHS_OSHA),
        own.whole(OwnFigure.FIT_MONTHS_UK),
        own.whole(OwnFigure.TRAINING_MONTHS),
        own.whole(OwnFigure.OPENED_GAS_MONTHS),
        own.whole(OwnFigure.EXAMINATION_MONTHS),
        DIRTY_HOURS,
        DIRTY_MG,
        own.get(OwnFigure.CARTRIDGE_SAFETY_FRACTION),
        own.get(OwnFigure.CARTRIDGE_HUMIDITY),
        own.whole(OwnFigure.SOON_WORKING_DAYS),
        own.whole(OwnFigure.SOON_DAYS));
  }

  /** Months from one fit test to the next. */
  int fitMonths(Scheme scheme) {
    return scheme == Scheme.UK ? fitMonthsUk : fitMonthsOsha;
  }
}
