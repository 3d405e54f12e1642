package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.arcwright.learn.Lesson;
import org.arcwright.learn.Lessons;
import org.arcwright.learn.Score;
import org.junit.jupiter.api.Test;

class LessonsFormatTest {
  @Property(tries = 100, seed = "635")
  void what_is_written_is_read_as_equal_and_keeps_to_the_schema(@ForAll long seed) {
    Lessons lessons = lessons(new Random(seed));
    String text = LessonsFormat.write(lessons);

    assertThat(LessonsFormat.read("l.json", text)).isEqualTo(lessons);
    assertThat(SchemaFile.complaints(Schema.LESSONS, text)).isEmpty();
  }

  private static Lessons lessons(Random random) {
    int logs = random.nextInt(30);
    List<Lesson> lessons = new ArrayList<>();
    for (int i = 0; i < random.nextInt(5); i++) {
      double factor = 0.2 + 3 * random.nextDouble();
      lessons.add(
          new Lesson(
              "e-" + i,
              random.nextInt(1 + logs),
              1 + random.nextInt(60),
              factor,
              factor * (0.5 + 0.5 * random.nextDouble()),
              factor * (1 + random.nextDouble()),
              Duration.ofSeconds(random.nextInt(6000)),
              Duration.ofSeconds(random.nextInt(6000))));
    }
    Optional<Score> score =
        logs < 2
            ? Optional.empty()
            : Optional.of(
                new Score(random.nextInt(99), 9 * random.nextDouble(), 9 * random.nextDouble()));
    return new Lessons(logs, random.nextInt(1 + logs), score, lessons);
  }

  @Test
  void a_fault_is_told_at_its_place() {
    String text =
        LessonsFormat.write(new Lessons(2, 0, Optional.of(new Score(3, 1.5, 1.25)), List.of()));

    assertThat(
            Complaints.of(
                () ->
                    LessonsFormat.read("l.json", text.replace("\"after\": 1.25", "\"after\": -1"))))
        .anySatisfy(line -> assertThat(line).contains("after, -1: 0 minutes or more are right"));
    assertThat(
            Complaints.of(
                () ->
                    LessonsFormat.read(
                        "l.json", text.replace("\"simulated\": 0", "\"simulated\": 3"))))
        .anySatisfy(line -> assertThat(line).contains("simulated, 3: at most 2, all logs"));
  }
}
