/**
 * The front door: a {@link org.arcwright.compose.Composer} takes a brief and answers with a {@link
 * org.arcwright.compose.Composition}: an agenda with its proof, or why nothing fits, or how far it
 * came within its budget.
 */
@NullMarked
package org.arcwright.compose;

import org.jspecify.annotations.NullMarked;
