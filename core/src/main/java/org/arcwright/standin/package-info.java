/**
 * What takes an exercise's place when a tool or a person fails. A stand-in serves the same people
 * in the same mode, needs nothing that is not there, and leaves all that is needed after it.
 */
@NullMarked
package org.arcwright.standin;

import org.jspecify.annotations.NullMarked;
