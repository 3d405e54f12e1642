package org.arcwright.brief;

import java.time.Duration;
import java.util.List;
import org.arcwright.brief.Group.Acquaintance;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Mode;

/** What applies when a brief is silent, each figure with what it rests on. */
public final class Defaults {
  /** Some people know some: the usual client group. Common practice, no source. */
  public static final Acquaintance ACQUAINTANCE = Acquaintance.MIXED;

  /** Energy of an own item: people mostly listen. Common practice, no source. */
  public static final int OWN_ITEM_ENERGY = 2;

  /** Format of an own item: a talk, a demo, a welcome. Common practice, no source. */
  public static final Format OWN_ITEM_FORMAT = Format.PLENARY;

  /**
   * Remote and hybrid: a break every 50 to 60 minutes, 10 minutes long. HSE L26: short breaks of 5
   * to 10 minutes after 50 to 60 minutes of screen work are better than longer ones less often;
   * AUVA (Austria): after 50 minutes at a screen at least 10 minutes.
   */
  private static final Rhythm AT_SCREENS = rhythm(30, 60, 10);

  /**
   * In person: a break about every 90 minutes (KACEE, "Building your agenda"); 15 minutes long as
   * in the Carpentries' instructor training agenda.
   */
  private static final Rhythm IN_A_ROOM = rhythm(45, 90, 15);

  private Defaults() {}

  /** Stretches and breaks usual for the mode. */
  public static Rhythm rhythm(Mode mode) {
    return mode == Mode.IN_PERSON ? IN_A_ROOM : AT_SCREENS;
  }

  /**
   * Closing buffer: 10 % in person, 15 % where anybody sits at a screen, for remote discussions
   * take longer. Common practice, no source.
   */
  public static int bufferPercent(Mode mode) {
    return mode == Mode.IN_PERSON ? 10 : 15;
  }

  /**
   * How personal an exercise may get: strangers 1, mixed 1, colleagues 2. Common practice, no
   * source.
   */
  public static int openness(Acquaintance acquaintance) {
    return acquaintance == Acquaintance.COLLEAGUES ? 2 : 1;
  }

  /**
   * An arch; with a meal two arches, for energy dips after a meal and wants a livelier exercise
   * then. KACEE, "Building your agenda": a moderate-energy activity after lunch.
   */
  public static EnergyCurve curve(List<Meal> meals) {
    return (meals.isEmpty() ? EnergyCurve.Shape.ARCH : EnergyCurve.Shape.TWO_ARCHES).curve();
  }

  private static Rhythm rhythm(int shortest, int longest, int pause) {
    return new Rhythm(
        Duration.ofMinutes(shortest), Duration.ofMinutes(longest), Duration.ofMinutes(pause));
  }
}
