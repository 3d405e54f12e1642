package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Product;
import org.arcwright.cli.words.Language;
import org.arcwright.cli.words.Said;

/** Says what one exercise hands on to a later one, and what exists at the close. */
final class CarryOver {
  private CarryOver() {}

  static List<String> sentences(Answer answer, Language language) {
    List<String> sentences = new ArrayList<>();
    List<String> links = links(answer, language);
    if (!links.isEmpty()) {
      sentences.add(language.say("why.links", String.join("; ", links)));
    }
    List<String> left =
        answer.goal().yields().stream().map(id -> product(answer, language, id)).toList();
    if (!left.isEmpty()) {
      sentences.add(language.say("why.left", language.list(left)));
    }
    return sentences;
  }

  /** What exercises take up from the latest exercise that left it. */
  private static List<String> links(Answer answer, Language language) {
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
          taken.add(language.say("why.taken", product(answer, language, need), from));
        }
      }
      if (!taken.isEmpty()) {
        takers
            .computeIfAbsent(language.list(taken), key -> new ArrayList<>())
            .add(language.say("why.title", activity.title()));
      }
      exercise.get().yields().forEach(product -> leftBy.put(product, activity.title()));
    }
    List<String> links = new ArrayList<>();
    takers.forEach(
        (taken, titles) ->
            links.add(language.say("why.link", language.list(titles), titles.size(), taken)));
    return links;
  }

  private static String product(Answer answer, Language language, String id) {
    Product product = answer.catalog().products().get(id);
    String title = product == null ? id : product.title();
    // English puts its article before the catalog's title; a translation brings its own.
    return language.say(
        "why.product", language.isEnglish() ? title : language.said(Said.PRODUCT, title));
  }
}
