package org.arcwright.standin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.reduce.AgendaReader;
import org.arcwright.compose.reduce.Reducer;
import org.arcwright.compose.reduce.Reduction;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.reduce.SampleExercise;
import org.junit.jupiter.api.Test;

/**
 * The finder against trying out everything: each way to put stand-ins into the failing places, and
 * of each way every part of it, read by the independent checker.
 */
class StandInOracleTest {
  private static final int CASES = 400;
  private static final List<String> TOOLS = List.of("breakouts", "music");
  private static final List<String> PRODUCTS =
      List.of("introductions", "idea-pool", "shortlist", "decision", "feedback");

  private int several;
  private int without;
  private int inEachOthersWay;

  @Test
  void as_many_as_can_be_and_then_the_cheapest_whichever_are_used() {
    Random random = new Random(5);
    for (int i = 0; i < CASES; i++) {
      Catalog catalog = Sample.only(exercises(random));
      Brief brief = Sample.brief(90 + 15 * random.nextInt(4)).build();
      if (Composer.of(catalog).compose(brief, Budget.USUAL) instanceof Composed composed) {
        compare(composed.agenda(), brief, catalog);
      }
    }
    assertThat(several).isGreaterThan(100);
    assertThat(without).isGreaterThan(100);
    assertThat(inEachOthersWay).isGreaterThan(5);
  }

  static List<Exercise> exercises(Random random) {
    List<Exercise> exercises = new ArrayList<>();
    List<String> yields = List.of("arrival", "idea-pool", "shortlist", "decision", "takeaways");
    for (int step = 0; step < yields.size(); step++) {
      Kind kind = List.of(Kind.values()).get(step);
      for (int i = 0; i < 5; i++) {
        int typical = 5 * (1 + random.nextInt(4));
        Set<String> leaves = new HashSet<>(Set.of(yields.get(step)));
        leaves.add(PRODUCTS.get(random.nextInt(PRODUCTS.size())));
        SampleExercise exercise =
            SampleExercise.of(
                    kind.word() + "-" + i,
                    kind,
                    typical,
                    typical,
                    typical + 5 * random.nextInt(3),
                    leaves.toArray(String[]::new))
                .energy(1 + random.nextInt(5))
                .format(random.nextBoolean() ? Format.SOLO : Format.PLENARY);
        if (step > 0 && random.nextBoolean()) {
          exercise.needs(PRODUCTS.get(random.nextInt(step)));
        }
        if (random.nextInt(3) > 0) {
          exercise.in(Mode.REMOTE, 1 + random.nextInt(3), TOOLS.get(random.nextInt(4) / 3));
        }
        exercises.add(exercise.build());
      }
    }
    return exercises;
  }

  private void compare(Agenda agenda, Brief brief, Catalog catalog) {
    StandIns found = StandInFinder.of(catalog).find(agenda, brief);
    Reduction reduction = Reducer.reduce(brief, catalog, () -> false);
    for (ToolLoss loss : found.tools()) {
      Tries tries = new Tries(agenda, reduction, loss.tool());
      tries.all();
      Map<Integer, Swapped> best = tries.best;

      assertThat(loss.swaps()).extracting(Swap::place).isEqualTo(tries.failing);
      assertThat(loss.covered()).isEqualTo(best.size());
      assertThat(
              loss.swaps().stream()
                  .flatMap(swap -> swap.standIn().stream())
                  .mapToLong(StandIn::points)
                  .sum())
          .isEqualTo(tries.bestPrice);
      Map<Integer, Swapped> ours = new HashMap<>();
      for (Swap swap : loss.swaps()) {
        swap.standIn()
            .ifPresent(
                standIn ->
                    ours.put(
                        swap.place(),
                        new Swapped(standIn.exercise(), (int) standIn.length().toMinutes(), 0)));
      }
      assertThat(tries.holds(ours)).isTrue();
      several += best.size() > 1 ? 1 : 0;
      without += best.size() < tries.failing.size() ? 1 : 0;
      inEachOthersWay += tries.cheapestAlone() != tries.bestPrice ? 1 : 0;
    }
  }

  /** An exercise put in some place. */
  private record Swapped(String exercise, int length, long price) {}

  /** All ways to put stand-ins into the places that a tool's loss leaves. */
  private static final class Tries {
    final List<Integer> failing;
    Map<Integer, Swapped> best = Map.of();
    long bestPrice = Long.MAX_VALUE;
    private final Reduction reduction;
    private final Instance onTheDay;
    private final List<Item> items;
    private final String tool;
    private final List<List<Swapped>> options = new ArrayList<>();

