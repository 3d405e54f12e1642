/** The pictures of an agenda, drawn in SVG. */
@NullMarked
package org.arcwright.cli.picture;

import org.jspecify.annotations.NullMarked;
