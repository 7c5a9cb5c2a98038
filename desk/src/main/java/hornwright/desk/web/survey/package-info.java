/**
 * What is on the horn, painted over many places and before anything is known of it.
 *
 * <p>Main type: {@link hornwright.desk.web.survey.SurveyPages}. It judges nothing. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.survey;

import org.jspecify.annotations.NullMarked;
