package org.arcwright.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.CatalogSamples;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Product;
import org.arcwright.shelf.Comparison.Aspect;
import org.arcwright.shelf.Similar.Trait;
import org.junit.jupiter.api.Test;

/** What is like what, and why. */
class SimilarTest {
  private static final Exercise WALK = CatalogSamples.exercise("walk", Set.of("ideas", "items"));
  private static final Exercise TWIN = CatalogSamples.exercise("twin", Set.of("ideas", "items"));
  private static final Exercise HALF = CatalogSamples.exercise("half", Set.of("ideas"));
  private static final Exercise OTHER = CatalogSamples.exercise("other", Set.of("risks"));
  private static final Catalog CATALOG =
      Catalog.of(
          List.of(product("ideas"), product("items"), product("risks")),
          List.of(),
          List.of(WALK, TWIN, HALF, OTHER),
          List.of());

  @Test
  void traits_add_up_and_the_nearest_comes_first() {
    List<Similar> found = Similar.to(WALK, CATALOG, (one, other) -> 0.4, 3);

    assertThat(found)
        .containsExactly(
            new Similar(TWIN, 85, shares(30)),
            new Similar(HALF, 70, shares(15)),
            new Similar(
                OTHER,
                55,
                Map.of(
                    Trait.TEXT,
                    10,
                    Trait.KIND,
                    15,
                    Trait.FORMAT,
                    10,
                    Trait.MINUTES,
                    10,
                    Trait.ENERGY,
                    10)));
  }

  @Test
  void the_weights_are_a_hundred_together() {
    assertThat(List.of(Trait.values()).stream().mapToInt(Trait::most).sum()).isEqualTo(100);
  }

  @Test
  void a_comparison_names_what_differs_and_sizes_that_both_serve() {
    Comparison comparison = Comparison.of(WALK, HALF);

    assertThat(comparison.different()).containsExactly(Aspect.YIELDS);
    assertThat(comparison.sizes()).containsExactly(3, 12, 30);
    assertThat(Comparison.of(WALK, WALK).different()).isEmpty();
  }

  private static Map<Trait, Integer> shares(int yields) {
    return Map.of(
        Trait.YIELDS,
        yields,
        Trait.TEXT,
        10,
        Trait.KIND,
        15,
        Trait.FORMAT,
        10,
        Trait.MINUTES,
        10,
        Trait.ENERGY,
        10);
  }

  private static Product product(String id) {
    return new Product(id, id, "For a test.");
  }
}
