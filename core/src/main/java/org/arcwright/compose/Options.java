package org.arcwright.compose;

import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.search.OptionList.End;
import org.arcwright.compose.search.OptionRule;

/** A composer's answer to somebody who wants to choose. */
public sealed interface Options {
  /** What was asked for. */
  OptionRule rule();

  /**
   * Agendas to choose from.
   *
   * @param rule what was asked for
   * @param options the best first, each the best among those that share little enough with every
   *     one before it; the last may be unproven if the search was stopped
   * @param end why there are no more
   * @param beyond the cost of one more that is worse than was asked for, if it is known
   */
  record Found(OptionRule rule, List<Option> options, End end, Optional<Proof> beyond)
      implements Options {
    /** Copies the list. */
    public Found {
      options = List.copyOf(options);
      if (options.isEmpty()) {
        throw new InvalidValueException("options", "empty", "without any, say why");
      }
    }

    /** The best agenda. */
    public Composed best() {
      return options.get(0).composed();
    }
  }

  /**
   * There is not even one agenda.
   *
   * @param rule what was asked for
   * @param why that nothing fits, or that the budget ended
   */
  record NotOne(OptionRule rule, Composition why) implements Options {}

  /**
   * One agenda.
   *
   * @param composed it; its proof says whether none that shares little enough with the earlier
   *     options costs less
   * @param profile what it can be compared by
   */
  record Option(Composed composed, Profile profile) {}
}
