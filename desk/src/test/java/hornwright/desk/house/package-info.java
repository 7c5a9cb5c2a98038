/**
 * The rules of the house, held by tests: which package may use which, how long a file may be, what must be documented.
 * Main type: {@code ArchitectureTest}. No behaviour of the program is tested here.
 */
@NullMarked
package hornwright.desk.house;

import org.jspecify.annotations.NullMarked;
