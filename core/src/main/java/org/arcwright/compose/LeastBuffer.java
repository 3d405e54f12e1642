package org.arcwright.compose;

import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;

/**
 * Finds the least closing buffer, in whole per cent of the exercise minutes, whose best agenda is
 * likely enough to end on time. A larger buffer makes another agenda, not the same one with more
 * room, so the chance need not rise with it: every smaller buffer is tried, too.
 */
public final class LeastBuffer {
  private static final int MOST = 100;

  /** How far to go up each time until a buffer is enough. */
  private static final int CLIMB = 5;

  private final Composer composer;
  private final Brief brief;
  private final double wanted;
  private final ToDoubleFunction<Agenda> onTime;
  private final Allowance allowance;
  private final TreeMap<Integer, Attempt> attempts = new TreeMap<>();

  private LeastBuffer(
      Composer composer,
      Brief brief,
      double wanted,
      ToDoubleFunction<Agenda> onTime,
      Allowance allowance) {
    this.composer = composer;
    this.brief = brief;
    this.wanted = wanted;
    this.onTime = onTime;
    this.allowance = allowance;
  }

  /**
   * What came of it.
   *
   * @param brief with the buffer that the answer was composed with
   * @param composition an agenda that is likely enough to end on time, or the likeliest that was
   *     found; where there is none, what the brief itself leads to
   * @param onTime the chance that it ends on time, 0 without an agenda
   * @param reached whether that is enough
   * @param complete whether every smaller buffer was tried to its end, so that none of them is
   *     enough; if no buffer is enough, every buffer that leaves room for an agenda
   */
  public record Found(
      Brief brief, Composition composition, double onTime, boolean reached, boolean complete) {}

  /** One buffer with its answer. */
  private record Attempt(Brief brief, Composition composition, double onTime) {
    boolean conclusive() {
      return composition instanceof NothingFits
          || (composition instanceof Composed composed && composed.proof().best());
    }

    boolean composed() {
      return composition instanceof Composed;
    }
  }

  /**
   * Composes a brief with as little buffer as the wanted chance allows; its own buffer is where the
   * search begins. At most 101 agendas are composed, within one budget for all.
   *
   * @param wanted chance to end on time, over 0 and under 1
   * @param onTime the chance of an agenda to end on time, such as a forecast's
   * @throws InvalidValueException if the brief cannot be composed; see {@link Composer#compose}
   */
  public static Found find(
      Composer composer,
      Brief brief,
      double wanted,
      ToDoubleFunction<Agenda> onTime,
      Budget budget) {
    if (!(wanted > 0 && wanted < 1)) {
      throw new InvalidValueException("confidence", wanted, "over 0 and under 1 is right");
    }
    Allowance allowance = composer.allowance(budget, Cancel.NEVER);
    return new LeastBuffer(composer, brief, wanted, onTime, allowance).find();
  }

  private Found find() {
    int top = climb();
    boolean all = true;
    for (int buffer = top - 1; buffer >= 0 && all; buffer--) {
      all = attempts.containsKey(buffer) || !allowance.spent();
      if (all) {
        attempt(buffer);
      }
    }
    Optional<Attempt> least = attempts.values().stream().filter(this::isEnough).findFirst();
    Attempt best = least.orElseGet(this::likeliest);
    boolean conclusive =
        attempts.headMap(best.brief().bufferPercent(), least.isPresent()).values().stream()
            .allMatch(Attempt::conclusive);
    return new Found(
        best.brief(), best.composition(), best.onTime(), least.isPresent(), all && conclusive);
  }

  /** Goes up until a buffer is enough, or no agenda has room beside it; returns that buffer. */
  private int climb() {
    int buffer = brief.bufferPercent();
    Attempt attempt = attempt(buffer);
    while (attempt.composed() && !isEnough(attempt) && buffer < MOST && !allowance.spent()) {
      buffer = Math.min(MOST, buffer + CLIMB);
      attempt = attempt(buffer);
    }
    return buffer;
  }

  private Attempt attempt(int buffer) {
    return attempts.computeIfAbsent(
        buffer,
        percent -> {
          Brief tried = brief.toBuilder().bufferPercent(percent).build();
          Composition answer = composer.compose(tried, allowance, Listener.NONE);
          if (answer instanceof Composed composed) {
            allowance.charge(composed.proof().labels());
            return new Attempt(tried, answer, onTime.applyAsDouble(composed.agenda()));
          }
          return new Attempt(tried, answer, 0);
        });
  }

  private boolean isEnough(Attempt attempt) {
    return attempt.composed() && attempt.onTime() >= wanted;
  }

  /**
   * The likeliest agenda, the one with the smaller buffer on ties; without any, the first answer.
   */
  private Attempt likeliest() {
    Attempt best = attempt(brief.bufferPercent());
    for (Attempt attempt : attempts.values()) {
      if (attempt.composed() && (!best.composed() || attempt.onTime() > best.onTime())) {
        best = attempt;
      }
    }
    return best;
  }
}
