/**
 * What came of a workshop: when things really happened, what was decided and how, what is left
 * open, who does what. Immutable values, checked in their constructors; a report is drawn from
 * them, and a day's progress log is a beginning of one.
 */
@NullMarked
package org.arcwright.record;

import org.jspecify.annotations.NullMarked;
