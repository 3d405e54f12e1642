package org.arcwright.compose;

import com.github.benmanes.caffeine.cache.AsyncCache;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import java.util.function.Predicate;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.search.OptionList;
import org.arcwright.compose.search.OptionRule;

/**
 * A composer that remembers, by content: the answer to a brief, if it is proven; the instance that
 * a brief was reduced to; and the proven solution of an instance, which serves all briefs that
 * differ in words alone. Options are remembered beside them, by brief and rule. Many equal requests
 * at once are searched for once. An answer whose proof the budget cut short is not remembered. Any
 * number of threads may share one; whoever wants nothing remembered uses a {@link Composer}.
 *
 * <p>Explanations are not remembered: a person asks for one now and then, and how complete it is
 * depends on the budget.
 */
public final class CachingComposer {
  /** How often those who wait for another's search look up. */
  private static final long BETWEEN_LOOKS = TimeUnit.MILLISECONDS.toNanos(10);

  private final Composer composer;
  private final Memory memory;
  private final AsyncCache<Brief, Composition> answers;
  private final AsyncCache<Choice, Options> options;

  /** What options are asked for. */
  private record Choice(Brief brief, OptionRule rule) {}

  private CachingComposer(
      Composer composer,
      Memory memory,
      AsyncCache<Brief, Composition> answers,
      AsyncCache<Choice, Options> options) {
    this.composer = composer;
    this.memory = memory;
    this.answers = answers;
    this.options = options;
  }

  /**
   * Remembers answers until their weight is over {@code most}, likewise options, instances and
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
    AsyncCache<Choice, Options> options =
        Memory.weighed(most)
            .<Choice, Options>weigher((choice, found) -> weight(found))
            .buildAsync();
    return new CachingComposer(composer.with(memory), memory, answers, options);
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
    return once(
        answers,
        brief,
        composer.allowance(budget, cancel),
        CachingComposer::proven,
        allowance -> composer.compose(brief, allowance, Listener.NONE));
  }

  /**
   * As {@link Composer#options(Brief, OptionRule, Budget)}.
   *
   * @throws InvalidValueException if the brief names what the catalog does not have, or times that
   *     cannot be planned
   */
  public Options options(Brief brief, OptionRule rule, Budget budget) {
    return options(brief, rule, budget, Cancel.NEVER);
  }

  /**
   * As {@link Composer#options(Brief, OptionRule, Budget, Cancel)}; waits for others as {@link
   * #compose(Brief, Budget, Cancel)} does.
   *
   * @throws InvalidValueException if the brief names what the catalog does not have, or times that
   *     cannot be planned
   */
  public Options options(Brief brief, OptionRule rule, Budget budget, Cancel cancel) {
    return once(
        options,
        new Choice(brief, rule),
        composer.allowance(budget, cancel),
        CachingComposer::proven,
        allowance -> composer.options(brief, rule, allowance));
  }

  /** What is remembered, or what another is finding out, or what the work gives. */
  private static <K, V> V once(
      AsyncCache<K, V> cache,
      K key,
      Allowance allowance,
      Predicate<V> proven,
      Function<Allowance, V> work) {
    CompletableFuture<V> own = new CompletableFuture<>();
    while (true) {
      CompletableFuture<V> first = cache.get(key, (same, executor) -> own);
      if (first == own) {
        return search(cache, key, allowance, proven, work, own);
      }
      Optional<V> answer = await(first, allowance);
      if (answer.isEmpty()) {
        return work.apply(allowance);
      }
      if (proven.test(answer.get()) || allowance.spent()) {
        return answer.get();
      }
    }
  }

  private static <K, V> V search(
      AsyncCache<K, V> cache,
      K key,
      Allowance allowance,
      Predicate<V> proven,
      Function<Allowance, V> work,
      CompletableFuture<V> own) {
    try {
      V answer = work.apply(allowance);
      own.complete(answer);
      if (!proven.test(answer)) {
        cache.asMap().remove(key, own);
      }
      return answer;
    } catch (RuntimeException | Error failure) {
      own.cancel(false);
      throw failure;
    }
  }

  /** Another's answer; nothing if it failed, or if half of the budget has gone. */
  private static <V> Optional<V> await(CompletableFuture<V> first, Allowance allowance) {
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

  private static boolean proven(Options options) {
    if (options instanceof Options.NotOne none) {
      return proven(none.why());
    }
    Options.Found found = (Options.Found) options;
    return found.end() != OptionList.End.STOPPED
        && found.options().stream().allMatch(option -> option.composed().proof().best());
  }

  private static int weight(Options options) {
    if (options instanceof Options.NotOne none) {
      return Memory.weight(none.why().instance());
    }
    return Memory.weight(((Options.Found) options).best().instance());
  }

  /** How often it has helped so far. */
  public Statistics statistics() {
    return new Statistics(
        Memory.use(answers.synchronous()),
        Memory.use(options.synchronous()),
        memory.ofSolutions(),
        memory.ofReductions());
  }

  /**
   * How often it has helped.
   *
   * @param answers briefs answered as before
   * @param options choices answered as before
   * @param solutions instances solved as before, though the brief was another
   * @param reductions briefs whose instance was known
   */
  public record Statistics(Use answers, Use options, Use solutions, Use reductions) {}

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
