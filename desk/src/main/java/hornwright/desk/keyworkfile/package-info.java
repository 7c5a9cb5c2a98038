/**
 * Keywork files: the JSON in which a horn is described, read strictly and written back. The main type is
 * {@link hornwright.desk.keyworkfile.KeyworkFile}. It knows no job, no reading and no finding. Read first:
 * docs/guide/keywork-file.md.
 */
@NullMarked
package hornwright.desk.keyworkfile;

import org.jspecify.annotations.NullMarked;
