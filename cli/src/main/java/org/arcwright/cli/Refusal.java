package org.arcwright.cli;

/** Input or usage that cannot be acted upon; its message says what, where, and how to mend it. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  Refusal(String message) {
    super(message);
  }

  Refusal(String message, Throwable cause) {
    super(message, cause);
  }
}
