package motebook.screen.state;

import java.time.LocalDateTime;
import motebook.report.Invocation;

/**
 * What is drawn on, and when.
 *
 * @param size of the terminal
 * @param look the characters that it can show
 * @param now local time
 * @param invocation how a shell calls the program for this book
 */
public record Surface(Size size, Look look, LocalDateTime now, Invocation invocation) {}
