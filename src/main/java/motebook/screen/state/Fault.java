package motebook.screen.state;

/**
 * What is wrong with a line.
 *
 * @param sentence what was wrong and what would be right
 * @param from index of the first character at fault, or −1 where the whole line is meant
 * @param to index after the last character at fault
 */
public record Fault(String sentence, int from, int to) {}
