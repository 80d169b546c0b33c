/**
 * One class for each question a person asks: the day, the week. Here sessions, tables and science
 * meet; answers are plain records that the rooms above print or draw. {@code Ledger} puts the
 * questions to an open book, the rest is pure.
 */
package motebook.desk;
