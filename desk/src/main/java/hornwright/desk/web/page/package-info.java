/**
 * What every page is made with: the shop and the plans at hand, the frame and its tray, the way back, uploads, units and refusals.
 *
 * <p>Main type: {@link hornwright.desk.web.page.Desk}. No page of its own is here. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.page;

import org.jspecify.annotations.NullMarked;
