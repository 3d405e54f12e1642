package org.arcwright.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.format.CatalogFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The catalog as it is shipped, against the files that people edit. */
class BuiltInTest {
  private static final Catalog SHIPPED = BuiltIn.catalog();

  @Test
  void what_is_shipped_is_what_the_files_say() {
    Catalog files = CatalogFormat.readDirectory(CatalogFiles.FOLDER);

    assertThat(SHIPPED.exercises()).isEqualTo(files.exercises());
    assertThat(SHIPPED.goals()).isEqualTo(files.goals());
    assertThat(SHIPPED.products()).isEqualTo(files.products());
    assertThat(SHIPPED.tools()).isEqualTo(files.tools());
  }

  @Test
  void it_is_read_once() {
    assertThat(BuiltIn.catalog()).isSameAs(SHIPPED);
  }

  @Test
  void there_is_a_choice_of_every_kind() {
    Map<Kind, Long> count =
        SHIPPED.exercises().values().stream()
            .collect(Collectors.groupingBy(Exercise::kind, Collectors.counting()));

    assertThat(count.keySet()).containsExactlyInAnyOrder(Kind.values());
    assertThat(count.values()).allMatch(exercises -> exercises >= 25);
    assertThat(SHIPPED.exercises()).hasSizeGreaterThanOrEqualTo(160);
    assertThat(SHIPPED.goals()).hasSize(14);
  }

  @Test
  void every_work_product_is_left_behind_by_an_exercise() {
    assertThat(SHIPPED.products().keySet())
        .allMatch(
            product ->
                SHIPPED.exercises().values().stream()
                    .anyMatch(exercise -> exercise.yields().contains(product)));
  }

  @ParameterizedTest
  @MethodSource("exercises")
  void an_exercise_is_written_back_to_the_same(Path file) {
    Exercise exercise = CatalogFormat.readExercise(file);

    assertThat(CatalogFormat.readExercise("again.yaml", CatalogFormat.write(exercise)))
        .isEqualTo(exercise);
    assertThat(file.getParent().getFileName()).hasToString(exercise.kind().word());
  }

  @ParameterizedTest
  @MethodSource("goals")
  void a_goal_is_written_back_to_the_same(Path file) {
    Goal goal = CatalogFormat.readGoal(file);

    assertThat(CatalogFormat.readGoal("again.yaml", CatalogFormat.write(goal))).isEqualTo(goal);
  }

  @Test
  void words_are_written_back_to_the_same() {
    assertThat(CatalogFormat.readProducts(CatalogFiles.FOLDER.resolve("products.yaml")))
        .containsExactlyInAnyOrderElementsOf(SHIPPED.products().values());
    assertThat(CatalogFormat.readTools(CatalogFiles.FOLDER.resolve("tools.yaml")))
        .containsExactlyInAnyOrderElementsOf(SHIPPED.tools().values());
  }

  static List<Path> exercises() {
    return CatalogFiles.exercises();
  }

  static List<Path> goals() {
    return CatalogFiles.goals();
  }
}
