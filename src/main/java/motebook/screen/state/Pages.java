package motebook.screen.state;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What is shown on each page.
 *
 * @param sheet the day
 * @param week the week
 * @param form the form, if one was opened
 * @param prompt what is typed in answer to a short question
 * @param found the sessions that were found
 * @param favourite index of the favourite that is pointed at
 * @param care masks and filters
 * @param evidence what measurements taught
 * @param words the words that a line understands
 * @param plan what some work would bring
 */
public record Pages(
    Sheet sheet,
    WeekSheet week,
    Optional<Form> form,
    Prompt prompt,
    Found found,
    int favourite,
    CareSheet care,
    EvidenceSheet evidence,
    WordsSheet words,
    PlanSheet plan) {

  static Pages of(LocalDate day) {
    return new Pages(
        Sheet.of(day),
        WeekSheet.of(day),
        Optional.empty(),
        Prompt.NONE,
        Found.NOTHING,
        0,
        CareSheet.OPENING,
        EvidenceSheet.OPENING,
        WordsSheet.OPENING,
        PlanSheet.NOTHING);
  }

  Pages with(Sheet other) {
    return new Pages(other, week, form, prompt, found, favourite, care, evidence, words, plan);
  }

  Pages with(WeekSheet other) {
    return new Pages(sheet, other, form, prompt, found, favourite, care, evidence, words, plan);
  }

  Pages with(Optional<Form> other) {
    return new Pages(sheet, week, other, prompt, found, favourite, care, evidence, words, plan);
  }

  Pages with(Prompt other) {
    return new Pages(sheet, week, form, other, found, favourite, care, evidence, words, plan);
  }

  Pages with(Found other) {
    return new Pages(sheet, week, form, prompt, other, favourite, care, evidence, words, plan);
  }

  Pages with(CareSheet other) {
    return new Pages(sheet, week, form, prompt, found, favourite, other, evidence, words, plan);
  }

  Pages with(EvidenceSheet other) {
    return new Pages(sheet, week, form, prompt, found, favourite, care, other, words, plan);
  }

  Pages with(WordsSheet other) {
    return new Pages(sheet, week, form, prompt, found, favourite, care, evidence, other, plan);
  }

  Pages with(PlanSheet other) {
    return new Pages(sheet, week, form, prompt, found, favourite, care, evidence, words, other);
  }

  /** Points at a favourite; beyond the ends is held at them. */
  Pages pointingAtFavourite(int index) {
    int last = sheet.page().map(page -> page.favourites().size()).orElse(0) - 1;
    int held = Math.max(0, Math.min(index, last));
    return new Pages(sheet, week, form, prompt, found, held, care, evidence, words, plan);
  }
}
