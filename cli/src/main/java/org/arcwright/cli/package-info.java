/**
 * The command line: reads files, composes, solves and checks, and writes documents. Results alone
 * go to standard output, messages to standard error; {@link org.arcwright.cli.Exit} lists the exit
 * codes.
 */
@NullMarked
package org.arcwright.cli;

import org.jspecify.annotations.NullMarked;
