package org.arcwright.compose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.catalog.Exercise;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.reduce.Reduction;
import org.arcwright.compose.reduce.Refusal;

/**
 * A first look at why nothing fits: what can be seen without a search, the plainest first. Each
 * reason stands by itself; when there is none, it is the whole that cannot be.
 */
final class Diagnosis {
  private final Reduction reduction;
  private final Instance instance;
  private final Wording words;
  private final Map<String, Candidate> candidates = new HashMap<>();
  private final List<String> reasons = new ArrayList<>();

  private Diagnosis(Reduction reduction) {
    this.reduction = reduction;
    this.instance = reduction.instance();
    this.words = new Wording(reduction);
    instance.candidates().forEach(candidate -> candidates.put(candidate.id(), candidate));
  }

  /** The reasons, at least one. */
  static List<String> reasons(Reduction reduction) {
    Diagnosis diagnosis = new Diagnosis(reduction);
    diagnosis.wishesLeftOut();
    if (!diagnosis.nothingLeft()) {
      diagnosis.emptyPhases();
      diagnosis.productsOutOfReach();
    }
    diagnosis.tooLittleTime();
    diagnosis.pinsInEachOthersWay();
    diagnosis.mealsTooLate();
    if (diagnosis.reasons.isEmpty()) {
      diagnosis.allTogether();
    }
    return diagnosis.reasons;
  }

  private void wishesLeftOut() {
    Set<String> wished = new TreeSet<>(instance.include());
    instance.pins().forEach(pin -> wished.add(pin.id()));
    for (String id : wished) {
      Refusal refusal = reduction.leftOut().get(id);
      if (refusal != null) {
        reasons.add(
            "%s must appear, but cannot be used: %s.".formatted(words.title(id), refusal.reason()));
      }
    }
  }

  /** If every exercise is left out for one and the same cause, that says it all. */
  private boolean nothingLeft() {
    Set<String> causes = new TreeSet<>();
    reduction.leftOut().values().forEach(refusal -> causes.add(refusal.cause()));
    boolean nothing =
        causes.size() == 1 && reduction.leftOut().size() == reduction.catalog().exercises().size();
    if (nothing) {
      reasons.add(
          "All %s exercises are left out for the same reason: %s."
              .formatted(reduction.leftOut().size(), causes.iterator().next()));
    }
    return nothing;
  }

  private void emptyPhases() {
    for (Phase phase : instance.phases()) {
      long left = instance.candidates().stream().filter(c -> allows(phase, c)).count();
      if (left < phase.count().min()) {
        reasons.add(
            "%s needs at least %s, and %s left%s."
                .formatted(
                    words.phase(phase.name()),
                    phase.count().min() == 1 ? "one exercise" : phase.count().min() + " exercises",
                    left == 0 ? "none is" : left == 1 ? "one is" : left + " are",
                    mostOften(phase)));
      }
    }
  }

  /** The most frequent cause for which exercises of the phase's kinds are left out. */
  private String mostOften(Phase phase) {
    Map<String, Integer> counts = new HashMap<>();
    int all = 0;
    for (Map.Entry<String, Refusal> entry : reduction.leftOut().entrySet()) {
      Optional<Exercise> exercise = reduction.catalog().exercise(entry.getKey());
      if (exercise.filter(e -> takes(phase, e)).isPresent()) {
        counts.merge(entry.getValue().cause(), 1, Integer::sum);
        all++;
      }
    }
    if (all == 0) {
      return "; add some to the catalog";
    }
    Map.Entry<String, Integer> most =
        counts.entrySet().stream()
            .min(
                Comparator.<Map.Entry<String, Integer>>comparingInt(entry -> -entry.getValue())
                    .thenComparing(Map.Entry::getKey))
            .orElseThrow();
    return all == most.getValue()
        ? "; %s of its kind are left out, for this reason: %s".formatted(all, most.getKey())
        : "; %s of its kind are left out, %s of them for this reason: %s"
            .formatted(all, most.getValue(), most.getKey());
  }

  private void productsOutOfReach() {
    Set<String> existing = new HashSet<>(instance.initial());
    for (Phase phase : instance.phases()) {
      for (Candidate candidate : instance.candidates()) {
        if (allows(phase, candidate)) {
          existing.addAll(candidate.yields());
        }
      }
      boolean empty = instance.candidates().stream().noneMatch(c -> allows(phase, c));
      for (String product : phase.yields()) {
        if (existing.add(product) && !empty) {
          reasons.add(
              "%s must end with %s, and no exercise up to there leaves that."
                  .formatted(words.phase(phase.name()), words.product(product)));
        }
      }
    }
  }

