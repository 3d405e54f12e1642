package org.arcwright.cli.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Tool;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Facts;
import org.arcwright.cli.page.Block.Part;
import org.arcwright.cli.page.Block.Point;
import org.arcwright.cli.page.Block.Words;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.words.Language;

/** The message that gets people and their tools ready, with every blank marked. */
public final class Invitation {
  /** What people enter by a link of its own; all else is reached from the call. */
  private static final Set<String> LINKED = Set.of("call", "board", "document");

  private final Workshop workshop;
  private final Language language;

  private Invitation(Workshop workshop) {
    this.workshop = workshop;
    this.language = workshop.language();
  }

  /** The message and the blanks to fill. */
  public static Sheet of(Workshop workshop) {
    Invitation invitation = new Invitation(workshop);
    Language language = workshop.language();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Facts(List.of(Point.of(language.say("invite.subject"), invitation.subject()))));
    blocks.add(Part.of("body", language.say("invite.body"), new Words(invitation.paragraphs())));
    return new Sheet(
        workshop.agenda().title(), language.say("invite.kicker"), workshop.facts(), blocks);
  }

  /** The message as plain text, the subject first. */
  public static String text(Workshop workshop) {
    Invitation invitation = new Invitation(workshop);
    return workshop.language().say("invite.subject")
        + " "
        + invitation.subject()
        + "\n\n"
        + String.join("\n\n", invitation.paragraphs())
        + "\n";
  }

  private String subject() {
    String title = workshop.agenda().title();
    return workshop
        .hours()
        .date()
        .map(day -> language.say("invite.subject.day", title, day))
        .orElse(title);
  }

  private List<String> paragraphs() {
    Agenda agenda = workshop.agenda();
    List<String> paragraphs = new ArrayList<>();
    paragraphs.add(language.say("invite.hello"));
    paragraphs.add(
        language.say("invite.what", agenda.title(), String.join(", ", workshop.setting())));
    List<String> left =
        workshop.goal().map(Goal::yields).stream()
            .flatMap(yields -> yields.stream())
            .map(workshop::product)
            .toList();
    if (!left.isEmpty()) {
      paragraphs.add(language.say("invite.why", language.list(left)));
    }
    if (agenda.mode() != Mode.IN_PERSON) {
      paragraphs.addAll(screens());
      paragraphs.add(language.say("invite.place"));
    }
    if (agenda.mode() != Mode.REMOTE) {
      paragraphs.add(language.say("invite.room"));
    }
    paragraphs.add(language.say("invite.access"));
    paragraphs.add(language.say("invite.call"));
    paragraphs.add(language.say("invite.bye"));
    return paragraphs;
  }

  /** Which tools, how to get in, and what to try: a link for each that is entered by one. */
  private List<String> screens() {
    List<String> tools = new ArrayList<>();
    List<String> links = new ArrayList<>();
    for (String id : workshop.tools()) {
      Tool tool = workshop.catalog().tools().get(id);
      if (tool != null && tool.modes().contains(Mode.REMOTE)) {
        tools.add(workshop.tool(id));
        if (LINKED.contains(id)) {
          links.add(language.say("invite.link." + id));
        }
      }
    }
    return List.of(
        language.say("invite.tools", language.list(tools)),
        language.say("invite.links", language.list(links)),
        language.say("invite.try", links.size())
            + (workshop.leansOnBoard() ? " " + language.say("invite.try.board") : ""));
  }
}
