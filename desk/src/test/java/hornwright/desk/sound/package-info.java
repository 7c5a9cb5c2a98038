/** The shipped horns heard by the air engine, and sound files read. */
@NullMarked
package hornwright.desk.sound;

import org.jspecify.annotations.NullMarked;
