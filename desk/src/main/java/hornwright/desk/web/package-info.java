/**
 * Pages: HTML from compiled templates, answered on this machine's own address only, and working with scripts off.
 *
 * <p>Each part of the job has a room of its own below, with the pages ({@code …Pages} answer a request, {@code …Page} is
 * what a template is given, {@code …Rows} makes that from the job and its plan). What all rooms share is in {@code page} and
 * {@code view}.
 *
 * <p>Main type: {@link hornwright.desk.web.WebServer}. It computes nothing, speaks no SQL and knows no command; every
 * verb is a class of the use cases. Requests are checked by {@link hornwright.desk.web.Guard} before any page sees
 * them. Source for the checks: OWASP Application Security Verification Standard 5.0.0, chapters 3 and 4. Read
 * {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web;

import org.jspecify.annotations.NullMarked;
