/**
 * Tables as a spreadsheet writes them: commas, semicolons or tabs between, quotes around, a mark at the beginning.
 *
 * <p>Main type: {@link hornwright.desk.csv.CsvTable}. It knows nothing of what a cell means. Read first: RFC 4180.
 */
@NullMarked
package hornwright.desk.csv;

import org.jspecify.annotations.NullMarked;
