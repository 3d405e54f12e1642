package org.arcwright.compose.explain;

import java.util.Optional;

/**
 * A wish given up in part or altogether.
 *
 * @param wish what the brief asks for
 * @param instead what it would ask for then; nothing if it does without
 * @param text in a facilitator's words, to follow a number or a dash: "35 min more: 3 h 35 min in
 *     all"
 */
public record Loosening(Wish wish, Optional<Wish> instead, String text) {}
