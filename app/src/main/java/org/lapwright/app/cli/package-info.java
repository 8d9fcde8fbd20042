/**
 * The commands. Each prints for people by default and one JSON document with {@code --json}.
 *
 * <p>Exit status: 0 done, 1 the answer to a yes/no question is no, 2 bad input (what, where, what would be right, on
 * standard error), 3 a fault of the program.
 */
@NullMarked
package org.lapwright.app.cli;

import org.jspecify.annotations.NullMarked;
