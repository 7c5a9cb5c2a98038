/**
 * Archive files: all that is known of one maker's horns, as JSON that can be written by hand, sent to another bench and
 * compared line by line. {@link hornwright.desk.archivefile.ArchiveFile} reads strictly and writes. It grades nothing and
 * stores nothing. Read first {@link hornwright.bench.archive.Archive}.
 */
@NullMarked
package hornwright.desk.archivefile;

import org.jspecify.annotations.NullMarked;
