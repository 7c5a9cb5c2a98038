/**
 * What the factory did and how we know: witnesses, evidence, as-built sheets, sharing, and what of this horn to keep.
 *
 * <p>Main type: {@link hornwright.desk.web.archive.ArchivePages}. Grades are given by the bench. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.archive;

import org.jspecify.annotations.NullMarked;
