package motebook.journal;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import motebook.model.Amount;
import motebook.model.Session;
import motebook.model.Work;

/**
 * Sessions that are written together, each table in one go. It lives inside one write transaction:
 * the numbers it gives are those that the book would give.
 */
final class SessionBatch {
  private final Store store;
  private final ZoneId zone;
  private final long first;
  private final List<Session> sessions = new ArrayList<>();
  private final List<Object[]> rows = new ArrayList<>();
  private final List<Object[]> controls = new ArrayList<>();
  private final List<Object[]> amounts = new ArrayList<>();

  SessionBatch(Store store, ZoneId zone) {
    this.store = store;
    this.zone = zone;
    this.first = store.number("session-next");
  }

  int size() {
    return sessions.size();
  }

  /** Takes in work that breaks no rule. */
  void add(Work work, Who who) {
    long id = first + sessions.size();
    sessions.add(new Session(id, who.named(work)));
    List<Object> columns = Sessions.columns(work, who, zone);
    columns.add(0, id);
    rows.add(columns.toArray());
    for (int i = 0; i < work.controls().size(); i++) {
      controls.add(new Object[] {id, i, work.controls().get(i)});
    }
    for (int i = 0; i < work.amounts().size(); i++) {
      Amount amount = work.amounts().get(i);
      amounts.add(new Object[] {id, i, amount.finish(), amount.millilitres()});
    }
  }

  /** Writes all that was taken in, and answers it. */
  List<Session> write() {
    store.runEach("session-insert-numbered", rows);
    store.runEach("control-insert", controls);
    store.runEach("amount-insert", amounts);
    return sessions;
  }
}
