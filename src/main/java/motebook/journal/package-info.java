/**
 * The book: one SQLite file with its migrations, transactions, record of every change, undo, copies
 * and check. The only room that knows SQL, whose text lives under {@code sql/}. Every write is one
 * immediate transaction that is on the disk when the method returns; the tables themselves refuse a
 * write outside a change on record.
 */
package motebook.journal;
