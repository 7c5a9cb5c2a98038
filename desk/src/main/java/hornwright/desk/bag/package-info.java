/**
 * Folders for other people as one file: a BagIt bag in a zip, every file of it told with its checksum. Reading trusts
 * nothing: names, sizes and sums are checked before anything is handed on, and nothing is ever written to a disk.
 *
 * <p>Main types: {@link hornwright.desk.bag.Bag} and {@link hornwright.desk.bag.BagReader}. They do not know what the
 * files say. Read first: RFC 8493.
 */
@NullMarked
package hornwright.desk.bag;

import org.jspecify.annotations.NullMarked;
