package motebook.journal;

import java.time.LocalDate;
import java.util.Optional;
import motebook.model.Surroundings;

/**
 * What the air of a place does from a day on, until the next version.
 *
 * @param from the first day it holds; empty for the beginning
 * @param surroundings the figures
 */
public record PlaceVersion(Optional<LocalDate> from, Surroundings surroundings) {}
