package org.arcwright.compose;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.Composition.Stopped;

/**
 * How the best agenda changes while one figure of a brief is varied: each value is composed by
 * itself, and where the next one takes other exercises, the agenda flips.
 */
public final class WhatIf {
  private WhatIf() {}

  /**
   * What came of it.
   *
   * @param sweep what was asked
   * @param own what the brief itself says about the parameter
   * @param rows one for each value, in their order
   */
  public record Answer(Sweep sweep, int own, List<Row> rows) {
    /** Copies the list. */
    public Answer {
      rows = List.copyOf(rows);
    }

    /**
     * Where the best agenda takes other exercises than for the value before; values for which there
     * is no agenda are stepped over.
     */
    public List<Flip> flips() {
      List<Flip> flips = new ArrayList<>();
      Optional<Row.Best> before = Optional.empty();
      for (Row row : rows) {
        if (row instanceof Row.Best best) {
          before.map(last -> Flip.between(last, best)).filter(Flip::real).ifPresent(flips::add);
          before = Optional.of(best);
        }
      }
      return flips;
    }
  }

  /** What became of one value. */
  public sealed interface Row {
    /** The value, in the parameter's unit. */
    int value();

    /** Whether a larger budget might tell more. */
    default boolean unsettled() {
      return this instanceof Open || (this instanceof Best best && !best.proof().best());
    }

    /**
     * An agenda.
     *
     * @param value for which
     * @param agenda it
     * @param proof how sure it is
     */
    record Best(int value, Agenda agenda, Proof proof) implements Row {}

    /**
     * No agenda keeps to the brief.
     *
     * @param value for which
     * @param reasons what stands in the way, the plainest first
     */
    record None(int value, List<String> reasons) implements Row {
      /** Copies the list. */
      public None {
        reasons = List.copyOf(reasons);
      }
    }

    /**
     * The budget ended before any agenda was found or ruled out.
     *
     * @param value for which
     * @param bound no agenda costs less than this, if that much is known
     * @param labels search steps taken
     */
    record Open(int value, Optional<Long> bound, long labels) implements Row {}

    /**
     * There is no brief with that value.
     *
     * @param value which
     * @param why not, and what would be right
     */
    record Refused(int value, String why) implements Row {}
  }

  /**
   * The best agenda takes other exercises.
   *
   * @param before the last agenda with the ones
   * @param after the first agenda with the others
   * @param goes exercises of the one alone, in its order
   * @param comes exercises of the other alone, in its order
   */
  public record Flip(Row.Best before, Row.Best after, List<Activity> goes, List<Activity> comes) {
    /** Copies the lists. */
    public Flip {
      goes = List.copyOf(goes);
      comes = List.copyOf(comes);
    }

    static Flip between(Row.Best before, Row.Best after) {
      return new Flip(
          before,
          after,
          onlyIn(before.agenda(), after.agenda()),
          onlyIn(after.agenda(), before.agenda()));
    }

    private static List<Activity> onlyIn(Agenda one, Agenda other) {
      Set<String> others =
          other.activities().stream().map(Activity::exercise).collect(Collectors.toSet());
      return one.activities().stream().filter(a -> !others.contains(a.exercise())).toList();
    }

    private boolean real() {
      return !goes.isEmpty() || !comes.isEmpty();
    }
  }

  /**
   * Composes a brief once for each value. The budget is for all of them together; each may use an
   * equal part of what is left, so that a hard one leaves something for the next; what they leave
   * over goes to those that were not settled.
   *
   * @param heard is told of each value as soon as its row is there
   * @throws InvalidValueException if the brief itself cannot be composed; see {@link
   *     Composer#compose(Brief, Budget)}
   */
  public static Answer ask(
      Composer composer,
      Brief brief,
      Sweep sweep,
      Budget budget,
      Cancel cancel,
      Consumer<Row> heard) {
    composer.refuse(brief);
    Allowance allowance = composer.allowance(budget, cancel);
    List<Integer> values = sweep.values();
    List<Row> rows = new ArrayList<>();
    for (int value : values) {
      Allowance part = allowance.part(values.size() - rows.size());
      Row row = row(composer, brief, sweep.parameter(), value, part);
      rows.add(row);
      heard.accept(row);
    }
    long hard = rows.stream().filter(Row::unsettled).count();
    for (int i = 0; i < rows.size() && !allowance.spent(); i++) {
      if (rows.get(i).unsettled()) {
        Allowance part = allowance.part((int) hard--);
        rows.set(i, row(composer, brief, sweep.parameter(), values.get(i), part));
      }
    }
    return new Answer(sweep, sweep.parameter().of(brief), rows);
  }

  private static Row row(
      Composer composer, Brief brief, Parameter parameter, int value, Allowance part) {
    Composition answer;
    try {
      answer = composer.compose(parameter.set(brief, value), part, Listener.NONE);
    } catch (InvalidValueException refused) {
      return new Row.Refused(value, requireNonNull(refused.getMessage()));
    }
    if (answer instanceof Composed composed) {
      part.charge(composed.proof().labels());
      return new Row.Best(value, composed.agenda(), composed.proof());
    }
    if (answer instanceof NothingFits nothing) {
      return new Row.None(value, nothing.reasons());
    }
    Stopped stopped = (Stopped) answer;
    part.charge(stopped.labels());
    return new Row.Open(value, stopped.bound(), stopped.labels());
  }
}
