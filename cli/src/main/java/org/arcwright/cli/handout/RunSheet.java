package org.arcwright.cli.handout;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Speaker;
import org.arcwright.catalog.Step;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Facts;
import org.arcwright.cli.page.Block.Part;
import org.arcwright.cli.page.Block.Picture;
import org.arcwright.cli.page.Block.Point;
import org.arcwright.cli.page.Block.Points;
import org.arcwright.cli.page.Block.Room;
import org.arcwright.cli.page.Block.Steps;
import org.arcwright.cli.page.Block.Words;
import org.arcwright.cli.page.Pages;
import org.arcwright.cli.page.Resource;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.picture.ArcPicture;
import org.arcwright.cli.picture.ArcPicture.Size;
import org.arcwright.cli.words.Language;
import org.arcwright.standin.StandIns;
import org.arcwright.standin.Swap;
import org.arcwright.standin.ToolLoss;

/**
 * What the facilitator runs the day from: times, words to begin with, steps with their minutes for
 * so many people, cues and cautions. The page knows the clock.
 */
public final class RunSheet {
  private static final String TEMPLATE = "run-sheet.ftlh";

  /** Music that has hardly begun when it ends only disturbs: common practice, no source. */
  private static final Duration WORTH_MUSIC = Duration.ofMinutes(2);

  private final Workshop workshop;
  private final StandIns standIns;
  private final Language language;
  private final Agenda agenda;

  /**
   * An item of the day.
   *
   * @param id of the item within the page
   * @param title with its number
   * @param span from when to when
   * @param from minutes from the start
   * @param minutes how long
   * @param before what stands above the steps
   * @param steps what is done, in order
   * @param after what stands below the steps
   */
  public record Item(
      String id,
      String title,
      String span,
      long from,
      long minutes,
      List<Block> before,
      List<Timed> steps,
      List<Block> after) {}

  /**
   * A step.
   *
   * @param label minutes, who speaks and how people sit
   * @param text what is done
   * @param seconds how long
   */
  public record Timed(String label, String text, long seconds) {}

  private RunSheet(Workshop workshop, StandIns standIns) {
    this.workshop = workshop;
    this.standIns = standIns;
    this.language = workshop.language();
    this.agenda = workshop.agenda();
  }

  /** The sheet for paper and for Markdown. */
  public static Sheet of(Workshop workshop, StandIns standIns) {
    RunSheet run = new RunSheet(workshop, standIns);
    List<Block> blocks = new ArrayList<>();
    for (Item item : run.items()) {
      List<Block> content = new ArrayList<>(item.before());
      if (!item.steps().isEmpty()) {
        content.add(
            new Steps(item.steps().stream().map(s -> Point.of(s.label(), s.text())).toList()));
      }
      content.addAll(item.after());
      String title = run.language.say("run.item", item.span(), item.title());
      blocks.add(new Part(item.id(), title, false, content));
    }
    blocks.add(run.parkingLot());
    return run.sheet(blocks);
  }

  /** The page that knows the clock. */
  public static String html(Workshop workshop, StandIns standIns, Pages pages) {
    RunSheet run = new RunSheet(workshop, standIns);
    Map<String, Object> more =
        Map.of(
            "items",
            run.items(),
            "picture",
            new Picture(
                ArcPicture.draw(run.agenda, run.language, "arc-", Size.LARGE, run.agenda.cap()),
                List.of()),
            "lot",
            run.parkingLot(),
            "begins",
            run.agenda
                .start()
                .map(start -> String.valueOf(start.toInstant().toEpochMilli()))
                .orElse(""));
    return pages.html(TEMPLATE, run.sheet(List.of()), Resource.text("run-sheet.js"), more);
  }

  private Sheet sheet(List<Block> blocks) {
    return new Sheet(agenda.title(), language.say("run.kicker"), workshop.facts(), blocks);
  }

  private Part parkingLot() {
    return Part.of(
        "parking-lot",
        language.say("run.parking-lot"),
        new Room(language.say("run.parking-lot.how"), 5));
  }

  private List<Item> items() {
    List<Item> items = new ArrayList<>();
    int number = 0;
    for (AgendaItem item : agenda.items()) {
      if (item instanceof Activity activity) {
        items.add(activity(activity, ++number, items.size()));
      } else if (item instanceof Pause pause) {
        String title = language.pause(pause.meal());
        items.add(
            item(
                language.capital(title),
                item,
                items.size(),
                List.of(
                    new Block.Text(language.say(pause.meal() ? "run.meal.how" : "run.pause.how"))),
                List.of(),
                List.of()));
      }
    }
    return items;
  }

  private Item item(
      String title,
      AgendaItem item,
      int index,
      List<Block> before,
      List<Timed> steps,
      List<Block> after) {
    return new Item(
        "item-" + (index + 1),
        title,
        workshop.hours().span(item.start(), item.end()),
        item.start().toMinutes(),
        item.length().toMinutes(),
        before,
        steps,
        after);
  }

