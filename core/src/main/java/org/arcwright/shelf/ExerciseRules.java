package org.arcwright.shelf;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Per;
import org.arcwright.catalog.SizeRange;
import org.arcwright.catalog.Source;
import org.arcwright.catalog.Step;
import org.arcwright.format.CatalogFile;
import org.arcwright.format.Problem;

/** What the page of one exercise must hold so that a facilitator can run it. */
final class ExerciseRules {
  /** What takes longer is a workshop of its own. Common practice, no source. */
  private static final Duration LONGEST = Duration.ofHours(4);

  private final CatalogFile file;
  private final Exercise exercise;
  private final List<Problem> found = new ArrayList<>();

  private ExerciseRules(CatalogFile file, Exercise exercise) {
    this.file = file;
    this.exercise = exercise;
  }

  /** What is wrong with the exercise in the file. */
  static List<Problem> check(CatalogFile file, Exercise exercise) {
    ExerciseRules rules = new ExerciseRules(file, exercise);
    rules.groups();
    rules.length();
    rules.spoken();
    rules.modes();
    rules.page();
    rules.source();
    return rules.found;
  }

  private void groups() {
    for (int i = 0; i < exercise.steps().size(); i++) {
      boolean inPairs = exercise.steps().get(i).format() == Format.PAIRS;
      if (inPairs && exercise.people().min() < 2 && file.isSound("people")) {
        add(
            "steps[" + i + "].format",
            "format",
            "pairs",
            "a pair needs two; raise people.min to 2");
      }
    }
    if (!file.has("breakout") || !file.isSound("breakout") || !file.isSound("people")) {
      return;
    }
    SizeRange size = exercise.breakout().orElseThrow();
    GroupSizes.problem(exercise.people(), size)
        .ifPresent(remedy -> add("breakout", "breakout", size.toString(), remedy));
    if (file.isSound("steps") && exercise.steps().stream().noneMatch(ExerciseRules::usesGroups)) {
      add(
          "breakout",
          "breakout",
          size.toString(),
          "no step works in small groups; strike it, or say \"format: small-groups\" in a step");
    }
  }

  private static boolean usesGroups(Step step) {
    return step.format() == Format.SMALL_GROUPS || step.per() == Per.GROUP;
  }

  private void length() {
    int most = exercise.people().max();
    if (!file.isSound("people") || !file.isSound("steps") || !exercise.serves(most)) {
      return;
    }
    Duration usual = exercise.minutes(most).typical();
    if (usual.compareTo(LONGEST) > 0) {
      add(
          "people.max",
          "people.max",
          String.valueOf(most),
          "with so many it takes "
              + ReadAloud.text(usual)
              + "; lower it, or let small groups take turns");
    }
  }

  private void spoken() {
    if (file.isSound("opening") && file.isSound("steps[0]")) {
      spoken("opening", "opening", exercise.opening(), exercise.steps().get(0), "the first step");
    }
    for (int i = 0; i < exercise.steps().size(); i++) {
      Step step = exercise.steps().get(i);
      if (file.isSound("steps[" + i + "]")) {
        spoken("steps[" + i + "].text", "text", ReadAloud.quoted(step.text()), step, "the step");
      }
    }
  }

  private void spoken(String path, String what, String text, Step step, String within) {
    int words = ReadAloud.words(text);
    Duration needed = ReadAloud.time(words);
    Duration given = step.minutes().typical();
    if (needed.compareTo(given) > 0) {
      add(
          path,
          what,
          words + (what.equals("text") ? " words to say" : " words"),
          "read aloud at "
              + ReadAloud.WORDS_A_MINUTE
              + " words a minute they take "
              + ReadAloud.text(needed)
              + ", but "
              + within
              + " usually lasts "
              + ReadAloud.text(given)
              + "; shorten them, or give the step more");
    }
  }

  private void modes() {
    boolean possible = exercise.modes().values().stream().anyMatch(mode -> mode.fit() > 0);
    if (!possible && file.isSound("modes")) {
      add("modes", "modes", "fit 0 in all three", "it can be run nowhere; raise the fit of one");
    }
  }

  private void page() {
    if (exercise.notes().watch().isEmpty() && file.isSound("watch")) {
      add("watch", "watch", "empty", "name what the facilitator keeps an eye on");
    }
    if (exercise.care().access().isEmpty() && file.isSound("access")) {
      add("access", "access", "empty", "say how everybody can take part");
    }
  }

  private void source() {
    if (exercise.source() instanceof Source.Published published
        && file.isSound("source")
        && !Citations.isDated(published.citation())) {
      add(
          "source.cite",
          "cite",
          published.citation(),
          "say who, which year and what: Author (year). Title.");
    }
  }

  private void add(String path, String what, String value, String remedy) {
    found.add(file.problem(path, what, value, remedy));
  }
}
