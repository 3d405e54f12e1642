package org.arcwright.compose.reduce;

/**
 * One cause for which an exercise costs something with this brief.
 *
 * @param why in words
 * @param points over zero
 */
public record CostPart(String why, int points) {}
