/** The catalog that comes with Arcwright. */
@NullMarked
package org.arcwright.library;

import org.jspecify.annotations.NullMarked;
