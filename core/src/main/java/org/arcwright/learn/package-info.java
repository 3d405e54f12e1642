/**
 * What past days teach: how long exercises really take, from progress logs, as a layer for the
 * catalog. Immutable values, no clock.
 */
@NullMarked
package org.arcwright.learn;

import org.jspecify.annotations.NullMarked;
