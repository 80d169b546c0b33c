package motebook.reference;

/**
 * A warning that a material or an operation raises.
 *
 * @param key stable key
 * @param sentence what is said
 * @param basis source
 */
public record Caution(String key, String sentence, String basis) {}
