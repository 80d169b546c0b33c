package motebook.journal;

import java.util.List;
import motebook.model.OwnFigures;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.model.Units;
import motebook.model.VapourLimits;

/**
 * What the book assumes where nothing else is said.
 *
 * @param person name of the book's own person
 * @param place name of the place where work is done unless another is named
 * @param limitSet key of the set of limits that days are held against
 * @param totalConversion inhalable dust per total dust, by which a limit for total dust is held
 *     against an inhalable figure, 1 to 10
 * @param gapMinutes the longest gap between two sessions that counts as spent in the room, 0 to
 *     1440 min
 * @param units the units in which the shop's measures are shown
 * @param equipment keys of the controls that the shop owns, in the order in which they were named
 * @param vapourLimits whose figures the vapours are held against
 * @param figures what the care of masks and filters is reckoned with
 */
public record Settings(
    String person,
    String place,
    String limitSet,
    double totalConversion,
    int gapMinutes,
    Units units,
    List<String> equipment,
    VapourLimits vapourLimits,
    OwnFigures figures) {

  private static final int DAY = 24 * 60;

  /** Checks the figures; whether the names are known only the book can tell. */
  public Settings {
    limitSet = Text.clean(limitSet);
    equipment = List.copyOf(equipment);
    if (limitSet.isEmpty() || Text.length(limitSet) > 100) {
      throw new Refusal("The set of limits needs a name of 1 to 100 characters.");
    }
    if (!(totalConversion >= 1 && totalConversion <= 10)) {
      throw new Refusal(
          "The conversion from inhalable to total dust must lie between 1 and 10: got "
              + totalConversion
              + ".");
    }
    if (gapMinutes < 0 || gapMinutes > DAY) {
      throw new Refusal(
          "The gap that counts as spent in the room must lie between 0 and 1440 minutes: got "
              + gapMinutes
              + ".");
    }
  }

  /** All else as shipped: in metric units, with no equipment named. */
  public Settings(
      String person, String place, String limitSet, double totalConversion, int gapMinutes) {
    this(
        person,
        place,
        limitSet,
        totalConversion,
        gapMinutes,
        Units.METRIC,
        List.of(),
        VapourLimits.STRICTER,
        OwnFigures.SHIPPED);
  }

  /** The same with another person as the book's own. */
  public Settings withPerson(String other) {
    return new Settings(
        other,
        place,
        limitSet,
        totalConversion,
        gapMinutes,
        units,
        equipment,
        vapourLimits,
        figures);
  }

  /** The same with another default place. */
  public Settings withPlace(String other) {
    return new Settings(
        person,
        other,
        limitSet,
        totalConversion,
        gapMinutes,
        units,
        equipment,
        vapourLimits,
        figures);
  }

  /** The same with another set of limits. */
  public Settings withLimitSet(String other) {
    return new Settings(
        person, place, other, totalConversion, gapMinutes, units, equipment, vapourLimits, figures);
  }

  /** The same with another conversion from inhalable to total dust. */
  public Settings withTotalConversion(double other) {
    return new Settings(
        person, place, limitSet, other, gapMinutes, units, equipment, vapourLimits, figures);
  }

  /** The same with another longest gap, in minutes. */
  public Settings withGapMinutes(int other) {
    return new Settings(
        person, place, limitSet, totalConversion, other, units, equipment, vapourLimits, figures);
  }

  /** The same with other units. */
  public Settings withUnits(Units other) {
    return new Settings(
        person,
        place,
        limitSet,
        totalConversion,
        gapMinutes,
        other,
        equipment,
        vapourLimits,
        figures);
  }

  /** The same with other equipment. */
  public Settings withEquipment(List<String> other) {
    return new Settings(
        person, place, limitSet, totalConversion, gapMinutes, units, other, vapourLimits, figures);
  }

  /** The same with the vapours held against somebody else's figures. */
  public Settings withVapourLimits(VapourLimits other) {
    return new Settings(
        person, place, limitSet, totalConversion, gapMinutes, units, equipment, other, figures);
  }

  /** The same with other figures. */
  public Settings withFigures(OwnFigures other) {
    return new Settings(
        person,
        place,
        limitSet,
        totalConversion,
        gapMinutes,
        units,
        equipment,
        vapourLimits,
        other);
  }
}
