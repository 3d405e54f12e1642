/**
 * The composition problem as nothing but integers, sets and lists: what a reduction makes of a
 * brief and a catalog, what a search solves and what a checker reads. No trade word lives here.
 */
@NullMarked
package org.arcwright.compose.instance;

import org.jspecify.annotations.NullMarked;
