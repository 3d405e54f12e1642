package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.arcwright.agenda.Figures;
import org.arcwright.agenda.Figures.Cost;
import org.arcwright.compose.Price;
import org.arcwright.compose.instance.Instance.Weights;

/** How much worse or better one agenda is than another, and what makes it so, in plain words. */
final class CostWords {
  /** Up to so many per cent of the cost the difference is hardly one, a little one, a clear one. */
  private static final int HARDLY = 2;

  private static final int A_LITTLE = 10;
  private static final int CLEARLY = 30;

  private final Weights weights;
  private final List<Part> worse = new ArrayList<>();
  private final List<Part> better = new ArrayList<>();

  /** One of two agendas: what is counted about it, and what its exercises cost by themselves. */
  record Side(Figures figures, List<Price> prices) {}

  /** A cause, and how many points it makes. */
  private record Part(String text, long points) {}

  private CostWords(Weights weights) {
    this.weights = weights;
  }

  /** {@code a little worse (35 points more than 1,990)}. */
  static String verdict(Cost before, Cost after) {
    long more = after.total() - before.total();
    if (more == 0) {
      return "just as good";
    }
    long part = 100 * Math.abs(more);
    String how =
        part <= HARDLY * before.total()
            ? "hardly "
            : part <= A_LITTLE * before.total()
                ? "a little "
                : part <= CLEARLY * before.total() ? "clearly " : "much ";
    return how
        + (more > 0 ? "worse (" : "better (")
        + Words.grouped(Math.abs(more))
        + (Math.abs(more) == 1 ? " point " : " points ")
        + (more > 0 ? "more than " : "less than ")
        + Words.grouped(before.total())
        + ")";
  }

  /**
   * What makes the difference, what is worse first: {@code one break more; in return the format
   * changes more often}. Nothing if nothing differs.
   *
   * @param weights by which both were weighed
   * @param title of an exercise by its id, in quotes
   */
  static String causes(Side before, Side after, Weights weights, UnaryOperator<String> title) {
    CostWords words = new CostWords(weights);
    words.compare(before.figures(), after.figures());
    words.exercises(before.prices(), after.prices(), title);
    String worse = joined(words.worse);
    String better = joined(words.better);
    return worse.isEmpty() ? better : better.isEmpty() ? worse : worse + "; in return " + better;
  }

  private static String joined(List<Part> parts) {
    parts.sort((one, other) -> Long.compare(other.points(), one.points()));
    return Words.list(parts.stream().map(Part::text).toList());
  }

  private void add(long more, String worseText, String betterText) {
    if (more > 0) {
      worse.add(new Part(worseText, more));
    } else if (more < 0) {
      better.add(new Part(betterText, -more));
    }
  }

  private void compare(Figures before, Figures after) {
    Cost one = before.cost();
    Cost other = after.cost();
    boolean shown =
        Long.signum(other.energy() - one.energy())
            == Integer.signum(before.energyFit() - after.energyFit());
    String fit =
        shown ? " (" + after.energyFit() + " % instead of " + before.energyFit() + " %)" : "";
    add(
        other.energy() - one.energy(),
        "energy keeps less to what you wish for" + fit,
        "energy keeps better to what you wish for" + fit);
    long share = other.share() - one.share();
    String shareMinutes = minutes(share, weights.share());
    add(
        share,
        "the phases stray " + shareMinutes + " further from their share of the time",
        "the phases keep nearer to their share of the time, by " + shareMinutes);
    add(
        other.lengths() - one.lengths(),
        "exercises are hurried or drawn out more",
        "exercises keep nearer to their usual length");
    add(
        other.monotony() - one.monotony(),
        "the same format comes twice in a row more often",
        "the format changes more often");
    long rhythm = other.rhythm() - one.rhythm();
    String rhythmMinutes = minutes(rhythm, weights.rhythm());
    add(
        rhythm,
        "work between breaks is too short, by " + rhythmMinutes + " more",
        "work between breaks is less often too short, by " + rhythmMinutes);
    long pauses = weights.pause() == 0 ? 0 : (other.pauses() - one.pauses()) / weights.pause();
    String breaks = Words.count((int) Math.abs(pauses), "break", "breaks");
    add(other.pauses() - one.pauses(), breaks + " more", breaks + " fewer");
    long idle = other.idle() - one.idle();
    String idleMinutes = minutes(idle, weights.idle());
    add(idle, idleMinutes + " more are left over", idleMinutes + " less are left over");
  }

  private static String minutes(long points, int weight) {
    return weight == 0 ? "" : Words.time((int) (Math.abs(points) / weight));
  }

  private void exercises(List<Price> before, List<Price> after, UnaryOperator<String> title) {
    Set<String> causes = new TreeSet<>();
    before.forEach(price -> causes.add(price.why()));
    after.forEach(price -> causes.add(price.why()));
    for (String why : causes) {
      Map<String, Integer> one = pointsOf(before, why);
      Map<String, Integer> other = pointsOf(after, why);
      String cause = " (" + why + ")";
      if (one.size() == pointsOf(before).size() && other.size() == pointsOf(after).size()) {
        int more = Math.abs(other.size() - one.size());
        String exercises = Words.count(more, "exercise", "exercises");
        add(sum(other) - sum(one), exercises + " more" + cause, exercises + " fewer" + cause);
      } else {
        add(
            sum(other) - sum(one),
            titles(other, one, title, " is in", " are in") + cause,
            titles(one, other, title, " is out", " are out") + cause);
      }
    }
  }

  /** What exercises cost for one cause, by their ids. */
  private static Map<String, Integer> pointsOf(List<Price> prices, String why) {
    return pointsOf(prices.stream().filter(price -> price.why().equals(why)).toList());
  }

  private static Map<String, Integer> pointsOf(List<Price> prices) {
    Map<String, Integer> points = new LinkedHashMap<>();
    prices.forEach(price -> points.merge(price.exercise(), price.points(), Integer::sum));
    return points;
  }

  private static long sum(Map<String, Integer> points) {
    return points.values().stream().mapToLong(Integer::intValue).sum();
  }

  private static String titles(
      Map<String, Integer> in,
      Map<String, Integer> out,
      UnaryOperator<String> title,
      String one,
      String several) {
    List<String> titles =
        in.keySet().stream().filter(id -> !out.containsKey(id)).map(title).toList();
    return Words.list(titles) + (titles.size() == 1 ? one : several);
  }
}
