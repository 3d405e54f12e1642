package org.arcwright.compose;

import java.time.Duration;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.EnergyCurve;
import org.arcwright.catalog.Word;

/** A figure of a brief that can be varied to see what becomes of the best agenda. */
public enum Parameter implements Word {
  /** The time at hand, in minutes. */
  CAP("cap", 15, 40 * 60),
  /** How many people come. */
  PEOPLE("people", 1, 1000),
  /** The closing buffer, in per cent of the exercise minutes. */
  BUFFER("buffer", 0, 100),
  /** How much livelier or calmer than the brief's curve, throughout, in tenths of a level. */
  ENERGY("energy", -EnergyCurve.WIDEST, EnergyCurve.WIDEST);

  private final String word;
  private final int least;
  private final int most;

  Parameter(String word, int least, int most) {
    this.word = word;
    this.least = least;
    this.most = most;
  }

  @Override
  public String word() {
    return word;
  }

  /** The least that it can be. */
  public int least() {
    return least;
  }

  /** The most that it can be. */
  public int most() {
    return most;
  }

  /** What the brief itself says; 0 for the energy. */
  public int of(Brief brief) {
    return switch (this) {
      case CAP -> (int) brief.cap().toMinutes();
      case PEOPLE -> brief.group().count();
      case BUFFER -> brief.bufferPercent();
      case ENERGY -> 0;
    };
  }

  /**
   * The brief with another value.
   *
   * @throws org.arcwright.catalog.InvalidValueException if no such brief can be, as where a wish
   *     starts after a shorter cap
   */
  public Brief set(Brief brief, int value) {
    BriefBuilder other = brief.toBuilder();
    return switch (this) {
      case CAP -> other.cap(Duration.ofMinutes(value)).build();
      case PEOPLE -> other.people(value).build();
      case BUFFER -> other.bufferPercent(value).build();
      case ENERGY -> other.curve(brief.curve().livelier(value)).build();
    };
  }
}
