/**
 * What the screens know and what follows from each key, tick and answer: pure functions over
 * records. Keys stand in tables from which the row of keys and the help are drawn.
 */
package motebook.screen.state;
