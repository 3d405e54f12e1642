package org.arcwright.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Group;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;
import org.arcwright.brief.Wishes.Pin;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.explain.Clash;
import org.arcwright.compose.explain.Clash.Conflict;
import org.arcwright.compose.explain.Explainer;
import org.arcwright.compose.explain.Loosening;
import org.arcwright.compose.explain.WayOut;
import org.arcwright.compose.explain.Wish;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Briefs that ask for too much of the built-in exercises, each in ways of its own: why nothing fits
 * is told to the end, and each way out is one, with nothing in it that could be spared. The
 * composer is the judge; it knows nothing of how the explanation was found.
 */
class ClashesTest {
  private static final Catalog CATALOG = BuiltIn.catalog();
  private static final List<String> EXERCISES = List.copyOf(CATALOG.exercises().keySet());
  private static final Composer COMPOSER = Composer.of(CATALOG);
  private static final Budget AMPLE = Budget.of(Duration.ofMinutes(5));
  private static final int BRIEFS = 40;

  private static List<Brief> briefs() {
    return LongStream.range(0, 1000)
        .mapToObj(ClashesTest::brief)
        .filter(brief -> COMPOSER.compose(brief, AMPLE) instanceof NothingFits)
        .limit(BRIEFS)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("briefs")
  void each_way_out_is_one_and_nothing_in_it_can_be_spared(Brief brief) {
    NothingFits answer = (NothingFits) COMPOSER.compose(brief, AMPLE);

    Clash clash = Explainer.of(CATALOG).whyNothingFits(brief, answer, AMPLE);

    assertThat(clash.complete()).isTrue();
    assertThat(clash.conflicts()).isNotEmpty().allMatch(Conflict::smallest);
    assertThat(clash.waysOut()).isNotEmpty().allMatch(WayOut::least);
    for (WayOut way : clash.waysOut()) {
      assertThat(COMPOSER.check(way.agenda(), way.brief()).remarks()).isEmpty();
      assertThat(clash.conflicts())
          .allMatch(
              conflict ->
                  way.loosenings().stream()
                      .anyMatch(loosening -> isIn(conflict, loosening.wish())));
      for (Loosening loosening : way.loosenings()) {
        Brief spared = kept(way.brief(), brief, loosening.wish());
        assertThat(COMPOSER.compose(spared, AMPLE))
            .as(loosening.text())
            .isInstanceOf(NothingFits.class);
      }
    }
  }

  private static boolean isIn(Conflict conflict, Wish wish) {
    return conflict.wishes().stream().anyMatch(asked -> asked.wish().equals(wish));
  }

  /** The loosened brief, but with one wish as the first brief has it. */
  private static Brief kept(Brief loosened, Brief first, Wish wish) {
    Wishes wishes = loosened.wishes();
    Set<String> include = new TreeSet<>(wishes.include());
    Set<String> leaveOut = new TreeSet<>(wishes.leaveOut());
    List<Pin> pins = wishes.pins();
    if (wish instanceof Wish.Include in) {
      include.add(in.exercise());
    } else if (wish instanceof Wish.LeaveOut out) {
      leaveOut.add(out.exercise());
    } else if (wish instanceof Wish.Pinned pinned) {
      List<Pin> others = new ArrayList<>(pins);
      others.removeIf(pin -> pin.exercise().equals(pinned.pin().exercise()));
      others.add(pinned.pin());
      pins = others;
    }
    boolean people = wish instanceof Wish.People;
    boolean openness = wish instanceof Wish.Openness;
    Group group =
        new Group(
            (people ? first : loosened).group().count(),
            first.group().acquaintance(),
            (openness ? first : loosened).group().openness());
    Rhythm rhythm =
        new Rhythm(
            first.rhythm().shortest(),
            (wish instanceof Wish.Stretch ? first : loosened).rhythm().longest(),
            (wish instanceof Wish.Pause ? first : loosened).rhythm().pause());
    return new Brief(
        first.title(),
        first.goal(),
        group,
        first.mode(),
        (wish instanceof Wish.Cap ? first : loosened).cap(),
        first.start(),
        first.zones(),
        (wish instanceof Wish.Tools ? first : loosened).tools(),
        rhythm,
        (wish instanceof Wish.Meal ? first : loosened).meals(),
        first.curve(),
        (wish instanceof Wish.Buffer ? first : loosened).bufferPercent(),
        (wish instanceof Wish.Given ? first : loosened).given(),
        new Wishes(include, leaveOut, pins, first.wishes().usedLastTime()),
        (wish instanceof Wish.Own ? first : loosened).ownItems());
  }

  private static <T> T one(SplittableRandom random, List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private static Set<String> some(SplittableRandom random, int most) {
    Set<String> some = new TreeSet<>();
    IntStream.rangeClosed(0, random.nextInt(most)).forEach(i -> some.add(one(random, EXERCISES)));
    return some;
  }

  private static Moment at(SplittableRandom random, int cap) {
    return new Moment.After(Duration.ofMinutes(5L * random.nextInt(cap / 5)));
  }

  /** A brief that asks for up to three things too many. */
  private static Brief brief(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    String goal = one(random, List.copyOf(CATALOG.goals().keySet()));
    Mode mode = one(random, List.of(Mode.values()));
    int people = one(random, List.of(2, 4, 6, 7, 9, 12, 15, 20, 24, 30, 60));
    int cap = one(random, List.of(30, 45, 60, 75, 90, 120, 150, 180, 210));
    String title = one(random, List.of("Too much", "Zu viel für einen Vormittag"));
    BriefBuilder brief = Brief.builder(title, goal, mode, people, Duration.ofMinutes(cap));
    Set<String> include = new TreeSet<>();
    Set<String> leaveOut = new TreeSet<>();
    Set<String> used = new TreeSet<>();
    List<Pin> pins = new ArrayList<>();
    int first = random.nextInt(9);
    for (int more = 0; more <= random.nextInt(3); more++) {
      switch ((first + more * (1 + random.nextInt(3))) % 9) {
        case 0 -> include.addAll(some(random, 4));
        case 1 -> some(random, 2).forEach(exercise -> pins.add(new Pin(exercise, at(random, cap))));
        case 2 -> {
          Duration from = Duration.ofMinutes(5L * random.nextInt(cap / 5));
          brief.meal(new Meal(from, from, Duration.ofMinutes(one(random, List.of(30, 45, 60)))));
        }
        case 3 ->
            brief.tools(Set.of(one(random, List.of("call", "chat", "paper", "poll", "notes"))));
        case 4 ->
            brief.rhythm(
                new Rhythm(
                    Duration.ZERO,
                    Duration.ofMinutes(one(random, List.of(20, 25, 30, 45))),
                    Duration.ofMinutes(one(random, List.of(0, 10, 30)))));
        case 5 -> brief.bufferPercent(one(random, List.of(30, 60, 100)));
        case 6 ->
            brief.ownItem(
                new OwnItem(
                    "guest",
                    "A guest speaks",
                    Duration.ofMinutes(one(random, List.of(20, 45, 70, 100))),
                    Optional.empty(),
                    Optional.of(at(random, cap)),
                    2,
                    Format.PLENARY));
        case 7 -> {
          Kind kind = one(random, List.of(Kind.values()));
          CATALOG.exercises().values().stream()
              .filter(exercise -> exercise.kind() == kind && random.nextInt(20) > 0)
              .forEach(exercise -> leaveOut.add(exercise.id()));
        }
        default -> {
          brief.openness(0);
          used.addAll(some(random, 5));
        }
      }
    }
    Set<String> pinned = new TreeSet<>();
    pins.removeIf(pin -> !pinned.add(pin.exercise()));
    leaveOut.removeAll(include);
    leaveOut.removeAll(pinned);
    return brief.wishes(new Wishes(include, leaveOut, pins, used)).build();
  }
}
