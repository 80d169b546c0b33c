/** The same screens without a screen: lines in, lines out. */
package motebook.screen.plain;
