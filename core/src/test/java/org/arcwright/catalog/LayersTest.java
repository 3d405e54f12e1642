package org.arcwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.Set;
import org.arcwright.catalog.Layers.Origin;
import org.junit.jupiter.api.Test;

/** A catalog built up from layers. */
class LayersTest {
  private static final Product ARRIVAL = new Product("arrival", "arrival", "All have arrived.");
  private static final Exercise OLD = CatalogSamples.exercise("round", Set.of("arrival"));
  private static final Exercise NEW = CatalogSamples.exercise("round", Set.of("arrival", "mood"));
  private static final Exercise OTHER = CatalogSamples.exercise("walk", Set.of("arrival"));
  private static final Layers LOWEST =
      Layers.of("shelf", Catalog.of(List.of(ARRIVAL), List.of(), List.of(OLD, OTHER), List.of()));

  @Test
  void new_ids_add_same_ids_replace_and_words_add_too() {
    Layers layers =
        LOWEST.with(
            layer(
                "firm",
                List.of(new Product("mood", "mood", "All know how all are.")),
                List.of(NEW, CatalogSamples.exercise("song", Set.of("mood"))),
                Set.of()));

    assertThat(layers.catalog().exercises().keySet()).containsExactly("round", "song", "walk");
    assertThat(layers.catalog().exercise("round")).contains(NEW);
    assertThat(layers.catalog().products().keySet()).containsExactly("arrival", "mood");
    assertThat(layers.ofExercise("round")).contains(new Origin("firm", false, List.of("shelf")));
    assertThat(layers.ofExercise("song")).contains(new Origin("firm", false, List.of()));
    assertThat(layers.ofExercise("walk")).contains(new Origin("shelf", false, List.of()));
    assertThat(layers.ofExercise("dance")).isEmpty();
  }

  @Test
  void what_is_retired_is_out_until_a_layer_above_brings_it_back() {
    Layers without = LOWEST.with(layer("firm", List.of(), List.of(), Set.of("round")));
    Layers back = without.with(layer("team", List.of(), List.of(OLD), Set.of()));

    assertThat(without.catalog().exercise("round")).isEmpty();
    assertThat(without.ofExercise("round")).contains(new Origin("firm", true, List.of("shelf")));
    assertThat(back.catalog().exercise("round")).contains(OLD);
    assertThat(back.ofExercise("round")).contains(new Origin("team", false, List.of("shelf")));
    assertThat(back.all()).extracting(Layer::name).containsExactly("shelf", "firm", "team");
  }

  @Test
  void a_layer_may_not_use_words_that_nobody_names() {
    Layer layer = layer("firm", List.of(), List.of(NEW), Set.of());

    assertThatExceptionOfType(InvalidValueException.class)
        .isThrownBy(() -> LOWEST.with(layer))
        .withMessageContaining("mood");
  }

  private static Layer layer(
      String name, List<Product> products, List<Exercise> exercises, Set<String> retired) {
    return new Layer(name, products, List.of(), exercises, List.of(), retired, Set.of());
  }
}
