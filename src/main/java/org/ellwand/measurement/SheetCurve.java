package org.ellwand.measurement;

import java.util.Map;

/**
 * One curve of a sheet.
 *
 * @param cells the conditions that its rows or its column give, without the defaults
 * @param line 1-based line where it begins
 * @param numbers by band or order; an empty cell is NaN
 */
record SheetCurve(Map<String, String> cells, int line, SheetReading numbers) {}
