package org.arcwright.cli.document;

/**
 * How sure an agenda is to end on time, where a brief was composed for that.
 *
 * @param wanted per cent that were asked for
 * @param onTime the chance to end on time
 * @param buffer per cent of the work that the agenda keeps free at the least
 * @param free minutes that it keeps free in all
 * @param reached whether the chance is enough
 * @param complete whether every smaller buffer was tried, or every one if none is enough
 */
public record Sureness(
    int wanted, double onTime, int buffer, int free, boolean reached, boolean complete) {
  /** All of it in a sentence. */
  public String sentence() {
    return Words.untied("You asked for " + wanted + " % to end on time: " + answer());
  }

  private String answer() {
    String chance = Words.chance(onTime);
    String with = chance + " with " + Words.time(free) + " free at the close";
    String share = " (a buffer of " + buffer + Words.tied(" %)");
    if (!reached) {
      return (complete
              ? "no agenda for this brief reaches that, whatever its buffer"
              : "no agenda was found for that before the time for the search ended")
          + "; the likeliest has "
          + with
          + ". Give the day more time, or be content with less.";
    }
    if (buffer == 0) {
      return "it is "
          + chance
          + " without keeping any buffer, "
          + (free == 0
              ? "for its exercises seldom run over."
              : "for the best agenda ends " + Words.time(free) + " before the time is up anyway.");
    }
    return "it is "
        + with
        + share
        + (complete
            ? ", and no smaller buffer is enough."
            : "; the time for the search ended before every smaller buffer was tried.");
  }
}
