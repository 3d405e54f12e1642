/**
 * A test kit for those who keep a catalog or rules of their own. It lies in the test jar of {@code
 * arcwright-core}, needs no test framework, and throws an {@link java.lang.AssertionError} that
 * says which brief, what was expected and what came instead.
 *
 * <pre>{@code
 * TestKit kit = TestKit.of(catalog);
 * kit.brief(halfDay)
 *     .composes()
 *     .uses("our-check-in")
 *     .never("the premortem", activity -> activity.exercise().equals("premortem"))
 *     .neverInARow("silent exercises", activity -> activity.format() == Format.SOLO);
 * kit.brief(tooShort).fitsNothing().saying("the decision");
 * }</pre>
 */
@NullMarked
package org.arcwright.testkit;

import org.jspecify.annotations.NullMarked;
