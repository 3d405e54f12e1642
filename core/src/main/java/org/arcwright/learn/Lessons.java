package org.arcwright.learn;

import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/**
 * All that some logs teach.
 *
 * @param logs how many there were
 * @param simulated how many of them tell of days that never took place; what those teach is how
 *     well learning works, not how long exercises take
 * @param score how well they predict each other; nothing if there were fewer than two
 * @param lessons one for each exercise of the catalog that is in a log, by id
 */
public record Lessons(int logs, int simulated, Optional<Score> score, List<Lesson> lessons) {
  /** Copies the list; refuses more simulated logs than logs. */
  public Lessons {
    Checks.range("logs", logs, 0, Integer.MAX_VALUE);
    Checks.range("simulated", simulated, 0, Integer.MAX_VALUE);
    if (simulated > logs) {
      throw new InvalidValueException("simulated", simulated, "at most " + logs + ", all logs");
    }
    lessons = List.copyOf(lessons);
  }

  /** Whether what was learnt predicts better than the catalog, as far as that is known. */
  public boolean better() {
    return score.filter(Score::better).isPresent();
  }
}
