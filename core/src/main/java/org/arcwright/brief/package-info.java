/**
 * What the sponsor and the facilitator want: a goal, people, hours, tools, rhythm and wishes. Every
 * type is an immutable value, checked in its constructor; {@link org.arcwright.brief.Defaults}
 * holds what applies when a brief is silent, each figure with its source.
 */
@NullMarked
package org.arcwright.brief;

import org.jspecify.annotations.NullMarked;
