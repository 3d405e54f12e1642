/** The built-in exercises and goals. */
module org.arcwright.library {
  requires transitive org.arcwright.core;
  requires static org.jspecify;

  exports org.arcwright.library;
}
