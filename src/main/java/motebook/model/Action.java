package motebook.model;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Something a person can do next, as values. How it is typed, asked about or offered as a form is
 * decided where it is shown.
 */
public sealed interface Action {

  /** Record how the seal check of a session went. */
  record RecordSealCheck(long session) implements Action {}

  /** Enter that another respirator was worn in a session than its record says. */
  record WearInSession(long session, String respirator) implements Action {}

  /** Add a respirator to the book. */
  record AddRespirator(String name, Scheme scheme, String kind, String facepiece)
      implements Action {}

  /**
   * Add an element to a respirator.
   *
   * @param elementClass the listed name of its class
   * @param opened when it was unpacked and put on
   * @param until when the next one took its place, of one that is gone
   */
  record AddElement(
      String name,
      String respirator,
      String elementClass,
      LocalDate opened,
      Optional<LocalDate> until)
      implements Action {}

  /** Unpack a spare and put it on its respirator. */
  record OpenElement(String element) implements Action {}

  /**
   * Put a fresh element in the place of one on a respirator.
   *
   * @param minute of the day; 0 for the whole day
   * @param oneShift whether one shift ends it, so that a fresh one each day is the usual thing
   */
  record ChangeElement(String element, LocalDate on, int minute, boolean oneShift)
      implements Action {}

  /** Throw away a spare. */
  record DiscardSpare(String element) implements Action {}

  /** Record what was done to a filter of the shop. */
  record RecordUpkeep(String filter, Upkeep.What what) implements Action {}

  /**
   * Record a fit test.
   *
   * @param measured whether by an instrument; else by taste or smell
   */
  record RecordFitTest(String respirator, String person, LocalDate on, boolean measured)
      implements Action {}

  /** Record a medical evaluation. */
  record RecordMedical(String person, LocalDate on) implements Action {}

  /** Record training in respirators. */
  record RecordTraining(String person, LocalDate on) implements Action {}

  /**
   * Record that the hair under somebody's seal is gone.
   *
   * @param lastDay the last day it was there; empty where only the person can say
   */
  record EndHair(String person, Optional<LocalDate> lastDay) implements Action {}

  /** Take out a record of fit that is wrong. */
  record RemoveFitRecord(long id) implements Action {}

  /** Add a place under a name that the person gives. */
  record AddPlace() implements Action {}

  /** Add a person under a name that the person gives. */
  record AddPerson() implements Action {}

  /** See what is on record about fit. */
  record SeeFit() implements Action {}

  /** See how masks and filters are added. */
  record SeeGearHelp() implements Action {}

  /** See the copies of the book. */
  record SeeCopies() implements Action {}

  /** Enter the data sheet of a product in the place of a shipped finish. */
  record AddFinish(String finish) implements Action {}

  /** Enter the data sheet of a finish again. */
  record ReplaceFinish(String name) implements Action {}

  /** Give the flow of a machine that cleans or moves a room's air. */
  record GiveFlow(String place, Flow of) implements Action {}

  /** Whose flow. */
  enum Flow {
    AIR_CLEANER,
    WINDOW_FAN
  }
}
