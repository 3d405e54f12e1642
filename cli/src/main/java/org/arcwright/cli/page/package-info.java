/** Pages: what stands on them, and how that becomes HTML or Markdown. */
@NullMarked
package org.arcwright.cli.page;

import org.jspecify.annotations.NullMarked;
