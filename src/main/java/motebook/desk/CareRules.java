package motebook.desk;

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
 * @param dirtyHours hours that class N is worn in a dirty place unless its load stays low, NIOSH
 *     96-101
 * @param dirtyMg the load that ends class N after those hours, mg in all, NIOSH 96-101
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

  /** What counts unless the owner chooses otherwise. */
  public static final CareRules USUAL = new CareRules(12, 12, 12, 6, 14, 8, 200, 0.75, 50, 3, 14);

  /** Months from one fit test to the next. */
  int fitMonths(Scheme scheme) {
    return scheme == Scheme.UK ? fitMonthsUk : fitMonthsOsha;
  }
}
