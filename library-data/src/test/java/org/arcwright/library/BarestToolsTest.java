package org.arcwright.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Set;
import java.util.stream.Stream;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every goal can be reached with nothing but a call, and in a room with nothing but paper. */
class BarestToolsTest {
  private static final Composer COMPOSER = Composer.of(BuiltIn.catalog());

  private static Stream<String> goals() {
    return BuiltIn.catalog().goals().keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("goals")
  void remote_with_a_call_alone(String goal) {
    assertThat(composed(goal, Mode.REMOTE, "call")).isInstanceOf(Composed.class);
  }

  @ParameterizedTest
  @MethodSource("goals")
  void in_person_with_paper_alone(String goal) {
    assertThat(composed(goal, Mode.IN_PERSON, "paper")).isInstanceOf(Composed.class);
  }

  private static Composition composed(String goal, Mode mode, String tool) {
    Brief brief =
        Brief.builder("Bare tools", goal, mode, 6, Duration.ofHours(3)).tools(Set.of(tool)).build();
    return COMPOSER.compose(brief, Budget.USUAL);
  }
}
