package org.arcwright.compose;

import java.time.Duration;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Speaker;
import org.arcwright.catalog.Step;

/**
 * What agendas for one brief can be compared by, beside their cost.
 *
 * @param work minutes of exercises and own items
 * @param breaks how many breaks, meals included
 * @param resting minutes of breaks
 * @param energyFit how near the exercises keep to the curve, in per cent
 * @param formats how many exercises and own items have each format
 * @param talking minutes in which participants speak, to all or in groups; whole minutes, from the
 *     exercises' steps, each stretched or squeezed as the agenda does it. Of own items nothing is
 *     known
 * @param alone minutes in which everybody works alone, counted likewise
 * @param openness the most that any exercise asks for: 0 nothing personal to 3 deeply
 * @param tools ids of the tools that the exercises cannot do without
 */
public record Profile(
    Duration work,
    int breaks,
    Duration resting,
    int energyFit,
    Map<Format, Integer> formats,
    Duration talking,
    Duration alone,
    int openness,
    SortedSet<String> tools) {
  /** Copies map and set. */
  public Profile {
    Map<Format, Integer> copy = new EnumMap<>(Format.class);
    copy.putAll(formats);
    formats = Collections.unmodifiableMap(copy);
    tools = Collections.unmodifiableSortedSet(new TreeSet<>(tools));
  }

  /** The profile of an agenda whose exercises stand in a catalog; others count as own items. */
  public static Profile of(Agenda agenda, Catalog catalog) {
    Duration work = Duration.ZERO;
    Duration resting = Duration.ZERO;
    int breaks = 0;
    Map<Format, Integer> formats = new EnumMap<>(Format.class);
    double talking = 0;
    double alone = 0;
    int openness = 0;
    SortedSet<String> tools = new TreeSet<>();
    for (AgendaItem item : agenda.items()) {
      if (item instanceof Pause) {
        breaks++;
        resting = resting.plus(item.length());
      } else if (item instanceof Activity activity) {
        work = work.plus(activity.length());
        formats.merge(activity.format(), 1, Integer::sum);
        Optional<Exercise> known = catalog.exercise(activity.exercise());
        if (known.isPresent()) {
          Exercise exercise = known.get();
          long minutes = activity.length().toMinutes();
          talking += minutes * share(exercise, agenda.people(), Profile::talks);
          alone += minutes * share(exercise, agenda.people(), Profile::isAlone);
          openness = Math.max(openness, exercise.openness());
          tools.addAll(exercise.in(agenda.mode()).tools());
        }
      }
    }
    return new Profile(
        work,
        breaks,
        resting,
        agenda.figures().energyFit(),
        formats,
        Duration.ofMinutes(Math.round(talking)),
        Duration.ofMinutes(Math.round(alone)),
        openness,
        tools);
  }

  private static boolean talks(Step step) {
    return !isAlone(step)
        && step.speaker() != Speaker.NOBODY
        && step.speaker() != Speaker.FACILITATOR;
  }

  private static boolean isAlone(Step step) {
    return step.format() == Format.SOLO;
  }

  /** The part of an exercise's typical time that goes to such steps. */
  private static double share(Exercise exercise, int people, Predicate<Step> such) {
    double all = 0;
    double counted = 0;
    for (Step step : exercise.steps()) {
      double seconds =
          (double) step.minutes().typical().toSeconds() * step.times(people, exercise.breakout());
      all += seconds;
      counted += such.test(step) ? seconds : 0;
    }
    return all == 0 ? 0 : counted / all;
  }
}
