/**
 * The exact search: an instance in, a proven cheapest solution out. It knows only the instance; no
 * trade word, no clock, no input or output.
 */
@NullMarked
package org.arcwright.compose.search;

import org.jspecify.annotations.NullMarked;
