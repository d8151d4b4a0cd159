package org.ellwand.measurement;

import java.util.List;

/** What takes the rows of a sheet, in their order. */
interface SheetUser {
    /** The header; false where the rows are of no use with it (the reason has been reported). */
    boolean header(List<SheetColumn> columns, int line, SheetNumbers numbers);

    /** A row with as many cells as the header; it is only good until the next one. */
    void row(SheetRow row);

    /** After the last row; not where the sheet cannot be read to its end. The row tells of all that were read. */
    default void end(SheetRow row) {}
}
