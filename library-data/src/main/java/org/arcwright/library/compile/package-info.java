/** Compiles the catalog's files to one resource while the project is built. */
@NullMarked
package org.arcwright.library.compile;

import org.jspecify.annotations.NullMarked;
