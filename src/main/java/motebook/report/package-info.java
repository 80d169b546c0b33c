/**
 * Writers: answers as text for a terminal and as JSON. Text shows two significant digits, since an
 * estimate carries no more; JSON is not rounded and its keys keep their meaning.
 */
package motebook.report;
