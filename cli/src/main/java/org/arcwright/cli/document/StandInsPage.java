package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.Tool;
import org.arcwright.standin.StandIn;
import org.arcwright.standin.StandIns;
import org.arcwright.standin.Swap;
import org.arcwright.standin.ToolLoss;
import org.arcwright.standin.Turnout;

/** What to do when a tool or a person fails, as text for a terminal. */
public final class StandInsPage {
  /** More characters than that are read in the exercise itself. */
  private static final int LONGEST_LIST = 240;

  private final StandIns standIns;
  private final Agenda agenda;
  private final Catalog catalog;
  private final Style style;
  private final int width;
  private final Clock clock;
  private final List<String> lines = new ArrayList<>();

  private final long exercises;

  private StandInsPage(StandIns standIns, Catalog catalog, Style style, int width) {
    this.standIns = standIns;
    this.agenda = standIns.agenda();
    this.catalog = catalog;
    this.style = style;
    this.width = width;
    this.clock = new Clock(agenda.start());
    this.exercises =
        agenda.activities().stream()
            .filter(activity -> catalog.exercise(activity.exercise()).isPresent())
            .count();
  }

  /**
   * Writes it.
   *
   * @param catalog from which the stand-ins are
   * @param tool the only one that is asked about, if there is one
   * @param width of a line in characters, 60 or more
   */
  public static String write(
      StandIns standIns, Catalog catalog, Optional<String> tool, Style style, int width) {
    StandInsPage page = new StandInsPage(standIns, catalog, style, width);
    page.write(tool);
    return Words.untied(String.join("\n", page.lines)) + "\n";
  }

  private void write(Optional<String> tool) {
    Wrap.lines(agenda.title(), width).forEach(line -> lines.add(style.heading(line)));
    coverage(tool);
    alike().forEach(this::tools);
    if (!standIns.fewer().isEmpty()) {
      heading("If fewer people come");
      PeopleWords words = new PeopleWords(standIns);
      words.fewer().forEach(this::item);
      for (Turnout turnout : standIns.fewer()) {
        String not = PeopleWords.not(turnout);
        turnout.standIn().ifPresent(other -> swap(turnout.place(), not, other));
      }
      heading("If the sponsor does not come");
      words.sponsor().forEach(this::item);
      heading("If the producer does not come");
      producer(words);
    }
    if (standIns.covered() > 0) {
      lines.add("");
      text("catalog show prints a stand-in in full; its id stands in brackets.");
    }
  }

  private void producer(PeopleWords words) {
    for (ToolLoss loss : standIns.tools()) {
      if (!loss.swaps().isEmpty() && loss.swaps().equals(standIns.alone())) {
        words.hands().forEach(this::item);
        item("Do as without " + the(loss.tool()) + ", above: one person can lead that.");
        return;
      }
    }
    words.producer().forEach(this::item);
    swaps(standIns.alone());
  }

  private void coverage(Optional<String> tool) {
    int pairs = standIns.pairs();
    if (pairs == 0) {
      text("No exercise leans on " + tool.map(this::the).orElse("any tool") + ": go on.");
      return;
    }
    if (tool.isPresent()) {
      return;
    }
    text(
        "Each time that an exercise leans on a tool counts once: "
            + standIns.covered()
            + " of "
            + pairs
            + " have a stand-in ("
            + 100 * standIns.covered() / pairs
            + Words.tied(" %).")
            + " Those of one tool go together: use some of them or all.");
  }

  /** Tools that need not be told apart, for the same stand-ins cover all that leans on them. */
  private List<List<ToolLoss>> alike() {
    List<List<ToolLoss>> alike = new ArrayList<>();
    for (ToolLoss loss : standIns.tools()) {
      alike.stream()
          .filter(group -> group.get(0).swaps().equals(loss.swaps()))
          .filter(group -> loss.covered() == loss.swaps().size())
          .findFirst()
          .orElseGet(
              () -> {
                alike.add(new ArrayList<>());
                return alike.get(alike.size() - 1);
              })
          .add(loss);
    }
    return alike;
  }

  private void tools(List<ToolLoss> alike) {
    ToolLoss loss = alike.get(0);
    List<String> names = alike.stream().map(ToolLoss::tool).map(this::the).toList();
    heading("Without " + Words.list(names).replace(" and the ", " or the "));
    text(stopped(loss) + inAll(loss));
    swaps(loss.swaps());
    none(loss);
  }

  private String stopped(ToolLoss loss) {
    int stopped = loss.swaps().size();
    if (stopped == 1) {
      return "One exercise stops" + (loss.covered() == 1 ? ", and something stands in. " : ".");
    }
    return Words.sentence(
            (stopped == exercises ? "all " : "")
                + Words.count(stopped, "exercise stops", "exercises stop"))
        + switch (loss.covered()) {
          case 0 -> ", and nothing stands in.";
          case 1 -> "; for one of them something stands in. ";
          default ->
              "; for "
                  + (loss.covered() == stopped
                      ? "each"
                      : Words.count(loss.covered(), "of them", "of them"))
                  + " something stands in. ";
        };
  }

