/**
 * Sheets for the wall, the bench and the owner, as PDF. HTML from the templates under {@code paper} goes through one
 * renderer; a warning of the renderer is a failure, because paper cannot be reloaded.
 *
 * <p>Main type: {@link hornwright.desk.paper.Pdf}. It computes nothing: every figure comes from the plan. Read
 * {@code docs/guide/paper.md} first.
 */
@NullMarked
package hornwright.desk.paper;

import org.jspecify.annotations.NullMarked;
