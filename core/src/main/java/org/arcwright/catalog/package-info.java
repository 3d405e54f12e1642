/**
 * What can happen in a workshop: exercises with their steps and group sizes, the goals with their
 * arcs, and the words (work products, tools) that link them. Every type is an immutable value,
 * checked in its constructor.
 */
@NullMarked
package org.arcwright.catalog;

import org.jspecify.annotations.NullMarked;
