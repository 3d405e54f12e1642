package org.arcwright.compose.oracle;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Apart;
import org.arcwright.compose.instance.Instance.AtMost;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.instance.Instance.Rules;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;

/** Instances from a seed: the same seed, the same instance, everywhere. */
public final class Instances {
  private static final Wild.Size TINY =
      new Wild.Size(new Bounds(3, 5), new Bounds(5, 12), new Bounds(1, 3), 4);
  private static final Wild.Size MIDDLING =
      new Wild.Size(new Bounds(8, 16), new Bounds(12, 30), new Bounds(2, 4), 5);
  private static final int TRIES = 1000;
  private static final int INCLUDED = 3;

  private Instances() {}

  /** Up to 5 candidates and 12 cells, odd in every way: small enough for {@link Enumeration}. */
  public static Instance tiny(long seed) {
    return Wild.of(TINY, seed);
  }

  /** Up to 16 candidates and 30 cells, odd in every way: small enough for a general solver. */
  public static Instance middling(long seed) {
    return Wild.of(MIDDLING, seed);
  }

  /**
   * A middling one with up to three exercises that must appear and up to two that are pinned. Half
   * of them take their wishes from a list that fits, so far as one is drawn; the others wish
   * blindly, and mostly nothing fits.
   */
  public static Instance demanding(long seed) {
    Instance instance = middling(seed);
    SplittableRandom random = new SplittableRandom(~seed);
    Optional<List<Item>> sketch =
        random.nextBoolean() ? Sketch.draw(instance, TRIES, random) : Optional.empty();
    List<Pin> somewhere = sketch.map(Instances::places).orElseGet(() -> blind(instance, random));
    int pins = Math.min(somewhere.size(), random.nextInt(3));
    int include = Math.min(somewhere.size() - pins, random.nextInt(INCLUDED + 1));
    return Draft.of(instance)
        .pins(somewhere.subList(0, pins))
        .include(somewhere.subList(pins, pins + include).stream().map(Pin::id).toList())
        .build();
  }

  /** The same with rules of its own: up to two on neighbours, up to two on numbers. */
  public static Instance ruled(Instance instance, long seed) {
    SplittableRandom random = new SplittableRandom(~seed);
    List<Apart> apart = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      Set<String> first = some(instance, random);
      Set<String> then = random.nextBoolean() ? first : some(instance, random);
      apart.add(new Apart("apart " + i, first, then, random.nextBoolean()));
    }
    List<AtMost> atMost = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      atMost.add(new AtMost("at most " + i, some(instance, random), random.nextInt(3)));
    }
    return Draft.of(instance).rules(new Rules(apart, atMost)).build();
  }

  private static Set<String> some(Instance instance, SplittableRandom random) {
    Set<String> some = new HashSet<>();
    for (Candidate candidate : instance.candidates()) {
      if (random.nextInt(5) < 2) {
        some.add(candidate.id());
      }
    }
    return some;
  }

  private static List<Pin> places(List<Item> items) {
    List<Pin> places = new ArrayList<>();
    for (Item item : items) {
      if (item instanceof Activity activity) {
        places.add(new Pin(activity.id(), activity.start()));
      }
    }
    return places;
  }

  private static List<Pin> blind(Instance instance, SplittableRandom random) {
    return instance.candidates().stream()
        .map(c -> new Pin(c.id(), random.nextInt(instance.cells()) * instance.grid()))
        .toList();
  }

  /**
   * A likely workshop in five phases.
   *
   * @param candidates how many, 60 to 10,000
   * @param cap minutes, 90 to 960; a multiple of 5
   */
  public static Instance of(int candidates, int cap, long seed) {
    return Workshops.of(candidates, cap, seed);
  }

  /**
   * The same with three exercises that must appear and one that is pinned, all taken from a list
   * that fits.
   */
  public static Instance wished(int candidates, int cap, long seed) {
    Instance instance = of(candidates, cap, seed);
    SplittableRandom random = new SplittableRandom(~seed);
    List<Item> sketch =
        Sketch.draw(instance, TRIES, random)
            .orElseThrow(() -> new IllegalArgumentException("nothing drawn for seed " + seed));
    List<Pin> left = places(sketch);
    List<String> include = new ArrayList<>();
    while (include.size() < INCLUDED) {
      include.add(left.remove(random.nextInt(left.size())).id());
    }
    Pin pinned = left.get(random.nextInt(left.size()));
    return Draft.of(instance).include(include).pins(pinned).build();
  }
}
