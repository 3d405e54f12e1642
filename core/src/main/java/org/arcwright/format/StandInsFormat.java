package org.arcwright.format;

import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Split;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.standin.StandIn;
import org.arcwright.standin.StandIns;
import org.arcwright.standin.Swap;
import org.arcwright.standin.ToolLoss;
import org.arcwright.standin.Turnout;

/**
 * What to do when something fails, in JSON for other programs:
 *
 * <pre>{@code
 * {
 *   "format": "arcwright-stand-ins", "version": 1,
 *   "pairs": 12, "covered": 5,
 *   "tools": [
 *     {"tool": "board", "swaps": [
 *       {"place": 2, "standIn": {"exercise": "chat-burst", "title": "Chat burst", "length": 15, "change": -10,
 *                                "points": 40, "tools": ["call", "chat"], "materials": []}},
 *       {"place": 5}]}],
 *   "fewer": [{"place": 2, "impossible": [6, 5], "least": 5}],
 *   "alone": [{"place": 4}],
 *   "decisions": [7],
 *   "agenda": {"format": "arcwright-agenda", ...}
 * }
 * }</pre>
 *
 * <p>A {@code place} counts the agenda's items from 0; where a swap has no {@code standIn}, there
 * is none. {@code pairs} counts each exercise with each tool that it leans on, {@code covered}
 * those that have a stand-in. What is written is read as an equal value.
 */
public final class StandInsFormat {
  private static final Keys KEYS =
      Keys.of(
          "format: \"arcwright-stand-ins\"",
          "version: 1",
          "pairs: 12",
          "covered: 5",
          "tools: []",
          "fewer: []",
          "alone: []",
          "decisions: []",
          "agenda");
  private static final Keys LOSS = Keys.of("tool: \"board\"", "swaps: []");
  private static final Keys SWAP = Keys.of("place: 2", "standIn");
  private static final Keys STAND_IN =
      Keys.of(
          "exercise: \"chat-burst\"",
          "title: \"Chat burst\"",
          "length: 15",
          "change: -10",
          "points: 40",
          "tools: [\"call\"]",
          "materials: []");
  private static final Keys TURNOUT =
      Keys.of("place: 2", "impossible: []", "least: 5", "groups: 2", "usual: 20", "standIn");

  private StandInsFormat() {}

