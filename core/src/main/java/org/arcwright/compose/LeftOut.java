package org.arcwright.compose;

/**
 * An exercise that the brief does not allow, and why.
 *
 * @param exercise its id
 * @param reason in words, such as "needs breakout rooms"
 */
public record LeftOut(String exercise, String reason) {}
