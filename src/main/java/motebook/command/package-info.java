/**
 * The command line. Answers go to standard output, messages to standard error; exit codes are 0
 * done, 1 failed, 2 not understood, 3 something is due, 4 trouble with the book. No stack trace is
 * shown.
 */
package motebook.command;
