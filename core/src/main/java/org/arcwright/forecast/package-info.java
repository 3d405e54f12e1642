/**
 * When a workshop will really end. Each exercise's duration becomes a distribution over whole
 * minutes, and these are added up exactly: nothing is drawn at random. What is assumed about people
 * stands in {@code Habits} alone, each figure with what it rests on.
 */
@NullMarked
package org.arcwright.forecast;

import org.jspecify.annotations.NullMarked;
