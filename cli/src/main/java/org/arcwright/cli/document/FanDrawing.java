package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.cli.picture.Svg;
import org.arcwright.forecast.Forecast;

/**
 * The fan of a forecast as an SVG picture: planned time runs left to right, minutes behind the plan
 * bottom to top; exercises stand on the ground line with their numbers, a break is a gap in it, and
 * the close is open. It needs no colour: bands are told apart by their greys and the lines at their
 * edges, each edge is labelled, and a text says the same for those who cannot see it.
 */
public final class FanDrawing {
  private static final int WIDTH = 960;
  private static final int LEFT = 88;
  private static final int RIGHT = 800;
  private static final int TOP = 68;
  private static final int BOTTOM = 380;
  private static final int LINE = 18;
  private static final int MOST_LEVELS = 7;

  /** Points on which a character of the time axis would stand. */
  private static final int CHARACTER = 10;

  private final Forecast forecast;
  private final Agenda agenda;
  private final Fan fan;
  private final TimeAxis axis;
  private final Clock clock;
  private final ForecastWords words;
  private final int least;
  private final int most;
  private final List<String> titles;
  private final Svg svg;

  private FanDrawing(Forecast forecast) {
    this.forecast = forecast;
    this.agenda = forecast.agenda();
    this.fan = Fan.of(forecast);
    this.axis = new TimeAxis(agenda, (RIGHT - LEFT) / CHARACTER);
    this.clock = new Clock(agenda.start());
    this.words = new ForecastWords(forecast);
    this.least = Math.min(fan.least(), -5);
    this.most = Math.max(fan.most(), 10);
    this.titles = titles(agenda);
    this.svg =
        new Svg(
            WIDTH,
            BOTTOM + 84 + LINE * ((titles.size() + 1) / 2),
            "font-size=\"13\" fill=\"#000\"",
            agenda.title() + ": when it will really end",
            description());
  }

  /** The picture, complete in itself. */
  public static String svg(Forecast forecast) {
    FanDrawing drawing = new FanDrawing(forecast);
    drawing.draw();
    return Words.untied(drawing.svg.end());
  }

  private void draw() {
    text(LEFT, 24, "start", 16, agenda.title());
    text(LEFT, 44, "start", 13, words.onTime());
    levels();
    bands();
    promise();
    ground();
    for (int i = 0; i < titles.size(); i++) {
      int column = i % 2 == 0 ? LEFT : WIDTH / 2;
      text(column, BOTTOM + 84 + LINE * (i / 2), "start", 13, titles.get(i));
    }
  }

  /** What the picture shows, in words. */
  private String description() {
    List<String> sentences = new ArrayList<>();
    sentences.add(words.onTime());
    sentences.add(words.free(Optional.empty()));
    for (int percent : new int[] {5, 20, 50, 80, 95}) {
      sentences.add("Done by " + clock.at(forecast.end(percent)) + " with " + percent + " %.");
    }
    sentences.addAll(words.breaks());
    sentences.add(words.risk());
    return String.join(" ", sentences);
  }

  private static List<String> titles(Agenda agenda) {
    List<String> titles = new ArrayList<>();
    for (Activity activity : agenda.activities()) {
      titles.add(
          (titles.size() + 1) + "  " + activity.title() + ", " + Words.time(activity.length()));
    }
    return titles;
  }

  /** Lines across at round numbers of minutes. */
  private void levels() {
    int step = Fan.step(most - least, MOST_LEVELS);
    for (int late = -(-least / step) * step; late <= most; late += step) {
      level(late, "0.25");
      String minutes = Math.abs(late) + (late > 0 ? " min late" : " min early");
      text(LEFT - 8, round(place(late)) + 4, "end", 13, late == 0 ? "on plan" : minutes);
    }
  }

  private void level(int late, String stroke) {
    svg.add(
        "<line x1=\"%d\" x2=\"%d\" y1=\"%s\" y2=\"%s\" stroke=\"#000\" stroke-width=\"%s\"/>",
        LEFT, RIGHT, y(late), y(late), stroke);
  }