    Tries(Agenda agenda, Reduction reduction, String tool) {
      this.reduction = reduction;
      this.tool = tool;
      this.items = AgendaReader.items(reduction, agenda);
      this.onTheDay = onTheDay(reduction.instance());
      this.failing =
          IntStream.range(0, items.size())
              .filter(
                  place ->
                      agenda.items().get(place) instanceof Activity activity
                          && leans(activity.exercise()))
              .boxed()
              .toList();
      failing.forEach(place -> options.add(options(place)));
    }

    private boolean leans(String id) {
      return reduction.catalog().exercise(id).orElseThrow().in(Mode.REMOTE).tools().contains(tool);
    }

    /** The closing buffer may be used up, and nobody counts a phase's minutes any more. */
    private static Instance onTheDay(Instance i) {
      return new Instance(
          i.grid(),
          i.cap(),
          i.curve(),
          i.stretch(),
          i.breakMinutes(),
          i.meals(),
          0,
          i.products(),
          i.initial(),
          i.phases().stream()
              .map(
                  phase ->
                      new Instance.Phase(
                          phase.name(),
                          phase.kinds(),
                          phase.count(),
                          new Bounds(0, i.cap()),
                          phase.target(),
                          phase.yields()))
              .toList(),
          i.candidates(),
          List.of(),
          i.pins(),
          i.rules(),
          i.weights());
    }

    private List<Swapped> options(int place) {
      List<Swapped> options = new ArrayList<>();
      int planned = items.get(place).length();
      for (Candidate candidate : reduction.instance().candidates()) {
        if (!leans(candidate.id())) {
          int length =
              candidate.lengths().stream()
                  .reduce(
                      (one, other) ->
                          Math.abs(other - planned) < Math.abs(one - planned) ? other : one)
                  .orElseThrow();
          Map<Integer, Swapped> alone = Map.of(place, new Swapped(candidate.id(), length, 0));
          if (holds(alone)) {
            options.add(new Swapped(candidate.id(), length, price(with(alone)) - price(items)));
          }
        }
      }
      return options;
    }

    private long price(List<Item> day) {
      Instance instance = reduction.instance();
      int end = day.get(day.size() - 1).end();
      int work = day.stream().filter(Item.Activity.class::isInstance).mapToInt(Item::length).sum();
      return Checker.check(instance, day).cost().total()
          + instance.weights().idle()
              * (long) Math.max(0, end + instance.buffer(work) - instance.cap());
    }

    private List<Item> with(Map<Integer, Swapped> swapped) {
      List<Item> day = new ArrayList<>();
      int now = 0;
      for (int place = 0; place < items.size(); place++) {
        Item item = items.get(place);
        Optional<Swapped> other = Optional.ofNullable(swapped.get(place));
        int length = other.map(Swapped::length).orElse(item.length());
        day.add(
            item instanceof Item.Activity activity
                ? new Item.Activity(
                    other.map(Swapped::exercise).orElse(activity.id()),
                    activity.phase(),
                    now,
                    length)
                : new Item.Pause(now, length));
        now += length;
      }
      return day;
    }

    /** Whether every part of the swaps leaves a day that keeps the rules. */
    boolean holds(Map<Integer, Swapped> swapped) {
      List<Integer> places = List.copyOf(swapped.keySet());
      for (int part = 1; part < 1 << places.size(); part++) {
        Map<Integer, Swapped> some = new HashMap<>();
        for (int i = 0; i < places.size(); i++) {
          if ((part >> i & 1) != 0) {
            some.put(places.get(i), swapped.get(places.get(i)));
          }
        }
        if (!Checker.check(onTheDay, with(some)).feasible()) {
          return false;
        }
      }
      return true;
    }

    void all() {
      all(0, new HashMap<>(), 0);
    }

    private void all(int number, Map<Integer, Swapped> chosen, long price) {
      if (number == failing.size()) {
        boolean more = chosen.size() > best.size();
        boolean better =
            bestPrice == Long.MAX_VALUE
                || more
                || (chosen.size() == best.size() && price < bestPrice);
        if (better && holds(chosen)) {
          best = Map.copyOf(chosen);
          bestPrice = price;
        }
        return;
      }
      all(number + 1, chosen, price);
      for (Swapped option : options.get(number)) {
        chosen.put(failing.get(number), option);
        all(number + 1, chosen, price + option.price());
        chosen.remove(failing.get(number));
      }
    }

    /** The price if nobody minded the others. */
    long cheapestAlone() {
      return options.stream()
          .filter(here -> !here.isEmpty())
          .mapToLong(here -> here.stream().mapToLong(Swapped::price).min().orElse(0))
          .sum();
    }
  }
}
