package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Exercise;

/** Says what one exercise hands on to a later one, and what exists at the close. */
final class CarryOver {
  private CarryOver() {}

  static List<String> sentences(Answer answer) {
    List<String> sentences = new ArrayList<>();
    List<String> links = links(answer);
    if (!links.isEmpty()) {
      sentences.add("One thing leads to the next: " + String.join("; ", links) + ".");
    }
    List<String> left = answer.goal().yields().stream().map(answer::product).toList();
    if (!left.isEmpty()) {
      sentences.add("At the close you have " + Words.list(left) + ".");
    }
    return sentences;
  }

  /** What exercises take up from the latest exercise that left it. */
  private static List<String> links(Answer answer) {
    Map<String, String> leftBy = new HashMap<>();
    Map<String, List<String>> takers = new LinkedHashMap<>();
    for (Activity activity : answer.agenda().activities()) {
      Optional<Exercise> exercise = answer.exercise(activity);
      if (exercise.isEmpty()) {
        continue;
      }
      List<String> taken = new ArrayList<>();
      for (String need : exercise.get().needs()) {
        String from = leftBy.get(need);
        if (from != null) {
          taken.add(answer.product(need) + " from " + Words.quoted(from));
        }
      }
      if (!taken.isEmpty()) {
        takers
            .computeIfAbsent(Words.list(taken), key -> new ArrayList<>())
            .add(Words.quoted(activity.title()));
      }
      exercise.get().yields().forEach(product -> leftBy.put(product, activity.title()));
    }
    List<String> links = new ArrayList<>();
    takers.forEach(
        (taken, titles) ->
            links.add(
                Words.list(titles) + (titles.size() == 1 ? " takes" : " take") + " up " + taken));
    return links;
  }
}
