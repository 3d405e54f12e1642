package org.arcwright.compose.reduce;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;

/** Many made-up exercises for the goal of {@link Sample}: the same number, the same exercises. */
public final class Crowd {
  private static final List<Kind> KINDS = List.of(Kind.values());
  private static final List<Format> FORMATS = List.of(Format.values());
  private static final List<String> YIELDS =
      List.of("arrival", "idea-pool", "shortlist", "decision", "takeaways");
  private static final List<String> NEEDS = List.of("", "", "idea-pool", "shortlist", "");
  private static final long SEED = 4711;

  private Crowd() {}

  /** So many exercises, a fifth for each phase, each with an id such as {@code decision-23}. */
  public static List<Exercise> exercises(int number) {
    SplittableRandom random = new SplittableRandom(SEED);
    List<Exercise> exercises = new ArrayList<>(number);
    for (int i = 0; i < number; i++) {
      exercises.add(exercise(i, random));
    }
    return exercises;
  }

  private static Exercise exercise(int number, SplittableRandom random) {
    int phase = number % YIELDS.size();
    Kind kind = KINDS.get(phase);
    int least = random.nextInt(5, 25);
    int usual = least + random.nextInt(0, 12);
    Format format = FORMATS.get(random.nextInt(FORMATS.size()));
    SampleExercise exercise =
        SampleExercise.of(
                kind.word() + "-" + number,
                kind,
                least,
                usual,
                usual + random.nextInt(0, 15),
                YIELDS.get(phase))
            .energy(random.nextInt(1, 6));
    if (format == Format.SMALL_GROUPS) {
      exercise.groups(3, 5);
    } else {
      exercise.format(format);
    }
    return NEEDS.get(phase).isEmpty() ? exercise.build() : exercise.needs(NEEDS.get(phase)).build();
  }
}
