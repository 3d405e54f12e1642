/**
 * Why an agenda is as it is, why an exercise is not in it, and why nothing fits: each answer is
 * worked out with the composer's own means, by changing the brief and looking what becomes of it.
 * The way in is {@link org.arcwright.compose.explain.Explainer}.
 */
@NullMarked
package org.arcwright.compose.explain;

import org.jspecify.annotations.NullMarked;
