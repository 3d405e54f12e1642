package org.arcwright.cli.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Areas of a board in the order in which they are used, from top to bottom. What stays covered is
 * hatched; what is carried over from one area to another is an arrow with its name.
 */
public final class BoardPicture {
  private static final int WIDTH = 960;
  private static final int LEFT = 8;
  private static final int RIGHT = 630;
  private static final int LANES = 822;
  private static final int LAST_LANE = 946;
  private static final int COVER = 26;
  private static final int LEAST = 70;
  private static final int GAP = 14;
  private static final int IN = 22;
  private static final int OUT = 12;
  private static final double CHARACTER = 6.4;
  private static final double BOLD = 8.2;

  private final String name;
  private final List<Area> areas;
  private final List<Arrow> arrows;
  private final int[] top;
  private final Svg svg;

  /**
   * A piece of the board.
   *
   * @param title with its number
   * @param when until when it is covered, or that it is open
   * @param covered whether it is covered at first
   * @param holds what stands in it, in one or two short lines
   */
  public record Area(String title, String when, boolean covered, List<String> holds) {
    /** Copies the list. */
    public Area {
      holds = List.copyOf(holds);
    }
  }

  /**
   * Something carried over.
   *
   * @param from index of the area that it comes from
   * @param to index of the later area where it is needed
   * @param what it is
   */
  public record Arrow(int from, int to, String what) {}

  private BoardPicture(
      String name, String title, String text, List<Area> areas, List<Arrow> arrows) {
    this.name = name;
    this.areas = areas;
    this.arrows = arrows;
    this.top = new int[areas.size() + 1];
    top[0] = GAP;
    for (int i = 0; i < areas.size(); i++) {
      int least = GAP + IN * entering(i).size() + OUT * leaving(i).size();
      top[i + 1] = top[i] + Math.max(LEAST, least) + GAP;
    }
    this.svg = Svg.inPage(name, WIDTH, top[areas.size()], "font-size=\"12\"", title, text);
  }

  /**
   * The picture, to stand in a page.
   *
   * @param name the beginning of all ids in it, unlike that of any other picture on the page
   * @param title what it shows
   * @param text what says the same in words
   */
  public static String draw(
      String name, String title, String text, List<Area> areas, List<Arrow> arrows) {
    BoardPicture picture = new BoardPicture(name, title, text, areas, arrows);
    picture.draw();
    return picture.svg.end();
  }

  private List<Arrow> entering(int area) {
    return arrows.stream().filter(arrow -> arrow.to() == area).toList();
  }

  private List<Arrow> leaving(int area) {
    return arrows.stream().filter(arrow -> arrow.from() == area).toList();
  }

  private void draw() {
    svg.add(
        "<defs><pattern id=\"%sp\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\">"
            + "<path d=\"M-2 2 2 -2M0 8 8 0M6 10 10 6\" class=\"arc-hatch\" fill=\"none\""
            + " stroke=\"#555\" stroke-width=\"1.1\"/></pattern></defs>",
        name);
    for (int i = 0; i < areas.size(); i++) {
      area(areas.get(i), top[i], top[i + 1] - GAP - top[i]);
    }
    List<Integer> busy = new ArrayList<>();
    List<Integer> lanes = new ArrayList<>();
    for (Arrow arrow : arrows) {
      lanes.add(lane(arrow, busy));
    }
    int apart = Math.min(18, (LAST_LANE - LANES) / Math.max(1, busy.size()));
    for (int i = 0; i < arrows.size(); i++) {
      arrow(arrows.get(i), LANES + apart * lanes.get(i));
    }
  }

  /** The first lane that is free again above the arrow's start. */
  private int lane(Arrow arrow, List<Integer> busy) {
    for (int lane = 0; lane < busy.size(); lane++) {
      if (busy.get(lane) < start(arrow)) {
        busy.set(lane, end(arrow));
        return lane;
      }
    }
    busy.add(end(arrow));
    return busy.size() - 1;
  }

  private int start(Arrow arrow) {
    int number = leaving(arrow.from()).indexOf(arrow);
    return top[arrow.from() + 1] - GAP - OUT * (number + 1) + 2;
  }

  private int end(Arrow arrow) {
    return top[arrow.to()] + IN * (entering(arrow.to()).indexOf(arrow) + 1);
  }

  private void area(Area area, int y, int height) {
    svg.add(
        "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" class=\"arc-bar\" fill=\"#f4f4f4\"/>",
        LEFT, y, RIGHT - LEFT, height);
    if (area.covered()) {
      svg.add(
          "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"url(#%sp)\"/>",
          LEFT, y, COVER, height, name);
    }
    svg.add(
        "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" class=\"arc-line\" fill=\"none\""
            + " stroke=\"#000\" stroke-width=\"1.5\"/>",
        LEFT, y, RIGHT - LEFT, height);
    int x = LEFT + COVER + 12;
    int whenWidth = (int) (area.when().length() * CHARACTER) + 24;
    String ink = "class=\"arc-ink\" fill=\"#000\"";
    svg.text(
        x,
        y + 22,
        ink + " font-weight=\"bold\" font-size=\"14\"",
        fit(area.title(), RIGHT - x - whenWidth, BOLD));
    svg.text(
        RIGHT - 12, y + 22, "text-anchor=\"end\" class=\"arc-soft\" fill=\"#444\"", area.when());
    int line = y + 42;
    for (String text : area.holds()) {
      svg.text(x, line, ink, fit(text, RIGHT - x - 10, CHARACTER));
      line += 17;
    }
  }

  private void arrow(Arrow arrow, int lane) {
    int from = start(arrow);
    int to = end(arrow);
    svg.add(
        "<path d=\"M%d %dH%dQ%d %d %d %dV%dQ%d %d %d %dH%d\" class=\"arc-line\" fill=\"none\""
            + " stroke=\"#000\" stroke-width=\"1.5\"/>",
        RIGHT, from, lane - 6, lane, from, lane, from + 6, to - 6, lane, to, lane - 6, to,
        RIGHT + 9);
    svg.add("<circle cx=\"%d\" cy=\"%d\" r=\"3\" class=\"arc-ink\" fill=\"#000\"/>", RIGHT, from);
    svg.add("<path d=\"M%d %dl11 -5v10z\" class=\"arc-ink\" fill=\"#000\"/>", RIGHT + 1, to);
    svg.text(
        RIGHT + 18,
        to - 5,
        "class=\"arc-ink arc-halo\" fill=\"#000\" stroke=\"#fff\" stroke-width=\"4\""
            + " stroke-linejoin=\"round\" paint-order=\"stroke\"",
        fit(arrow.what(), LANES - RIGHT - 24, CHARACTER));
  }

  /** The text, cut with three dots if it is wider than there is room. */
  private static String fit(String text, int room, double character) {
    int most = Math.max(4, (int) (room / character));
    if (text.codePointCount(0, text.length()) <= most) {
      return text;
    }
    return text.substring(0, text.offsetByCodePoints(0, most - 1)).stripTrailing() + "…";
  }
}
