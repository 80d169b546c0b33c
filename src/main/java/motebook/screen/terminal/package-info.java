/** The one place that touches the terminal and the terminal library. */
package motebook.screen.terminal;
