package org.arcwright.cli;

/** Exit codes; they are part of what scripts may rely on. */
public final class Exit {
  /** Done. */
  public static final int DONE = 0;

  /** An answer, but not the one hoped for: nothing fits, or there are findings. */
  public static final int NEGATIVE = 1;

  /** Wrong input or wrong usage. */
  public static final int WRONG_INPUT = 2;

  /** Our fault. */
  public static final int OUR_FAULT = 3;

  private Exit() {}
}
