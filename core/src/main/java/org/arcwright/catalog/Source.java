package org.arcwright.catalog;

/** Where an exercise or a figure comes from. */
public sealed interface Source {
  /** Published; {@code citation} says by whom, when and where. */
  record Published(String citation) implements Source {
    /** Refuses a blank citation. */
    public Published {
      citation = Checks.text("cite", citation, 400);
    }
  }

  /** Common practice of the trade, without one source. */
  record CommonPractice() implements Source {}

  /** Cited from memory; the citation was not looked up. */
  record Memory(String citation) implements Source {
    /** Refuses a blank citation. */
    public Memory {
      citation = Checks.text("cite", citation, 400);
    }
  }
}
