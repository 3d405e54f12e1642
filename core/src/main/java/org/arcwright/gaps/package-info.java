/**
 * Where a shelf is thin: over a grid of briefs the composer itself answers how many different
 * agendas there are, and by trying exercises that nobody has written yet, what would help.
 */
@NullMarked
package org.arcwright.gaps;

import org.jspecify.annotations.NullMarked;
