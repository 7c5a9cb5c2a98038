/**
 * The program as a person meets it: real Chromium, real server, real database file. Main type: {@code Browser}, which
 * opens a page on a freshly started shop. Nothing here reaches inside the program.
 */
@NullMarked
package hornwright.browser;

import org.jspecify.annotations.NullMarked;
