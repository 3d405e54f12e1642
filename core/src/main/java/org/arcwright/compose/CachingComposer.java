package org.arcwright.compose;

import com.github.benmanes.caffeine.cache.AsyncCache;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.InvalidValueException;

/**
 * A composer that remembers, by content: the answer to a brief, if it is proven; the instance that
 * a brief was reduced to; and the proven solution of an instance, which serves all briefs that
 * differ in words alone. Many equal briefs at once are searched for once. An answer whose proof the
 * budget cut short is not remembered. Any number of threads may share one; whoever wants nothing
 * remembered uses a {@link Composer}.
 */
public final class CachingComposer {
  /** How often those who wait for another's search look up. */
  private static final long BETWEEN_LOOKS = TimeUnit.MILLISECONDS.toNanos(10);

  private final Composer composer;
  private final Memory memory;
  private final AsyncCache<Brief, Composition> answers;

  private CachingComposer(
      Composer composer, Memory memory, AsyncCache<Brief, Composition> answers) {
    this.composer = composer;
    this.memory = memory;
    this.answers = answers;
  }

  /**
   * Remembers answers until their weight is over {@code most}, likewise instances, likewise
   * solutions; those used least go first. Each weighs the candidates of its instance, about 300
   * octets each, and one. As an answer, its instance and its solution share what they hold, all
   * three take little more room than one.
   *
   * @param most weight of each, 1 or more
   */
  public static CachingComposer of(Composer composer, long most) {
    if (most < 1) {
      throw new InvalidValueException("most", most, "a whole number over 0 is right");
    }
    Memory memory = new Memory(most);
    AsyncCache<Brief, Composition> answers =
        Memory.weighed(most)
            .<Brief, Composition>weigher((brief, answer) -> Memory.weight(answer.instance()))
            .buildAsync();
    return new CachingComposer(composer.with(memory), memory, answers);
  }

  /**
   * As {@link Composer#compose(Brief, Budget)}.
   *
   * @throws InvalidValueException if the brief names what the catalog does not have, or times that
   *     cannot be planned
   */
  public Composition compose(Brief brief, Budget budget) {
    return compose(brief, budget, Cancel.NEVER);
  }

  /**
   * As {@link Composer#compose(Brief, Budget, Cancel)}. Whoever waits for another's search of an
   * equal brief does so for at most half the own budget's time, and then searches for itself.
   *
   * @throws InvalidValueException if the brief names what the catalog does not have, or times that
   *     cannot be planned
   */
  public Composition compose(Brief brief, Budget budget, Cancel cancel) {
    Allowance allowance = composer.allowance(budget, cancel);
    CompletableFuture<Composition> own = new CompletableFuture<>();
    while (true) {
      CompletableFuture<Composition> first = answers.get(brief, (key, executor) -> own);
      if (first == own) {
        return search(brief, allowance, own);
      }
      Optional<Composition> answer = await(first, allowance);
      if (answer.isEmpty()) {
        return composer.compose(brief, allowance, Listener.NONE);
      }
      if (proven(answer.get()) || allowance.spent()) {
        return answer.get();
      }
    }
  }

  private Composition search(Brief brief, Allowance allowance, CompletableFuture<Composition> own) {
    try {
      Composition answer = composer.compose(brief, allowance, Listener.NONE);
      own.complete(answer);
      if (!proven(answer)) {
        answers.asMap().remove(brief, own);
      }
      return answer;
    } catch (RuntimeException | Error failure) {
      own.cancel(false);
      throw failure;
    }
  }

  /** Another's answer; nothing if it failed, or if half of the budget has gone. */
  private static Optional<Composition> await(
      CompletableFuture<Composition> first, Allowance allowance) {
    while (!allowance.halfSpent()) {
      try {
        return Optional.of(first.get(BETWEEN_LOOKS, TimeUnit.NANOSECONDS));
      } catch (TimeoutException notYet) {
        // looks again unless the wait was long enough
      } catch (ExecutionException | CancellationException failed) {
        return Optional.empty();
      } catch (InterruptedException interrupted) {
        Thread.currentThread().interrupt();
      }
    }
    return Optional.empty();
  }

  private static boolean proven(Composition answer) {
    return answer instanceof Composition.NothingFits
        || (answer instanceof Composition.Composed composed && composed.proof().best());
  }

  /** How often it has helped so far. */
  public Statistics statistics() {
    return new Statistics(
        Memory.use(answers.synchronous()), memory.ofSolutions(), memory.ofReductions());
  }

  /**
   * How often it has helped.
   *
   * @param answers briefs answered as before
   * @param solutions instances solved as before, though the brief was another
   * @param reductions briefs whose instance was known
   */
  public record Statistics(Use answers, Use solutions, Use reductions) {}

  /**
   * How often one kind of memory has helped.
   *
   * @param found times that it did
   * @param missed times that it did not
   * @param forgotten what had to make room
   * @param kept what is kept now, about
   */
  public record Use(long found, long missed, long forgotten, long kept) {}
}
