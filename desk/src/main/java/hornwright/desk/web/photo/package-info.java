/**
 * Photographs and the parts kept in bags.
 *
 * <p>Main type: {@link hornwright.desk.web.photo.PhotoPages}. Pictures are turned and cut down by the darkroom. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.photo;

import org.jspecify.annotations.NullMarked;
