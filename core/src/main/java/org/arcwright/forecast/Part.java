package org.arcwright.forecast;

import java.time.Duration;
import org.arcwright.catalog.InvalidValueException;

/** What is to be expected of one item of an agenda. Times are counted from the planned start. */
public sealed interface Part {
  /** How long it takes. */
  Band took();

  /** When it begins. */
  Band begins();

  /** When it ends. */
  Band ends();

  /**
   * An exercise or an own item.
   *
   * @param basis what this rests on
   * @param took how long it takes
   * @param begins when it begins
   * @param ends when it ends
   * @param kept what would follow if it took exactly its planned time
   */
  record Work(Basis basis, Band took, Band begins, Band ends, Kept kept) implements Part {}

  /**
   * What would follow if one exercise took exactly its planned time.
   *
   * @param onTime the chance to end on time, 0 to 1
   * @param end when the last item would be over with 80 %
   */
  record Kept(double onTime, Duration end) {
    /** Refuses what is no chance. */
    public Kept {
      Part.chance("onTime", onTime);
    }
  }

  /**
   * A break or a meal.
   *
   * @param onTime the chance that it begins within five minutes of its planned start, 0 to 1
   * @param took how long it takes
   * @param begins when it begins
   * @param ends when it ends
   */
  record Rest(double onTime, Band took, Band begins, Band ends) implements Part {
    /** Refuses what is no chance. */
    public Rest {
      Part.chance("onTime", onTime);
    }
  }

  /** Refuses what is no chance. */
  static void chance(String field, double chance) {
    if (!(chance >= 0 && chance <= 1)) {
      throw new InvalidValueException(field, chance, "a chance from 0 to 1 is right");
    }
  }
}
