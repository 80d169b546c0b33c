package motebook.journal;

/** The book's numbers for who worked and where. */
record Who(long person, long place) {}
