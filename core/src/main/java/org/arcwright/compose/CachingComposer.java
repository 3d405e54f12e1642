package org.arcwright.compose;

import com.github.benmanes.caffeine.cache.AsyncCache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.stats.CacheStats;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.InvalidValueException;

/**
 * A composer that remembers what it has proven: an equal brief gets the same answer again without a
 * search, and many equal briefs at once are searched for once. An answer whose proof the budget cut
 * short is not remembered. Any number of threads may share one.
 */
public final class CachingComposer {
  private final Composer composer;
  private final AsyncCache<Brief, Composition> cache;

  private CachingComposer(Composer composer, AsyncCache<Brief, Composition> cache) {
    this.composer = composer;
    this.cache = cache;
  }

  /**
   * Remembers answers until their weight is over {@code most}; those used least go first. An answer
   * weighs the candidates of its instance, about 300 octets each, and one.
   *
   * @param most weight, 1 or more
   */
  public static CachingComposer of(Composer composer, long most) {
    if (most < 1) {
      throw new InvalidValueException("most", most, "a whole number over 0 is right");
    }
    return new CachingComposer(
        composer,
        Caffeine.newBuilder()
            .maximumWeight(most)
            .<Brief, Composition>weigher((brief, answer) -> weight(answer))
            .recordStats()
            .executor(Runnable::run)
            .buildAsync());
  }

  private static int weight(Composition answer) {
    return 1 + answer.instance().candidates().size();
  }

  /**
   * As {@link Composer#compose(Brief, Budget)}. Whoever waits for another's search of an equal
   * brief waits no longer than the own budget's time, and then searches for itself.
   *
   * @throws InvalidValueException if the brief names what the catalog does not have, or times that
   *     cannot be planned
   */
  public Composition compose(Brief brief, Budget budget) {
    CompletableFuture<Composition> own = new CompletableFuture<>();
    CompletableFuture<Composition> first = cache.get(brief, (key, executor) -> own);
    return first == own ? search(brief, budget, own) : await(brief, budget, first);
  }

  private Composition search(Brief brief, Budget budget, CompletableFuture<Composition> own) {
    try {
      Composition answer = composer.compose(brief, budget);
      own.complete(answer);
      if (!proven(answer)) {
        cache.asMap().remove(brief, own);
      }
      return answer;
    } catch (RuntimeException | Error failure) {
      own.cancel(false);
      throw failure;
    }
  }

  private Composition await(Brief brief, Budget budget, CompletableFuture<Composition> first) {
    try {
      Composition answer = first.get(budget.time().toNanos(), TimeUnit.NANOSECONDS);
      return proven(answer) ? answer : composer.compose(brief, budget);
    } catch (TimeoutException | ExecutionException | CancellationException nothingCame) {
      return composer.compose(brief, budget);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      return composer.compose(brief, budget, () -> true);
    }
  }

  private static boolean proven(Composition answer) {
    return answer instanceof Composition.NothingFits
        || (answer instanceof Composition.Composed composed && composed.proof().best());
  }

  /** How often it has helped so far. */
  public Statistics statistics() {
    CacheStats stats = cache.synchronous().stats();
    return new Statistics(
        stats.hitCount(),
        stats.missCount(),
        stats.evictionCount(),
        cache.synchronous().estimatedSize());
  }

  /**
   * How often it has helped.
   *
   * @param remembered briefs answered without a search of their own
   * @param searched briefs searched for
   * @param forgotten answers that had to make room
   * @param kept answers kept now, about
   */
  public record Statistics(long remembered, long searched, long forgotten, long kept) {}
}
