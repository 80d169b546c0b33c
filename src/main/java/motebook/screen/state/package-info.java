/** What the screens know and how a message changes it: pure, without terminal or book. */
package motebook.screen.state;
