/** Sound files of every sort, and what the program says to a broken one. */
@org.jspecify.annotations.NullMarked
package hornwright.desk.sound;