  /**
   * Reads a file of at most 1 MB.
   *
   * @throws FormatException with all that is wrong
   */
  public static StandIns read(Path file) {
    return Document.json(file, Document.BY_HAND).read(StandInsFormat::standIns);
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static StandIns read(String name, String text) {
    return Document.json(name, text).read(StandInsFormat::standIns);
  }

  private static Optional<StandIns> standIns(Node node, Faults faults) {
    Fields fields = Fields.of(node, "stand-ins", KEYS, faults);
    Header.STAND_INS.demand(fields, faults);
    int pairs = fields.whole("pairs");
    int covered = fields.whole("covered");
    List<ToolLoss> tools = fields.list("tools", StandInsFormat::loss);
    List<Turnout> fewer = fields.list("fewer", StandInsFormat::turnout);
    List<Swap> alone = fields.list("alone", StandInsFormat::swap);
    List<Integer> decisions = fields.wholes("decisions");
    Optional<Agenda> agenda = fields.required("agenda").flatMap(n -> AgendaReader.read(n, faults));
    Optional<StandIns> standIns =
        fields.build(() -> new StandIns(agenda.orElseThrow(), tools, fewer, alone, decisions));
    standIns.ifPresent(
        found -> {
          checkCount(fields, "pairs", pairs, found.pairs(), faults);
          checkCount(fields, "covered", covered, found.covered(), faults);
        });
    return standIns;
  }

  private static void checkCount(Fields fields, String key, int said, int counted, Faults faults) {
    if (said != counted) {
      fields.optional(key).ifPresent(n -> faults.add(n, key, "below stand " + counted));
    }
  }

  private static Optional<ToolLoss> loss(Node node, Faults faults) {
    Fields fields = Fields.of(node, "tool that fails", LOSS, faults);
    String tool = fields.text("tool");
    List<Swap> swaps = fields.list("swaps", StandInsFormat::swap);
    return fields.build(() -> new ToolLoss(tool, swaps));
  }

  private static Optional<Swap> swap(Node node, Faults faults) {
    Fields fields = Fields.of(node, "swap", SWAP, faults);
    int place = fields.whole("place");
    Optional<StandIn> standIn = standIn(fields, faults);
    return fields.build(() -> new Swap(place, standIn));
  }

  private static Optional<StandIn> standIn(Fields swap, Faults faults) {
    return swap.optional("standIn").flatMap(n -> standIn(n, faults));
  }

  private static Optional<StandIn> standIn(Node node, Faults faults) {
    Fields fields = Fields.of(node, "stand-in", STAND_IN, faults);
    String exercise = fields.text("exercise");
    String title = fields.text("title");
    fields.alias("minutes", fields.optional("length").orElse(node));
    Optional<Duration> length =
        fields.required("length").flatMap(n -> Times.minutes(n, "length", faults));
    Duration change = Duration.ofMinutes(fields.whole("change"));
    long points = fields.longWhole("points");
    List<String> tools = fields.texts("tools");
    List<String> materials = fields.texts("materials");
    return fields.build(
        () ->
            new StandIn(
                exercise,
                title,
                length.orElseThrow(),
                change,
                points,
                new LinkedHashSet<>(Checks.ids("tools", tools)),
                materials));
  }

  private static Optional<Turnout> turnout(Node node, Faults faults) {
    Fields fields = Fields.of(node, "exercise with fewer people", TURNOUT, faults);
    int place = fields.whole("place");
    List<Integer> impossible = fields.wholes("impossible");
    int least = fields.whole("least");
    Optional<Integer> groups = fields.optionalWhole("groups");
    Optional<Duration> usual =
        fields.optional("usual").flatMap(n -> Times.minutes(n, "usual", faults));
    Optional<StandIn> standIn = standIn(fields, faults);
    return fields.build(
        () ->
            new Turnout(
                place,
                impossible,
                least,
                groups.map(count -> new Split(least, count)),
                usual,
                standIn));
  }

  /** In JSON, with the brief that the agenda was composed for. */
  public static String write(StandIns standIns, Brief brief) {
    return write(
        standIns, AgendaWriter.tree(standIns.agenda()).put("brief", BriefWriter.document(brief)));
  }

  /** In JSON. */
  public static String write(StandIns standIns) {
    return write(standIns, AgendaWriter.tree(standIns.agenda()));
  }

  private static String write(StandIns standIns, Branch agenda) {
    return JsonWriter.write(
        Header.STAND_INS
            .begin()
            .put("pairs", standIns.pairs())
            .put("covered", standIns.covered())
            .put("tools", Branch.list(standIns.tools(), StandInsFormat::tree))
            .put("fewer", Branch.list(standIns.fewer(), StandInsFormat::tree))
            .put("alone", Branch.list(standIns.alone(), StandInsFormat::tree))
            .put("decisions", Branch.numbers(standIns.decisions()))
            .put("agenda", agenda.end())
            .end());
  }

  private static Node tree(ToolLoss loss) {
    return new Branch()
        .put("tool", loss.tool())
        .put("swaps", Branch.list(loss.swaps(), StandInsFormat::tree))
        .end();
  }

  private static Node tree(Swap swap) {
    return with(new Branch().put("place", swap.place()), swap.standIn()).end();
  }

  private static Node tree(Turnout turnout) {
    Branch branch =
        new Branch()
            .put("place", turnout.place())
            .put("impossible", Branch.numbers(turnout.impossible()))
            .put("least", turnout.least());
    turnout.groups().ifPresent(split -> branch.put("groups", split.groups()));
    turnout.usual().ifPresent(usual -> branch.put("usual", Times.minutes(usual)));
    return with(branch, turnout.standIn()).end();
  }

  private static Branch with(Branch branch, Optional<StandIn> standIn) {
    standIn.ifPresent(
        other ->
            branch.put(
                "standIn",
                new Branch()
                    .put("exercise", other.exercise())
                    .put("title", other.title())
                    .put("length", Times.minutes(other.length()))
                    .put("change", other.change().toMinutes())
                    .put("points", other.points())
                    .put("tools", other.tools())
                    .put("materials", other.materials())
                    .end()));
    return branch;
  }
}
