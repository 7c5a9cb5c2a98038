/**
 * All input and output: pages, command line, paper, database, files. {@code Main} alone wires it.
 */
@NullMarked
package hornwright.desk;

import org.jspecify.annotations.NullMarked;
