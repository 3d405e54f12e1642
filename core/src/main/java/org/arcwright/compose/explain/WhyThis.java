package org.arcwright.compose.explain;

import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.compose.Price;
import org.arcwright.compose.Proof;

/**
 * Why the exercises of an agenda are in, and why where they are.
 *
 * @param agenda it
 * @param reasons one for each exercise and own item, in the agenda's order
 */
public record WhyThis(Agenda agenda, List<Reason> reasons) {
  /** Copies the list. */
  public WhyThis {
    reasons = List.copyOf(reasons);
  }

  /**
   * What speaks for one exercise in its place.
   *
   * @param activity it
   * @param takesOver what it needs
   * @param handsOn what it leaves that another needs, or its phase; what nobody needs is not told
   * @param place where it stands
   * @param instead what would be if it were not in
   */
  public record Reason(
      Activity activity,
      List<TakenOver> takesOver,
      List<HandedOn> handsOn,
      Place place,
      Instead instead) {
    /** Copies the lists. */
    public Reason {
      takesOver = List.copyOf(takesOver);
      handsOn = List.copyOf(handsOn);
    }
  }

  /**
   * A work product that an exercise needs.
   *
   * @param product its id
   * @param from id of the latest exercise that left it; none if it is there beforehand
   */
  public record TakenOver(String product, Optional<String> from) {}

  /**
   * A work product that an exercise leaves.
   *
   * @param product its id
   * @param to ids of later exercises that take it over from this one
   * @param owed whether it is the last that leaves what the phase must leave at its end
   */
  public record HandedOn(String product, List<String> to, boolean owed) {
    /** Copies the list. */
    public HandedOn {
      to = List.copyOf(to);
    }
  }

  /**
   * Where an exercise stands.
   *
   * @param wished energy wished for on average while it lasts, in tenths
   * @param afterBreak whether people come from a break or meal
   * @param beforeBreak whether they go into one
   * @param asked the wish of the brief that puts it here, if one does
   */
  public record Place(int wished, boolean afterBreak, boolean beforeBreak, Optional<Wish> asked) {}

  /** What would be if an exercise were not in. */
  public sealed interface Instead {
    /** The brief asks for it. */
    record Asked() implements Instead {}

    /**
     * Another stands in its place, all others as they are, each as long and in the same order with
     * the same breaks: of all exercises that the brief allows, in each length, the one that makes
     * the cheapest agenda.
     *
     * @param exercise the other's id
     * @param agenda with it; its figures tell what it costs
     * @param prices what the other costs by itself
     */
    record Swap(String exercise, Agenda agenda, List<Price> prices) implements Instead {
      /** Copies the list. */
      public Swap {
        prices = List.copyOf(prices);
      }
    }

    /**
     * No other can stand in its place; the best agenda without it is built anew.
     *
     * @param agenda that agenda
     * @param proof how sure it is that there is none better
     * @param prices what its exercises cost by themselves
     */
    record Anew(Agenda agenda, Proof proof, List<Price> prices) implements Instead {
      /** Copies the list. */
      public Anew {
        prices = List.copyOf(prices);
      }
    }

    /** No agenda for the brief does without it. */
    record Nothing() implements Instead {}

    /** The budget ended before that was known. */
    record Unknown() implements Instead {}
  }
}
