/**
 * A composed workshop: what a person reads and what every document is drawn from. Immutable values;
 * times are counted from the start and half-open.
 */
@NullMarked
package org.arcwright.agenda;

import org.jspecify.annotations.NullMarked;
