package motebook.journal;

import java.util.List;
import motebook.model.Person;
import motebook.model.Text;

/** Who works in the shop. */
final class People {
  private final Store store;

  People(Store store) {
    this.store = store;
  }

  List<Person> all() {
    return store.list("people", row -> new Person(row.getLong("id"), row.getString("name")));
  }

  Known known() {
    return new Known("person", store.list("people", Known.Name::read));
  }

  Person add(String raw) {
    String name = known().fresh(raw);
    return new Person(store.number("person-insert", name, Text.folded(name)), name);
  }

  Person rename(String old, String raw) {
    Known known = known();
    long id = known.idOf(old);
    String name = known.without(id).fresh(raw);
    store.run("person-rename", id, name, Text.folded(name));
    return new Person(id, name);
  }
}
