package org.arcwright.format;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Values;
import org.arcwright.live.Change;
import org.arcwright.live.Replan;
import org.arcwright.live.Replan.FollowUp;
import org.arcwright.live.Replan.Unchanged;
import org.arcwright.live.Way;

/**
 * Ways to go on with a day in JSON, for other programs:
 *
 * <pre>{@code
 * {
 *   "format": "arcwright-replan", "version": 1,
 *   "now": 100, "end": 210, "behind": 20,
 *   "unchanged": {"keeps": false, "onTime": 0.21, "agenda": {"format": "arcwright-agenda", ...}},
 *   "ways": [
 *     {"kind": "leave-out",
 *      "changes": [{"change": "left-out", "exercise": "bundles", "title": "Bundles of ideas", "length": 20}],
 *      "lost": [], "onTime": 0.91, "cost": 640, "best": true,
 *      "agenda": {"format": "arcwright-agenda", ...}}]
 * }
 * }</pre>
 *
 * <p>Times are minutes from the planned start, chances run from 0 to 1. Where the goal cannot be
 * met any more, {@code followUp} says what remains. What is written is read as an equal answer.
 */
public final class ReplanFormat {
  private static final Keys KEYS =
      Keys.of(
          "format: \"arcwright-replan\"",
          "version: 1",
          "now: 100",
          "end: 210",
          "behind: 20",
          "unchanged",
          "ways: []",
          "followUp");
  private static final Keys UNCHANGED = Keys.of("keeps: true", "onTime: 0.9", "agenda");
  private static final Keys WAY =
      Keys.of(
          "kind: \"leave-out\"",
          "changes: []",
          "lost: []",
          "onTime: 0.9",
          "cost: 640",
          "best: true",
          "agenda");
  private static final Keys FOLLOW_UP =
      Keys.of("phases: []", "products: []", "inHand: []", "exercises: []");

  private ReplanFormat() {}

  /**
   * Reads a file of at most 64 MB.
   *
   * @throws FormatException with all that is wrong
   */
  public static Replan read(Path file) {
    return Document.json(file, Document.BY_PROGRAM).read(ReplanFormat::read);
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static Replan read(String name, String text) {
    return Document.json(name, text).read(ReplanFormat::read);
  }

  private static Optional<Replan> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "answer", KEYS, faults);
    Header.REPLAN.demand(fields, faults);
    Optional<Duration> now = time(fields, "now", faults);
    Optional<Duration> end = time(fields, "end", faults);
    Duration behind = Duration.ofMinutes(fields.whole("behind"));
    Optional<Unchanged> unchanged = fields.required("unchanged").flatMap(n -> unchanged(n, faults));
    List<Way> ways = fields.list("ways", ReplanFormat::way);
    Optional<FollowUp> followUp = fields.optional("followUp").flatMap(n -> followUp(n, faults));
    return fields.build(
        () ->
            new Replan(
                now.orElseThrow(),
                end.orElseThrow(),
                behind,
                unchanged.orElseThrow(),
                ways,
                followUp));
  }

  private static Optional<Unchanged> unchanged(Node node, Faults faults) {
    Fields fields = Fields.of(node, "unchanged", UNCHANGED, faults);
    boolean keeps = fields.flag("keeps");
    double onTime = chance(fields, faults);
    Optional<Agenda> agenda = agenda(fields, faults);
    return fields.build(() -> new Unchanged(agenda.orElseThrow(), keeps, onTime));
  }

  private static Optional<Way> way(Node node, Faults faults) {
    Fields fields = Fields.of(node, "way", WAY, faults);
    Way.Kind kind = fields.word(Way.Kind.class, "kind");
    List<Change> changes = fields.list("changes", ChangeForm::read);
    List<String> lost = fields.texts("lost");
    double onTime = chance(fields, faults);
    long cost = fields.longWhole("cost");
    boolean best = fields.flag("best");
    Optional<Agenda> agenda = agenda(fields, faults);
    return fields.build(
        () -> new Way(kind, agenda.orElseThrow(), changes, lost, onTime, cost, best));
  }

  private static Optional<FollowUp> followUp(Node node, Faults faults) {
    Fields fields = Fields.of(node, "followUp", FOLLOW_UP, faults);
    List<String> phases = fields.texts("phases");
    List<String> products = fields.texts("products");
    List<String> inHand = fields.texts("inHand");
    List<String> exercises = fields.texts("exercises");
    return fields.build(() -> new FollowUp(phases, products, inHand, exercises));
  }

  private static Optional<Agenda> agenda(Fields fields, Faults faults) {
    return fields.required("agenda").flatMap(n -> AgendaReader.read(n, faults));
  }

  private static Optional<Duration> time(Fields fields, String key, Faults faults) {
    return fields.required(key).flatMap(n -> Times.minutes(n, key, faults));
  }

  private static double chance(Fields fields, Faults faults) {
    return fields
        .required("onTime")
        .flatMap(n -> Values.number(n, "onTime", faults))
        .map(BigDecimal::doubleValue)
        .orElse(0.0);
  }

  /** The answer in JSON, whose agendas carry the brief, so that each can be taken out and used. */
  public static String write(Replan replan, Brief brief) {
    Branch branch =
        Header.REPLAN
            .begin()
            .put("now", Times.minutes(replan.now()))
            .put("end", Times.minutes(replan.end()))
            .put("behind", replan.behind().toMinutes())
            .put("unchanged", tree(replan.unchanged(), brief))
            .put("ways", Branch.list(replan.ways(), way -> tree(way, brief)));
    replan.followUp().ifPresent(followUp -> branch.put("followUp", tree(followUp)));
    return JsonWriter.write(branch.end());
  }

  private static Node tree(Unchanged unchanged, Brief brief) {
    return new Branch()
        .put("keeps", unchanged.keeps())
        .put("onTime", ForecastFormat.number(unchanged.onTime()))
        .put("agenda", tree(unchanged.agenda(), brief))
        .end();
  }

  private static Node tree(Way way, Brief brief) {
    return new Branch()
        .put("kind", way.kind().word())
        .put("changes", Branch.list(way.changes(), ChangeForm::tree))
        .put("lost", way.lost())
        .put("onTime", ForecastFormat.number(way.onTime()))
        .put("cost", way.cost())
        .put("best", way.best())
        .put("agenda", tree(way.agenda(), brief))
        .end();
  }

  private static Node tree(Agenda agenda, Brief brief) {
    return AgendaWriter.tree(agenda).put("brief", BriefWriter.document(brief)).end();
  }

  private static Node tree(FollowUp followUp) {
    return new Branch()
        .put("phases", followUp.phases())
        .put("products", followUp.products())
        .put("inHand", followUp.inHand())
        .put("exercises", followUp.exercises())
        .end();
  }
}