  private void tooLittleTime() {
    int exercises = Math.max(leastForPhases(), leastForWishes());
    int stretches =
        Math.max(1, (exercises + instance.stretch().max() - 1) / instance.stretch().max());
    int pauses = Math.max(0, stretches - 1 - instance.meals().size());
    if (pauses > 0 && instance.breakMinutes() == 0) {
      reasons.add(
          "Exercises take at least %s minutes, and without any breaks people work at most %s. Allow breaks."
              .formatted(exercises, instance.stretch().max() * (instance.meals().size() + 1)));
      return;
    }
    int meals = instance.meals().stream().mapToInt(Meal::minutes).sum();
    int breaks = meals + pauses * instance.breakMinutes();
    int buffer = instance.buffer(exercises);
    int all = exercises + breaks + buffer;
    if (all > instance.cap()) {
      reasons.add(
          "The shortest agenda takes at least %s minutes (exercises %s, breaks %s, buffer %s); the time at hand is %s."
              .formatted(all, exercises, breaks, buffer, instance.cap()));
    }
  }

  /** For each phase its fewest shortest exercises, or the one that leaves what only it can. */
  private int leastForPhases() {
    Set<String> earlier = new HashSet<>(instance.initial());
    int sum = 0;
    for (Phase phase : instance.phases()) {
      List<Candidate> allowed =
          instance.candidates().stream().filter(candidate -> allows(phase, candidate)).toList();
      int least =
          allowed.stream().mapToInt(Diagnosis::shortest).sorted().limit(phase.count().min()).sum();
      for (String product : phase.yields()) {
        if (!earlier.contains(product)) {
          least = Math.max(least, shortestThatLeaves(product, allowed));
        }
      }
      allowed.forEach(candidate -> earlier.addAll(candidate.yields()));
      sum += Math.max(phase.minutes().min(), least);
    }
    return sum;
  }

  private static int shortestThatLeaves(String product, List<Candidate> candidates) {
    return candidates.stream()
        .filter(candidate -> candidate.yields().contains(product))
        .mapToInt(Diagnosis::shortest)
        .min()
        .orElse(0);
  }

  private int leastForWishes() {
    Set<String> wished = new HashSet<>(instance.include());
    instance.pins().forEach(pin -> wished.add(pin.id()));
    return instance.candidates().stream()
        .filter(candidate -> wished.contains(candidate.id()))
        .mapToInt(Diagnosis::shortest)
        .sum();
  }

  private void pinsInEachOthersWay() {
    List<Pin> pins =
        instance.pins().stream()
            .filter(pin -> candidates.containsKey(pin.id()))
            .sorted(Comparator.comparingInt(Pin::at).thenComparing(Pin::id))
            .toList();
    for (int i = 0; i < pins.size(); i++) {
      Pin pin = pins.get(i);
      int end = pin.at() + shortest(pin);
      if (i + 1 < pins.size() && end > pins.get(i + 1).at()) {
        reasons.add(
            "%s at %s lasts at least %s minutes, so %s cannot start at %s."
                .formatted(
                    words.title(pin.id()),
                    words.time(pin.at()),
                    shortest(pin),
                    words.title(pins.get(i + 1).id()),
                    words.time(pins.get(i + 1).at())));
      }
      if (end > instance.cap()) {
        reasons.add(
            "%s at %s lasts at least %s minutes and would end after the workshop does."
                .formatted(words.title(pin.id()), words.time(pin.at()), shortest(pin)));
      }
    }
  }

  private void mealsTooLate() {
    for (Meal meal : instance.meals()) {
      if (meal.from() > meal.to() || meal.from() + meal.minutes() >= instance.cap()) {
        reasons.add(
            "The meal of %s minutes can start at %s at the earliest; after it must come an exercise, and the workshop ends at %s."
                .formatted(meal.minutes(), words.time(meal.from()), words.time(instance.cap())));
      }
    }
  }

  private void allTogether() {
    reasons.add("Each part can be had by itself, but not all together.");
  }

  private int shortest(Pin pin) {
    return Optional.ofNullable(candidates.get(pin.id())).map(Diagnosis::shortest).orElse(0);
  }

  private static int shortest(Candidate candidate) {
    return candidate.lengths().get(0);
  }

  private static boolean takes(Phase phase, Exercise exercise) {
    String word = exercise.kind().word();
    return phase.kinds().stream().anyMatch(k -> k.equals(word) || k.startsWith(word + "/"));
  }

  private static boolean allows(Phase phase, Candidate candidate) {
    return phase.kinds().contains(candidate.kind());
  }
}
