/**
 * The typed model, the composer, the arithmetic of votes, and the JSON and YAML forms. What a
 * program that embeds it can count on stands in {@link org.arcwright.compose}.
 */
module org.arcwright.core {
  requires com.github.benmanes.caffeine;
  requires org.snakeyaml.engine;
  requires static org.jspecify;
  requires tools.jackson.core;
  requires tools.jackson.dataformat.yaml;

  exports org.arcwright.agenda;
  exports org.arcwright.brief;
  exports org.arcwright.catalog;
  exports org.arcwright.compose;
  exports org.arcwright.compose.check;
  exports org.arcwright.compose.explain;
  exports org.arcwright.compose.instance;
  exports org.arcwright.compose.search;
  exports org.arcwright.forecast;
  exports org.arcwright.format;
  exports org.arcwright.gaps;
  exports org.arcwright.learn;
  exports org.arcwright.live;
  exports org.arcwright.record;
  exports org.arcwright.shelf;
  exports org.arcwright.standin;
  exports org.arcwright.vote;
}
