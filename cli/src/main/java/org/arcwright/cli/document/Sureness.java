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
    String asked = "You asked for " + wanted + " % to end on time: ";
    String now =
        Words.chance(onTime)
            + " with "
            + Words.time(free)
            + " free at the close (a buffer of "
            + buffer
            + " %)";
    String text;
    if (reached) {
      text =
          asked
              + "it is "
              + now
              + (complete
                  ? ", and no smaller buffer is enough."
                  : "; the time for the search ended before every smaller buffer was tried.");
    } else {
      text =
          asked
              + (complete
                  ? "no agenda for this brief reaches that"
                  : "no agenda was found for that")
              + "; the likeliest has "
              + now
              + ".";
    }
    return Words.untied(text);
  }
}
