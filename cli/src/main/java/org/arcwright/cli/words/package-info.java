/** What documents say, in the reader's language: sentences, numbers, dates and times of day. */
@NullMarked
package org.arcwright.cli.words;

import org.jspecify.annotations.NullMarked;
