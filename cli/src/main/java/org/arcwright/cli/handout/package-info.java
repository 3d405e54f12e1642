/**
 * What a facilitator hands out or keeps at hand, each drawn from an agenda, its brief and the
 * catalog.
 */
@NullMarked
package org.arcwright.cli.handout;

import org.jspecify.annotations.NullMarked;
