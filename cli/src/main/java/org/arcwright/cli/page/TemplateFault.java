package org.arcwright.cli.page;

/** A template cannot be used; the message says which, where and why. */
public final class TemplateFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  TemplateFault(String message, Throwable cause) {
    super(message, cause);
  }
}
