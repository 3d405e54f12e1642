package org.arcwright.compose.search;

/** Ends a search. It is asked often, in every part of the work. */
@FunctionalInterface
public interface Limit {
  /** Never ends it. */
  Limit NONE = labels -> false;

  /**
   * Whether to stop now.
   *
   * @param labels steps taken so far
   */
  boolean reached(long labels);

  /** Ends it after so many labels. */
  static Limit labels(long most) {
    return labels -> labels >= most;
  }
}
