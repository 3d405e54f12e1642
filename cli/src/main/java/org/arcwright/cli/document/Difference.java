package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToLongFunction;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Tool;
import org.arcwright.compose.Options.Option;
import org.arcwright.compose.Profile;

/** Says in one sentence what sets an option apart from all others, from their figures. */
final class Difference {
  /** Most things said of one option. */
  private static final int MOST = 3;

  /** Minutes under which a difference is not worth a word. */
  private static final int FEW_MINUTES = 5;

  private final List<Option> options;
  private final List<Answer> answers;
  private final int number;
  private final Profile own;
  private final List<Profile> others = new ArrayList<>();
  private final List<Said> said = new ArrayList<>();

  /** Something that is true of this option alone, and how much that tells. */
  private record Said(String text, double weight) {}

  private Difference(List<Option> options, List<Answer> answers, int number) {
    this.options = options;
    this.answers = answers;
    this.number = number;
    this.own = options.get(number).profile();
    for (int i = 0; i < options.size(); i++) {
      if (i != number) {
        others.add(options.get(i).profile());
      }
    }
  }

  /** The sentence on the option of that number, from 0. */
  static String sentence(List<Option> options, List<Answer> answers, int number) {
    return new Difference(options, answers, number).sentence();
  }

  private String sentence() {
    if (others.isEmpty()) {
      return "There is nothing to compare it with.";
    }
    minutes(profile -> profile.talking().toMinutes(), "gives people", "to talk", 1);
    minutes(profile -> profile.alone().toMinutes(), "has", "of working alone", 1);
    minutes(profile -> profile.work().toMinutes(), "has", "of work", 0.5);
    minutes(profile -> profile.resting().toMinutes(), "has", "of breaks", 1);
    energy();
    openness();
    tools();
    formats();
    said.sort(Comparator.comparingDouble(Said::weight).reversed());
    List<String> parts = new ArrayList<>();
    said.stream().limit(MOST).forEach(s -> parts.add(s.text));
    ownExercise().ifPresent(parts::add);
    return parts.isEmpty()
        ? "In figures it is much like the others; what differs is which exercises it has."
        : Words.sentence(String.join("; ", parts)) + ".";
  }

  /** Minutes that are more, or less, than those of every other option. */
  private void minutes(ToLongFunction<Profile> of, String verb, String what, double weight) {
    long mine = of.applyAsLong(own);
    long most = others.stream().mapToLong(of).max().orElse(mine);
    long least = others.stream().mapToLong(of).min().orElse(mine);
    long apart = mine > most ? mine - most : mine < least ? mine - least : 0;
    if (Math.abs(apart) >= FEW_MINUTES) {
      int difference = (int) Math.abs(apart);
      said.add(
          new Said(
              verb
                  + " "
                  + Words.time((int) mine)
                  + " "
                  + what
                  + ", "
                  + Words.time(difference)
                  + (apart > 0 ? " more" : " less")
                  + " than any other",
              weight * difference));
    }
  }

  private void energy() {
    int most = others.stream().mapToInt(Profile::energyFit).max().orElse(0);
    int least = others.stream().mapToInt(Profile::energyFit).min().orElse(0);
    if (own.energyFit() > most) {
      said.add(
          new Said(
              "keeps closest to the energy you wished for (" + own.energyFit() + " %)",
              4.0 * (own.energyFit() - most)));
    } else if (own.energyFit() < least) {
      said.add(
          new Said(
              "strays furthest from the energy you wished for (" + own.energyFit() + " %)",
              4.0 * (least - own.energyFit())));
    }
  }

  private void openness() {
    if (others.stream().allMatch(other -> other.openness() < own.openness())) {
      said.add(new Said("asks people for the most openness", 25));
    } else if (others.stream().allMatch(other -> other.openness() > own.openness())) {
      said.add(new Said("asks people for the least openness", 25));
    }
  }

  private void tools() {
    Set<String> only = new TreeSet<>(own.tools());
    Set<String> without = new TreeSet<>(others.get(0).tools());
    for (Profile other : others) {
      only.removeAll(other.tools());
      without.retainAll(other.tools());
    }
    without.removeAll(own.tools());
    if (!without.isEmpty()) {
      said.add(new Said("does without " + titles(without) + ", which all others need", 22));
    }
    if (!only.isEmpty()) {
      said.add(new Said("is the only one that needs " + titles(only), 18));
    }
  }

  private String titles(Set<String> tools) {
    Map<String, Tool> known = answers.get(number).catalog().tools();
    return Words.list(
        tools.stream()
            .map(id -> "the " + (known.containsKey(id) ? known.get(id).title() : id))
            .toList());
  }

  private void formats() {
    for (Format format : Format.values()) {
      int mine = own.formats().getOrDefault(format, 0);
      int most = others.stream().mapToInt(p -> p.formats().getOrDefault(format, 0)).max().orElse(0);
      int least =
          others.stream().mapToInt(p -> p.formats().getOrDefault(format, 0)).min().orElse(0);
      String name = format == Format.SOLO ? "alone" : "in " + Words.format(format);
      if (mine > most + (most == 0 ? 0 : 1)) {
        said.add(
            new Said(
                "has the most exercises "
                    + name
                    + " ("
                    + mine
                    + (most == 0 ? ", the others none)" : ", the others at most " + most + ")"),
                8.0 * (mine - most)));
      } else if (mine == 0 && least > 0) {
        said.add(new Said("has no exercise " + name, 8.0 * least));
      }
    }
  }

  /** The longest exercise that no other option has. */
  private Optional<String> ownExercise() {
    Set<String> elsewhere = new HashSet<>();
    for (int i = 0; i < options.size(); i++) {
      if (i != number) {
        answers.get(i).agenda().activities().forEach(a -> elsewhere.add(a.exercise()));
      }
    }
    return answers.get(number).agenda().activities().stream()
        .filter(activity -> !elsewhere.contains(activity.exercise()))
        .max(Comparator.comparing(Activity::length))
        .map(
            activity ->
                "is the only one with "
                    + Words.quoted(activity.title())
                    + " ("
                    + Words.time(activity.length())
                    + ")");
  }
}
