/**
 * Keeps the edits: one table that only grows, chained by hashes, in SQLite or PostgreSQL by the same SQL; beside it the
 * people and the photos and sounds.
 *
 * <p>Main type: {@link hornwright.desk.journal.Journal}. It does not know what edits add up to, and decides nothing
 * about them. Read first: docs/decisions/journal-of-edits.md.
 */
@NullMarked
package hornwright.desk.journal;

import org.jspecify.annotations.NullMarked;
