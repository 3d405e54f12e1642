/**
 * The front door: a {@link org.arcwright.compose.Composer} takes a brief and answers with a {@link
 * org.arcwright.compose.Composition}: an agenda with its proof, or why nothing fits, or how far it
 * came within its budget. This is what a program that embeds it can count on.
 *
 * <dl>
 *   <dt>Threads
 *   <dd>{@code Composer}, {@link org.arcwright.compose.CachingComposer} and {@link
 *       org.arcwright.compose.explain.Explainer} may be shared by any number of threads; briefs,
 *       catalogs and answers are immutable. The work is done on the caller's thread, no other one
 *       is started, and a listener is called on it.
 *   <dt>The same answer
 *   <dd>The same brief and catalog give the same answer on any thread, machine, locale, time zone
 *       and order of the catalog, unless the time, a person or a listener ended the work; labels
 *       end it at the same step everywhere. Only {@link org.arcwright.compose.Proof#time()}
 *       differs.
 *   <dt>Budgets
 *   <dd>A {@link org.arcwright.compose.Budget} of labels and of time holds for all parts of one
 *       call together: the reduction, each search, the explanation. What is known when it ends is
 *       the answer: {@code Composed} with a bound, or {@code Stopped}. An explanation has a budget
 *       of its own and says what it could not find out.
 *   <dt>Cancelling
 *   <dd>A {@link org.arcwright.compose.Cancel} is asked, and the thread's interrupt flag looked at,
 *       in every part of the work; the flag stays up. The answer is then what is there.
 *   <dt>Errors
 *   <dd>That nothing fits is an answer. A brief that names what the catalog does not have, or times
 *       that cannot be planned, is refused with an {@link
 *       org.arcwright.catalog.InvalidValueException} that names field, value and remedy. Nothing
 *       else is thrown but what a listener throws. No null is taken or given.
 *   <dt>Memory
 *   <dd>A {@code Composer} keeps nothing between calls. A {@code CachingComposer} keeps what is
 *       proven, by content and bounded by weight; see there.
 *   <dt>Forms and versions
 *   <dd>Every request and answer has a form in JSON in {@link org.arcwright.format}, with a version
 *       and a schema, and is read back equal. A change that older readers could not read raises the
 *       version; what is added beside it is not. Packages that the module does not export may
 *       change at any time, {@code compose.instance}, {@code compose.search} and {@code
 *       compose.check} follow the statement of the composition problem.
 *   <dt>Silence
 *   <dd>Nothing is logged or printed; no clock is read but the one that is given, and no file but
 *       those that a reader is given.
 * </dl>
 */
@NullMarked
package org.arcwright.compose;

import org.jspecify.annotations.NullMarked;
