/**
 * Records for what a shop writes down: people, places, sessions, masks and filters. They check
 * themselves and refuse in plain words; text from outside is made fit to store and draw here and
 * nowhere else. No other room lies below this one.
 */
package motebook.model;
