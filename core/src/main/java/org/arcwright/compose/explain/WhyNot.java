package org.arcwright.compose.explain;

import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.LeftOut;

/** Why an exercise is not in an agenda. */
public sealed interface WhyNot {
  /**
   * It is in.
   *
   * @param activity where
   */
  record IsIn(Activity activity) implements WhyNot {}

  /**
   * The brief rules it out.
   *
   * @param leftOut by what in the brief, and the reason
   * @param clash what of the brief clashes with having it in, and the ways out
   */
  record RuledOut(LeftOut leftOut, Clash clash) implements WhyNot {}

  /**
   * It could be in.
   *
   * @param with the best agenda that has it
   */
  record Possible(Composed with) implements WhyNot {}

  /**
   * The brief allows it, but nothing fits with it in.
   *
   * @param clash what clashes then, and the ways out
   */
  record Impossible(Clash clash) implements WhyNot {}

  /** The budget ended before that was known. */
  record Unknown() implements WhyNot {}
}
