package org.arcwright.compose;

/**
 * Something that an exercise of the agenda costs by itself, wherever it stands.
 *
 * @param exercise its id
 * @param why in words, such as "used last time"
 * @param points over zero
 */
public record Price(String exercise, String why, int points) {}