  private Item activity(Activity activity, int number, int index) {
    String title = language.say("agenda.numbered", number, activity.title());
    Optional<Exercise> known = workshop.exercise(activity);
    if (known.isEmpty()) {
      return item(
          title,
          activity,
          index,
          List.of(new Block.Text(language.say("run.own"))),
          List.of(),
          List.of());
    }
    Exercise exercise = known.get();
    return item(
        title,
        activity,
        index,
        before(activity, exercise, index),
        steps(workshop, exercise, activity.length()),
        after(activity, exercise));
  }

  private List<Block> before(Activity activity, Exercise exercise, int index) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Text(exercise.purpose()));
    List<Point> facts = new ArrayList<>();
    facts.add(
        Point.of(
            language.say("run.kind"),
            activity.kind().map(kind -> language.name("kind", kind)).orElse("")));
    workshop
        .groups(exercise)
        .map(workshop::split)
        .ifPresent(groups -> facts.add(Point.of(language.say("run.groups"), groups)));
    List<String> tools = exercise.in(agenda.mode()).tools().stream().map(workshop::tool).toList();
    if (!tools.isEmpty()) {
      String key = agenda.mode() == Mode.IN_PERSON ? "run.at-hand" : "run.producer";
      facts.add(Point.of(language.say(key), language.list(tools)));
    }
    if (!exercise.notes().materials().isEmpty()) {
      facts.add(
          Point.of(language.say("run.ready"), language.sentences(exercise.notes().materials())));
    }
    standIns(index).forEach(facts::add);
    facts.add(Point.of(language.say("run.here"), exercise.in(agenda.mode()).adaptation()));
    blocks.add(new Facts(facts));
    blocks.addAll(Care.notes(workshop, exercise));
    blocks.add(new Words(List.of(exercise.opening())));
    return blocks;
  }

  /** What to do instead, and without which tools. */
  private List<Point> standIns(int place) {
    Map<String, List<String>> without = new LinkedHashMap<>();
    for (ToolLoss loss : standIns.tools()) {
      for (Swap swap : loss.swaps()) {
        if (swap.place() == place && swap.standIn().isPresent()) {
          without
              .computeIfAbsent(swap.standIn().get().title(), title -> new ArrayList<>())
              .add(workshop.tool(loss.tool()));
        }
      }
    }
    List<String> said = new ArrayList<>();
    without.forEach(
        (title, tools) -> said.add(language.say("run.stand-in.for", title, language.any(tools))));
    return said.isEmpty()
        ? List.of()
        : List.of(Point.of(language.say("run.stand-in"), String.join(" ", said)));
  }

  /**
   * The steps in half minutes, stretched or squeezed to the time that the agenda gives; rounding
   * never loses any of it.
   */
  static List<Timed> steps(Workshop workshop, Exercise exercise, Duration length) {
    int people = workshop.agenda().people();
    Language language = workshop.language();
    double all = 0;
    for (Step step : exercise.steps()) {
      all += seconds(step, exercise, people);
    }
    List<Timed> timed = new ArrayList<>();
    double sofar = 0;
    long before = 0;
    for (Step step : exercise.steps()) {
      sofar += seconds(step, exercise, people);
      long until = all == 0 ? 0 : Math.round(length.toSeconds() * sofar / all / 30) * 30;
      String label =
          language.say(
              "run.step",
              (until - before) / 60.0,
              language.name("speaker", step.speaker()),
              language.name("format", step.format()));
      timed.add(new Timed(label, step.text(), until - before));
      before = until;
    }
    return timed;
  }

  private static double seconds(Step step, Exercise exercise, int people) {
    Duration typical = step.minutes().typical();
    return (double) typical.toSeconds() * step.times(people, exercise.breakout());
  }

  private static boolean isLongSilence(Step step) {
    return step.format() == Format.SOLO
        && step.speaker() == Speaker.NOBODY
        && step.minutes().typical().compareTo(WORTH_MUSIC) >= 0;
  }

  /** The first later exercise that builds on what this one leaves. */
  private Optional<Activity> next(Activity activity, Exercise exercise) {
    return agenda.activities().stream()
        .filter(later -> later.start().compareTo(activity.start()) > 0)
        .filter(
            later ->
                workshop.exercise(later).stream()
                    .flatMap(known -> known.needs().stream())
                    .anyMatch(exercise.yields()::contains))
        .findFirst();
  }

  private List<Block> after(Activity activity, Exercise exercise) {
    List<Point> cues = new ArrayList<>();
    if (exercise.steps().stream().anyMatch(RunSheet::isLongSilence)) {
      cues.add(Point.of(language.say("run.cue.music")));
    }
    if (exercise.openness() > 0 && agenda.mode() != Mode.IN_PERSON) {
      cues.add(Point.of(language.say("run.cue.camera")));
    }
    exercise.notes().watch().forEach(watch -> cues.add(Point.of(language.say("run.watch"), watch)));
    exercise.notes().tips().forEach(tip -> cues.add(Point.of(language.say("run.tip"), tip)));
    next(activity, exercise)
        .ifPresent(
            next ->
                cues.add(
                    Point.of(
                        language.say(
                            "run.cue.ask", next.title(), workshop.hours().at(next.start())))));
    cues.add(Point.of(language.say("run.carry"), exercise.notes().carryOver()));
    return List.of(new Points(cues));
  }
}
