package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.AtSize;
import org.arcwright.catalog.AtSize.StepAtSize;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Layers.Origin;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Suitability;

/** An exercise as a facilitator runs it: everything that is to be said, done and heeded. */
public final class ExercisePage {
  private static final int INDENT = 2;
  private static final int CLOCK = 8;

  private final AtSize sized;
  private final Exercise exercise;
  private final List<Mode> modes;
  private final Catalog catalog;
  private final char dash;
  private final Style style;
  private final int width;
  private final StringBuilder out = new StringBuilder();

  private ExercisePage(
      AtSize sized, List<Mode> modes, Catalog catalog, char dash, Style style, int width) {
    this.sized = sized;
    this.exercise = sized.exercise();
    this.modes = modes;
    this.catalog = catalog;
    this.dash = dash;
    this.style = style;
    this.width = width;
  }

  /**
   * The page as text; ends with a line break.
   *
   * @param sized the exercise with so many people
   * @param mode where they are; nothing for all modes
   * @param origin the layer that it comes from
   * @param catalog for the words of tools and work products
   */
  public static String write(
      AtSize sized,
      Optional<Mode> mode,
      Origin origin,
      Catalog catalog,
      Marks marks,
      Style style,
      int width) {
    List<Mode> modes = mode.map(List::of).orElseGet(() -> Arrays.asList(Mode.values()));
    ExercisePage page =
        new ExercisePage(sized, modes, catalog, marks.dash(), style, Math.min(width, 100));
    page.head(origin);
    page.heed();
    page.ready();
    page.say();
    page.steps();
    page.lines("Watch for", page.exercise.notes().watch());
    page.lines("So that all can take part", page.exercise.care().access());
    page.lines("Tips", page.exercise.notes().tips());
    page.lines("Carry over", List.of(page.exercise.notes().carryOver()));
    page.lines("Source", List.of(ShelfWords.source(page.exercise.source())));
    return Words.untied(page.out.toString());
  }

  private void head(Origin origin) {
    out.append(style.heading(exercise.title())).append('\n');
    paragraph(exercise.purpose(), 0);
    out.append('\n');
    paragraph(
        "For "
            + ShelfWords.people(sized.people())
            + ": "
            + ShelfWords.range(sized.minutes(), dash)
            + ". It serves "
            + ShelfWords.people(exercise.people(), dash)
            + exercise
                .breakout()
                .map(size -> " people, in groups of " + ShelfWords.people(size, dash) + ".")
                .orElse(" people."),
        0);
    paragraph(
        Words.sentence(exercise.kind().word())
            + ", energy "
            + ShelfWords.energy(exercise.energy())
            + ", openness "
            + ShelfWords.openness(exercise.openness())
            + (exercise.moves() ? ", moves bodies." : "."),
        0);
    paragraph(
        "Before it: "
            + ShelfWords.products(exercise.needs(), catalog)
            + ". After it: "
            + ShelfWords.products(exercise.yields(), catalog)
            + ".",
        0);
    String below =
        origin.below().isEmpty() ? "" : ", in place of the one from " + origin.below().get(0);
    paragraph("Id " + exercise.id() + ", from " + origin.layer() + below + ".", 0);
  }

  private void heed() {
    List<String> cautions = new ArrayList<>(exercise.care().cautions());
    for (Mode mode : modes) {
      for (String caution : exercise.in(mode).cautions()) {
        cautions.add(modes.size() == 1 ? caution : ShelfWords.mode(mode) + ": " + caution);
      }
    }
    modes.stream()
        .flatMap(mode -> exercise.optOut(mode).stream())
        .findFirst()
        .ifPresent(way -> cautions.add("To opt out, say: " + Words.quoted(way)));
    lines("Heed", cautions);
  }

  private void ready() {
    out.append('\n').append(style.heading("Have ready")).append('\n');
    for (Mode mode : modes) {
      Suitability suitability = exercise.in(mode);
      String tools =
          suitability.fit() == 0 || suitability.tools().isEmpty()
              ? ""
              : ": " + ShelfWords.tools(suitability.tools(), catalog);
      item(
          ShelfWords.mode(mode)
              + " ("
              + ShelfWords.fit(suitability.fit())
              + ")"
              + tools
              + ". "
              + suitability.adaptation());
    }
    exercise.notes().materials().forEach(this::item);
  }

  private void say() {
    out.append('\n').append(style.heading("Say, to start")).append('\n');
    paragraph(Words.quoted(exercise.opening()), INDENT);
  }

  private void steps() {
    out.append('\n').append(style.heading("Steps")).append('\n');
    Duration at = Duration.ZERO;
    for (StepAtSize step : sized.steps()) {
      List<String> parts = new ArrayList<>();
      parts.add(ShelfWords.range(step.minutes(), dash));
      parts.addAll(ShelfWords.turns(step));
      parts.add(ShelfWords.seating(step));
      parts.add(ShelfWords.speaker(step.step()));
      String clock = " ".repeat(INDENT) + Wrap.left(ShelfWords.clock(at), CLOCK - INDENT);
      String head = String.join("; ", parts);
      for (String line : Wrap.hanging(clock, head, width)) {
        out.append(style.faint(line)).append('\n');
      }
      paragraph(step.step().text(), CLOCK);
      at = at.plus(step.minutes().typical());
    }
    String end = " ".repeat(INDENT) + Wrap.left(ShelfWords.clock(at), CLOCK - INDENT) + "end";
    out.append(style.faint(end)).append('\n');
  }

  private void lines(String heading, List<String> texts) {
    if (!texts.isEmpty()) {
      out.append('\n').append(style.heading(heading)).append('\n');
      texts.forEach(this::item);
    }
  }

  private void item(String text) {
    Wrap.hanging("  - ", text, width).forEach(line -> out.append(line).append('\n'));
  }

  private void paragraph(String text, int indent) {
    for (String line : Wrap.lines(text, width - indent)) {
      out.append(" ".repeat(indent)).append(line).append('\n');
    }
  }
}
