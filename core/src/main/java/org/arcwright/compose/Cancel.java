package org.arcwright.compose;

/** Says whether somebody no longer wants the answer. Asked often, possibly from another thread. */
@FunctionalInterface
public interface Cancel {
  /** Nobody ever cancels. */
  Cancel NEVER = () -> false;

  /** Whether to stop now; once true, it stays so. */
  boolean requested();
}
