/** From state to cells: pure; a cell has a character and a role, never a colour. */
package motebook.screen.draw;
