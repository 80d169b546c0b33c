/**
 * The shipped tables, read once: operations, materials, controls, limits, cautions. Each row has
 * its source and a grade that says how sure it is (A measured by several, B measured once, C
 * back-calculated, D judgement). A wrong table stops the build in a test that names row and column.
 */
package motebook.reference;
