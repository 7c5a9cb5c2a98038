/** Tests of archive files. */
@NullMarked
package hornwright.desk.archivefile;

import org.jspecify.annotations.NullMarked;
