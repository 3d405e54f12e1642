package org.arcwright.cli;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Phase;
import org.arcwright.catalog.Step;
import org.arcwright.catalog.Suitability;

/** All that people read of a catalog, text by text. */
final class CatalogTexts {
  private CatalogTexts() {}

  static Collection<String> of(Catalog catalog) {
    Set<String> texts = new HashSet<>();
    catalog.exercises().values().forEach(exercise -> add(exercise, texts));
    catalog
        .goals()
        .values()
        .forEach(
            goal -> {
              texts.add(goal.title());
              texts.add(goal.purpose());
              texts.addAll(goal.cautions());
              goal.arc().stream().map(Phase::title).forEach(texts::add);
            });
    catalog.products().values().forEach(product -> texts.add(product.title()));
    catalog.tools().values().forEach(tool -> texts.add(tool.title()));
    return texts;
  }

  private static void add(Exercise exercise, Set<String> texts) {
    texts.add(exercise.title());
    texts.add(exercise.purpose());
    texts.add(exercise.opening());
    exercise.steps().stream().map(Step::text).forEach(texts::add);
    for (Suitability suitability : exercise.modes().values()) {
      texts.add(suitability.adaptation());
      texts.addAll(suitability.cautions());
    }
    texts.addAll(exercise.care().cautions());
    exercise.care().optOut().ifPresent(texts::add);
    texts.addAll(exercise.care().access());
    texts.addAll(exercise.notes().materials());
    texts.addAll(exercise.notes().watch());
    texts.addAll(exercise.notes().tips());
    texts.add(exercise.notes().carryOver());
  }
}
