package motebook.journal;

import motebook.model.Gear;

/** The tables of masks, filters and fit. */
record GearTables(Respirators respirators, ShopFilters filters, FitRows fits) {

  static GearTables of(Store store) {
    return new GearTables(new Respirators(store), new ShopFilters(store), new FitRows(store));
  }

  /** All that they hold. */
  Gear read() {
    return new Gear(
        respirators.all(), respirators.elements(), filters.all(), filters.upkeep(), fits.all());
  }

  GearNames names() {
    return new GearNames(read());
  }
}
