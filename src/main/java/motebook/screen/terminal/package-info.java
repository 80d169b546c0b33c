/**
 * The only package that touches the terminal library: draws cells, reads keys, sets the terminal
 * and leaves it as it was.
 */
package motebook.screen.terminal;