  private void bands() {
    band(0, 4, "#dcdcdc");
    band(1, 3, "#b0b0b0");
    String[] dashes = {"2 3", "6 3", "", "6 3", "2 3"};
    int[] percents = {5, 20, 50, 80, 95};
    double[] labels = labels();
    for (int line = 0; line < Fan.LINES; line++) {
      svg.add(
          "<polyline points=\"%s\" fill=\"none\" stroke=\"#000\" stroke-width=\"%s\"%s/>",
          edge(line).trim(),
          line == Fan.MIDDLE ? "2" : "1",
          dashes[line].isEmpty() ? "" : " stroke-dasharray=\"" + dashes[line] + "\"");
      String by = percents[line] + " % by " + clock.at(forecast.end(percents[line]));
      text(RIGHT + 8, round(labels[line]), "start", 13, by);
    }
  }

  /** Where the five labels stand: beside their lines, but never on each other. */
  private double[] labels() {
    List<Integer> late = fan.points().get(fan.points().size() - 1).late();
    double[] labels = new double[Fan.LINES];
    for (int line = 0; line < Fan.LINES; line++) {
      double own = place(late.get(line)) + 4;
      labels[line] = line == 0 ? own : Math.min(own, labels[line - 1] - LINE);
    }
    return labels;
  }

  private void band(int lower, int upper, String grey) {
    StringBuilder corners = new StringBuilder(edge(upper));
    List<Fan.Point> back = new ArrayList<>(fan.points());
    Collections.reverse(back);
    for (Fan.Point point : back) {
      corners.append(x(point.planned())).append(',').append(y(point.late().get(lower))).append(' ');
    }
    svg.add("<polygon points=\"%s\" fill=\"%s\"/>", corners.toString().trim(), grey);
  }

  private String edge(int line) {
    StringBuilder corners = new StringBuilder();
    for (Fan.Point point : fan.points()) {
      corners.append(x(point.planned())).append(',').append(y(point.late().get(line))).append(' ');
    }
    return corners.toString();
  }

  /** The plan, and how late the last item may be over. */
  private void promise() {
    level(0, "1");
    svg.add(
        "<line x1=\"%d\" x2=\"%d\" y1=\"%s\" y2=\"%s\" stroke=\"#000\" stroke-width=\"1.5\""
            + " stroke-dasharray=\"10 4\"/>",
        LEFT, RIGHT, y(fan.slack()), y(fan.slack()));
    String met = "below this line the end at " + clock.at(forecast.promised()) + " is kept";
    text(LEFT + 8, round(place(fan.slack())) - 6, "start", 13, met);
  }

  /** Exercises with their numbers, breaks as gaps, and the times of day. */
  private void ground() {
    int number = 0;
    for (Activity activity : agenda.activities()) {
      int from = Answer.minutes(activity.start());
      svg.add(
          "<line x1=\"%s\" x2=\"%s\" y1=\"%d\" y2=\"%d\" stroke=\"#000\" stroke-width=\"3\"/>",
          x(from + 0.5), x(Answer.minutes(activity.end()) - 0.5), BOTTOM + 12, BOTTOM + 12);
      double middle = across((from + Answer.minutes(activity.end())) / 2.0);
      text(round(middle), BOTTOM + 30, "middle", 13, String.valueOf(++number));
    }
    svg.add(
        "<line x1=\"%s\" x2=\"%d\" y1=\"%d\" y2=\"%d\" stroke=\"#000\" stroke-width=\"3\""
            + " stroke-dasharray=\"3 4\"/>",
        x(Answer.minutes(agenda.end())), RIGHT, BOTTOM + 12, BOTTOM + 12);
    int step = axis.tickMinutes();
    for (int minute = 0; minute <= Answer.minutes(agenda.cap()); minute += step) {
      String at = clock.at(Duration.ofMinutes(minute));
      text(round(across(minute)), BOTTOM + 52, "middle", 13, at);
    }
  }

  private String x(double minute) {
    return tenths(across(minute));
  }

  private String y(double late) {
    return tenths(place(late));
  }

  private double across(double minute) {
    double cap = Math.max(1, Answer.minutes(agenda.cap()));
    return LEFT + (RIGHT - LEFT) * Math.min(1, minute / cap);
  }

  private double place(double late) {
    return BOTTOM - (BOTTOM - TOP) * (late - least) / (most - least);
  }

  private static int round(double value) {
    return (int) Math.round(value);
  }

  private static String tenths(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private void text(int x, int y, String anchor, int size, String text) {
    svg.text(x, y, "text-anchor=\"%s\" font-size=\"%d\"".formatted(anchor, size), text);
  }
}
