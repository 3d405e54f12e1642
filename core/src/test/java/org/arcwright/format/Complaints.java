package org.arcwright.format;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** What a reader complains about, as a person sees it. */
final class Complaints {
  private Complaints() {}

  static List<String> of(ThrowingCallable reading) {
    FormatException refused = catchThrowableOfType(FormatException.class, reading);
    return refused == null ? List.of() : refused.problems().stream().map(Problem::text).toList();
  }
}
