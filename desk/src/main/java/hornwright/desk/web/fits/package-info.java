/**
 * What fits what, and what would do instead of a part that is missing.
 *
 * <p>Main type: {@link hornwright.desk.web.fits.FitPages}. Nothing is ordered here. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.fits;

import org.jspecify.annotations.NullMarked;
