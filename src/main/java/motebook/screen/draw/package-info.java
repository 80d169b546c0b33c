/**
 * From a state to cells, each a character and what it is there for: pure functions. Colours are
 * chosen elsewhere.
 */
package motebook.screen.draw;
