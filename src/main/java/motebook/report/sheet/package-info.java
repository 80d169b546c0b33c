/**
 * The sheet of a week for the wall: one content, put on paper (PDF) and on a page (HTML). The plots
 * are drawn once with a {@code Pen}; what holds the pen decides whether lines or SVG come out. Only
 * the pens know their formats.
 */
package motebook.report.sheet;
