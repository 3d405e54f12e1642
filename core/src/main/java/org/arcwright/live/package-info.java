/**
 * The day itself: what happened so far, and when. Immutable values; whoever runs the day passes the
 * times, for nothing here reads a clock.
 */
@NullMarked
package org.arcwright.live;

import org.jspecify.annotations.NullMarked;
