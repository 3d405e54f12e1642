package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Tool;

/** What to heed, and what to have at hand. */
final class Care {
  private Care() {}

  /** Cautions with the way to opt out, each after the title of what it is about. */
  static List<String> cautions(Answer answer) {
    List<String> lines = new ArrayList<>(answer.goal().cautions());
    for (Activity activity : answer.agenda().activities()) {
      Optional<Exercise> exercise = answer.exercise(activity);
      List<String> heed = exercise.map(e -> e.cautions(answer.brief().mode())).orElse(List.of());
      if (exercise.isPresent() && !heed.isEmpty()) {
        String cautions = String.join(" ", heed);
        String out =
            exercise
                .get()
                .optOut(answer.brief().mode())
                .map(text -> " To opt out: " + text)
                .orElse("");
        lines.add(Words.quoted(activity.title()) + ": " + cautions + out);
      }
    }
    return lines;
  }

  /** The tools that the exercises cannot do without, in words. */
  static List<String> tools(Answer answer) {
    Set<String> titles = new LinkedHashSet<>();
    for (Activity activity : answer.agenda().activities()) {
      Optional<Exercise> exercise = answer.exercise(activity);
      if (exercise.isPresent()) {
        for (String id : exercise.get().in(answer.brief().mode()).tools()) {
          Tool tool = answer.catalog().tools().get(id);
          titles.add(tool == null ? id : tool.title());
        }
      }
    }
    return List.copyOf(titles);
  }
}
