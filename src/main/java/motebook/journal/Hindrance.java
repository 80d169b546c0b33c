package motebook.journal;

/**
 * What keeps one of many works from being logged.
 *
 * @param index which of them, from 0
 * @param ofTime whether its time is taken; else what it names cannot have been there
 * @param sentence what is wrong and what would be right
 */
public record Hindrance(int index, boolean ofTime, String sentence) {}
