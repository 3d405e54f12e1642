/**
 * An independent reading of the rules against any list of items, sharing no code with the search:
 * it serves those who write agendas by hand, and it is every test's oracle.
 */
@NullMarked
package org.arcwright.compose.check;

import org.jspecify.annotations.NullMarked;
