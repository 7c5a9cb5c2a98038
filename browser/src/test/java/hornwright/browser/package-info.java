/**
 * The program as a person meets it: real Chromium, real server, real database file. Main types: {@code Program},
 * which starts the program as its own process, and {@code Browser}. Nothing here reaches inside the program.
 */
@NullMarked
package hornwright.browser;

import org.jspecify.annotations.NullMarked;
