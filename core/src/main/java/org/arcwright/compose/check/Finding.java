package org.arcwright.compose.check;

/** A rule of the composition problem that a list of items breaks. */
public interface Finding {
  /** The rule's number in the problem statement, 1 to 7. */
  int rule();

  /** What is wrong, where and with which value, as one sentence. */
  String text();
}
