package motebook.journal;

import motebook.model.Work;

/** Who worked and where, as the book knows them. */
record Who(Known.Name person, Known.Name place) {

  /** The work with the names as the book has them. */
  Work named(Work work) {
    return new Work(
        person.name(),
        place.name(),
        work.date(),
        work.start(),
        work.minutes(),
        work.operation(),
        work.material(),
        work.controls(),
        work.mask(),
        work.amounts(),
        work.note());
  }
}
