package org.arcwright.cli.handout;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Tool;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Cell;
import org.arcwright.cli.page.Block.Facts;
import org.arcwright.cli.page.Block.Part;
import org.arcwright.cli.page.Block.Point;
import org.arcwright.cli.page.Block.Table;
import org.arcwright.cli.page.Block.Text;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.words.Language;
import org.arcwright.standin.StandIn;
import org.arcwright.standin.StandIns;

/** Each tool that the agenda uses: what to try on which device, and when it passes. */
public final class ToolTestSheet {
  /** Where something at a screen is tried; common practice, no source. */
  private static final List<String> DEVICES = List.of("main", "other", "phone", "guest", "network");

  private final Workshop workshop;
  private final Language language;

  /** By the tools that only they lean on. */
  private final Map<String, List<StandIn>> spares;

  private ToolTestSheet(Workshop workshop, StandIns standIns) {
    this.workshop = workshop;
    this.spares = Spares.tools(workshop, standIns);
    this.language = workshop.language();
  }

  /** The sheet. */
  public static Sheet of(Workshop workshop, StandIns standIns) {
    ToolTestSheet test = new ToolTestSheet(workshop, standIns);
    Language language = workshop.language();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Text(language.say("test.lead")));
    List<String> inRoom = new ArrayList<>();
    Set<String> all = new LinkedHashSet<>(workshop.tools());
    all.addAll(test.spares.keySet());
    for (String id : all) {
      if (test.atScreens(id)) {
        blocks.add(test.atScreen(id));
      } else {
        inRoom.add(id);
      }
    }
    if (!inRoom.isEmpty()) {
      blocks.add(Part.of("in-the-room", language.say("test.room"), test.inRoom(inRoom)));
    }
    return new Sheet(
        workshop.agenda().title(), language.say("test.kicker"), workshop.facts(), blocks);
  }

  private boolean atScreens(String id) {
    Tool tool = workshop.catalog().tools().get(id);
    return workshop.agenda().mode() != Mode.IN_PERSON
        && tool != null
        && tool.modes().contains(Mode.REMOTE);
  }

  private Part atScreen(String id) {
    List<List<Cell>> rows = new ArrayList<>();
    for (String device : DEVICES) {
      rows.add(List.of(Cell.of(language.say("test.device." + device)), Cell.empty(), Cell.empty()));
    }
    String title = language.capital(workshop.tool(id));
    return Part.of(
        "tool-" + id,
        title,
        new Facts(
            List.of(
                Point.of(language.say("test.used"), uses(id)),
                Point.of(language.say("test.try"), say("test.try." + id, "test.try.other", id)),
                Point.of(
                    language.say("test.passes"), say("test.pass." + id, "test.pass.other", id)))),
        new Table(
            language.say("test.table", title),
            List.of(language.say("test.where"), language.say("test.ok"), language.say("test.seen")),
            rows));
  }

  private Table inRoom(List<String> ids) {
    List<List<Cell>> rows = new ArrayList<>();
    for (String id : ids) {
      rows.add(
          List.of(
              Cell.of(language.capital(workshop.tool(id)), uses(id)),
              Cell.of(say("test.try." + id, "test.try.other", id)),
              Cell.of(say("test.pass." + id, "test.pass.other", id)),
              Cell.empty()));
    }
    return new Table(
        language.say("test.room"),
        List.of(
            language.say("test.what"),
            language.say("test.try.head"),
            language.say("test.pass.head"),
            language.say("test.ok")),
        rows);
  }

  /** A sentence for this tool, or for one of a catalog of somebody's own. */
  private String say(String key, String otherwise, String id) {
    Tool tool = workshop.catalog().tools().get(id);
    return language.say(
        language.knows(key) ? key : otherwise,
        workshop.agenda().people(),
        Math.max(1, workshop.groupsAtOnce(id)),
        tool == null ? id : tool.meaning());
  }

  private String uses(String id) {
    List<String> uses = new ArrayList<>();
    for (Activity activity : workshop.using(id)) {
      uses.add(language.say("test.use", workshop.hours().at(activity.start()), activity.title()));
    }
    List<StandIn> users = spares.getOrDefault(id, List.of());
    if (users.isEmpty()) {
      return language.list(uses);
    }
    return language.say(
        "test.use.spare",
        language.any(users.stream().map(user -> language.say("quoted", user.title())).toList()));
  }
}
