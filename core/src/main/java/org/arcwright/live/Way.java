package org.arcwright.live;

import java.util.List;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.Word;

/**
 * One way to go on with a day.
 *
 * @param kind what it does
 * @param agenda the whole day: what is over at its real times, then what follows
 * @param changes what becomes different from the plan, in the order of time
 * @param lost ids of work products that the plan would have left and this does not
 * @param onTime the chance to be over by the end, 0 to 1, knowing what is over
 * @param cost in points, by which ways are compared; see {@code ReplanPrices}
 * @param best whether it is proven the best of its kind
 */
public record Way(
    Kind kind,
    Agenda agenda,
    List<Change> changes,
    List<String> lost,
    double onTime,
    long cost,
    boolean best) {

  /** What a way does. */
  public enum Kind implements Word {
    /** Everything as planned, only later or earlier. */
    CARRY_ON("carry-on"),
    /** All exercises stay, some of them shorter, or only the breaks are moved. */
    SHORTEN("shorten"),
    /** One exercise gives way to a shorter one. */
    SWAP("swap"),
    /** One exercise does not take place. */
    LEAVE_OUT("leave-out"),
    /** What is left is composed anew. */
    ANEW("anew"),
    /** The goal cannot be met any more: the best part of the way there. */
    PART("part"),
    /** One exercise gets the time that was gained. */
    LINGER("linger"),
    /** One exercise more. */
    ADD("add");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }
}
