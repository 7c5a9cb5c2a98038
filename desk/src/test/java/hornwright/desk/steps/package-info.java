/** The order of work on the shipped horns: it needs their keywork files, which only the desk can read. */
@org.jspecify.annotations.NullMarked
package hornwright.desk.steps;