  /** What all stand-ins of a tool together do to the end. */
  private String inAll(ToolLoss loss) {
    if (loss.covered() == 0) {
      return "";
    }
    Duration change = Duration.ZERO;
    for (Swap swap : loss.swaps()) {
      change = change.plus(swap.standIn().map(StandIn::change).orElse(Duration.ZERO));
    }
    String then = loss.covered() == 1 ? "With it you end " : "With all of them you end ";
    return change.isZero()
        ? then + "as planned."
        : then
            + Words.time(change.abs())
            + (change.isNegative()
                ? " earlier."
                : " later, " + clock.said(agenda.end().plus(change)) + ".");
  }

  private void swaps(List<Swap> swaps) {
    swaps.forEach(swap -> swap.standIn().ifPresent(other -> swap(swap.place(), "", other)));
  }

  private void swap(int place, String not, StandIn other) {
    Activity activity = activity(place);
    String before = "  " + clock.at(activity.start()) + "  ";
    lines.addAll(
        Wrap.hanging(before, activity.title() + ", " + Words.time(activity.length()) + not, width));
    String in = " ".repeat(before.length());
    lines.addAll(
        Wrap.hanging(
            in + "> ",
            other.title()
                + ", "
                + Words.time(other.length())
                + change(other)
                + " ["
                + other.exercise()
                + "]",
            width));
    String prepare = prepare(other);
    if (!prepare.isEmpty()) {
      lines.addAll(Wrap.hanging(in + "  ", prepare, width));
    }
  }

  private static String change(StandIn other) {
    Duration change = other.change();
    return change.isZero()
        ? ", as long"
        : ", " + Words.time(change.abs()) + (change.isNegative() ? " less" : " more");
  }

  private String prepare(StandIn other) {
    List<String> parts = new ArrayList<>();
    if (!other.tools().isEmpty()) {
      parts.add("Takes " + Words.list(other.tools().stream().map(this::the).toList()) + ".");
    }
    String materials = String.join("; ", other.materials());
    if (materials.length() > LONGEST_LIST) {
      parts.add("Prepare what catalog show " + other.exercise() + " lists.");
    } else if (!materials.isEmpty()) {
      parts.add("Prepare: " + materials + (materials.matches(".*[.!?]") ? "" : "."));
    }
    return String.join(" ", parts);
  }

  /** Those without a stand-in, what to do then, and what must come out of it all the same. */
  private void none(ToolLoss loss) {
    List<Swap> bare = loss.swaps().stream().filter(swap -> swap.standIn().isEmpty()).toList();
    if (bare.isEmpty()) {
      return;
    }
    boolean all = bare.size() == exercises;
    if (!all) {
      List<String> titles = bare.stream().map(swap -> named(swap.place())).toList();
      item("Nothing in the catalog stands in for " + Words.list(titles) + ".");
    }
    item((all ? "" : "Then: ") + Workarounds.without(loss.tool()));
    if (!all) {
      bare.forEach(swap -> due(swap.place()).ifPresent(this::item));
    }
  }

  /** What later exercises take up from the one at a place. */
  private Optional<String> due(int place) {
    Optional<Exercise> exercise = catalog.exercise(activity(place).exercise());
    Set<String> products = new LinkedHashSet<>();
    List<String> takers = new ArrayList<>();
    for (AgendaItem item : agenda.items().subList(place + 1, agenda.items().size())) {
      if (exercise.isEmpty() || !(item instanceof Activity later)) {
        continue;
      }
      Set<String> taken =
          new LinkedHashSet<>(
              catalog.exercise(later.exercise()).map(Exercise::needs).orElse(Set.of()));
      taken.retainAll(exercise.get().yields());
      if (!taken.isEmpty()) {
        products.addAll(taken);
        takers.add(Words.quoted(later.title()));
      }
    }
    return takers.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "End "
                + named(place)
                + " with the "
                + Words.list(products.stream().map(this::product).toList())
                + " in writing all the same: "
                + Words.list(takers)
                + (takers.size() == 1 ? " takes" : " take")
                + " that up.");
  }

  private String named(int place) {
    Activity activity = activity(place);
    return clock.at(activity.start()) + " " + Words.quoted(activity.title());
  }

  private Activity activity(int place) {
    return (Activity) agenda.items().get(place);
  }

  private String title(String tool) {
    Tool known = catalog.tools().get(tool);
    return known == null ? tool : known.title();
  }

  private String the(String tool) {
    return "the " + title(tool);
  }

  private String product(String id) {
    Product known = catalog.products().get(id);
    return known == null ? id : known.title();
  }

  private void heading(String heading) {
    lines.add("");
    lines.add(style.heading(heading));
  }

  private void text(String text) {
    lines.addAll(Wrap.lines(text.strip(), width));
  }

  private void item(String text) {
    lines.addAll(Wrap.hanging("- ", text, width));
  }
}
