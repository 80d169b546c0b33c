package motebook.journal;

import java.util.HashMap;
import java.util.Map;

/** The statements of one transaction that writes many rows, each made ready once. */
final class Batches implements AutoCloseable {
  private final Store store;
  private final Map<String, Batch> ready = new HashMap<>();

  Batches(Store store) {
    this.store = store;
  }

  Batch of(String query) {
    return ready.computeIfAbsent(query, store::batch);
  }

  @Override
  public void close() {
    ready.values().forEach(Batch::close);
  }
}
