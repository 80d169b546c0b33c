/**
 * The spoken line and the session it says, both ways, with what speaks against a session however it
 * was entered. A refusal points at the words at fault.
 */
package motebook.entry;
