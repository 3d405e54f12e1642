/** Small programs that show how to embed the library. */
@NullMarked
package org.arcwright.examples;

import org.jspecify.annotations.NullMarked;
