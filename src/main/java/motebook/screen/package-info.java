/**
 * The text-mode screens: {@link motebook.screen.Screen} opens them, a loop takes messages, a worker
 * reads and writes the book, and the terminal is left as it was, however they end.
 */
package motebook.screen;
