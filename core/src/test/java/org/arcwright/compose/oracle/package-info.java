/**
 * Oracles for the composition problem: instances from a seed, and two ways of solving them that
 * know nothing of the search. Enumeration serves tiny instances, a general solver middling ones.
 */
@NullMarked
package org.arcwright.compose.oracle;

import org.jspecify.annotations.NullMarked;
