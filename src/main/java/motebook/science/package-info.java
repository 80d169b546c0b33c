/**
 * Pure functions and records of numbers: the two-zone air model, emission, doses and their range,
 * limits for long shifts, protection. Units stand in the names ({@code minutes}, {@code mgPerM3},
 * {@code m3PerMin}); concentrations are mg/m³, times of day are minutes since midnight. Nothing
 * here knows a session, a table or a file; only {@code java.*} and Hipparchus are imported. Each
 * formula names its source, each check value stands in the test beside it.
 */
package motebook.science;
