/**
 * The text-mode screens. {@code State} changes only by messages in {@code update}, {@code view}
 * draws it as cells of characters and roles; reading and writing the book are tasks on a worker
 * thread, whose results come back as messages. The terminal is as it was before, however the
 * program ends.
 */
package motebook.screen;
