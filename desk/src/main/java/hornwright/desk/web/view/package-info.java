/**
 * What each page shows, as plain records made from a job and its plan. No request, no HTML and no trade rule is known
 * here: only which facts stand where, and how a number is written.
 *
 * <p>Main type: {@link hornwright.desk.web.view.Frame}, which stands round every page. Read {@code
 * docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.view;

import org.jspecify.annotations.NullMarked;
