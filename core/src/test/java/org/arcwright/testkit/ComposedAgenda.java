package org.arcwright.testkit;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.compose.Composition.Composed;

/** An agenda, proven best, and what is expected of it. Each expectation may be followed by more. */
public final class ComposedAgenda {
  private final Brief brief;
  private final Composed answer;

  ComposedAgenda(Brief brief, Composed answer) {
    this.brief = brief;
    this.answer = answer;
  }

  /** The agenda itself. */
  public Agenda agenda() {
    return answer.agenda();
  }

  /**
   * The exercise of that id must be in it.
   *
   * @throws AssertionError if it is not
   */
  public ComposedAgenda uses(String exercise) {
    return has("the exercise " + exercise, activity -> activity.exercise().equals(exercise));
  }

  /**
   * Something of that description must be in it.
   *
   * @param what in words, for the message
   * @throws AssertionError if it is not
   */
  public ComposedAgenda has(String what, Predicate<Activity> description) {
    if (agenda().activities().stream().noneMatch(description)) {
      throw failure(what + " is missing");
    }
    return this;
  }

  /**
   * Nothing of that description may be in it.
   *
   * @param what in words, for the message
   * @throws AssertionError if it is
   */
  public ComposedAgenda never(String what, Predicate<Activity> description) {
    for (Activity activity : agenda().activities()) {
      if (description.test(activity)) {
        throw failure(what + " is in it, at " + activity.start().toMinutes() + " min");
      }
    }
    return this;
  }

  /**
   * Never two of that description in a row without a break between.
   *
   * @param what in words, for the message
   * @throws AssertionError if there are
   */
  public ComposedAgenda neverInARow(String what, Predicate<Activity> description) {
    return neverInARow(what, description, false);
  }

  /**
   * Never two of that description in a row, not even with a break between.
   *
   * @param what in words, for the message
   * @throws AssertionError if there are
   */
  public ComposedAgenda neverInARowEvenAcrossBreaks(String what, Predicate<Activity> description) {
    return neverInARow(what, description, true);
  }

  private ComposedAgenda neverInARow(
      String what, Predicate<Activity> description, boolean acrossBreaks) {
    boolean before = false;
    for (AgendaItem item : agenda().items()) {
      if (item instanceof Activity activity) {
        boolean now = description.test(activity);
        if (before && now) {
          throw failure("two " + what + " in a row, at " + activity.start().toMinutes() + " min");
        }
        before = now;
      } else {
        before &= acrossBreaks;
      }
    }
    return this;
  }

  /**
   * The proof must take no more search steps than that: the same on every machine, unlike a time.
   *
   * @throws AssertionError if it took more
   */
  public ComposedAgenda provenWithin(long labels) {
    if (answer.proof().labels() > labels) {
      throw failure("the proof took " + answer.proof().labels() + " labels, over " + labels);
    }
    return this;
  }

  private AssertionError failure(String text) {
    return Outcome.failure(brief, text + ". The agenda: " + list(agenda()));
  }

  static String list(Agenda agenda) {
    List<AgendaItem> items = agenda.items();
    return items.stream().map(ComposedAgenda::shown).collect(Collectors.joining(", "));
  }

  private static String shown(AgendaItem item) {
    String what = item instanceof Activity activity ? activity.exercise() : "break";
    return item.start().toMinutes() + " " + what;
  }
}
