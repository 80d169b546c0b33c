package motebook.screen.state;

import java.time.LocalDateTime;

/**
 * What is drawn on, and when.
 *
 * @param size of the terminal
 * @param look the characters that it can show
 * @param now local time
 * @param program how a shell calls the program for this book, such as {@code motebook}
 */
public record Surface(Size size, Look look, LocalDateTime now, String program) {}
