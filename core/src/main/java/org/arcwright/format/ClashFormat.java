package org.arcwright.format;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.compose.explain.Clash;
import org.arcwright.compose.explain.Clash.Asked;
import org.arcwright.compose.explain.Clash.Conflict;
import org.arcwright.compose.explain.Loosening;
import org.arcwright.compose.explain.WayOut;
import org.arcwright.compose.explain.Wish;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;

/**
 * What clashes where nothing fits, and the ways out, in JSON for other programs. A wish says what
 * it is about and how much of it; times are minutes.
 *
 * <pre>{@code
 * {
 *   "format": "arcwright-clash", "version": 1,
 *   "conflicts": [
 *     {"wishes": [{"wish": {"wish": "cap", "time": 45}, "text": "45 min in all, ..."}],
 *      "smallest": true}],
 *   "waysOut": [
 *     {"loosenings": [{"wish": {"wish": "cap", "time": 45}, "instead": {"wish": "cap", "time": 50},
 *                      "text": "5 min more: 50 min in all"}],
 *      "least": true, "givesUp": 5, "best": true,
 *      "brief": {"format": "arcwright-brief", ...}, "agenda": {"format": "arcwright-agenda", ...}}],
 *   "complete": true
 * }
 * }</pre>
 *
 * <p>What is written is read as an equal clash.
 */
public final class ClashFormat {
  private static final Keys KEYS =
      Keys.of(
          "format: \"arcwright-clash\"",
          "version: 1",
          "conflicts: []",
          "waysOut: []",
          "complete: true");
  private static final Keys CONFLICT = Keys.of("wishes: []", "smallest: true");
  private static final Keys ASKED = Keys.of("wish", "text: \"45 min in all\"");
  private static final Keys WAY_OUT =
      Keys.of("loosenings: []", "least: true", "givesUp: 5", "brief", "agenda", "best: true");
  private static final Keys LOOSENING = Keys.of("wish", "instead", "text: \"5 min more\"");

  private ClashFormat() {}

  /**
   * Reads a file of at most 64 MB.
   *
   * @throws FormatException with all that is wrong
   */
  public static Clash read(Path file) {
    return Document.json(file, Document.BY_PROGRAM).read(ClashFormat::read);
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static Clash read(String name, String text) {
    return Document.json(name, text).read(ClashFormat::read);
  }

  static Optional<Clash> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "clash", KEYS, faults);
    Header.CLASH.demand(fields, faults);
    List<Conflict> conflicts = fields.list("conflicts", ClashFormat::conflict);
    List<WayOut> waysOut = fields.list("waysOut", ClashFormat::wayOut);
    boolean complete = fields.flag("complete");
    return fields.build(() -> new Clash(conflicts, waysOut, complete));
  }

  private static Optional<Conflict> conflict(Node node, Faults faults) {
    Fields fields = Fields.of(node, "conflict", CONFLICT, faults);
    List<Asked> wishes = fields.list("wishes", ClashFormat::asked);
    boolean smallest = fields.flag("smallest");
    return fields.build(() -> new Conflict(wishes, smallest));
  }

  private static Optional<Asked> asked(Node node, Faults faults) {
    Fields fields = Fields.of(node, "wish in words", ASKED, faults);
    Optional<Wish> wish = fields.required("wish").flatMap(n -> WishForm.read(n, faults));
    String text = fields.text("text");
    return fields.build(() -> new Asked(wish.orElseThrow(), text));
  }

  private static Optional<WayOut> wayOut(Node node, Faults faults) {
    Fields fields = Fields.of(node, "way out", WAY_OUT, faults);
    List<Loosening> loosenings = fields.list("loosenings", ClashFormat::loosening);
    boolean least = fields.flag("least");
    int givesUp = fields.whole("givesUp");
    Optional<Brief> brief =
        fields.required("brief").flatMap(n -> BriefReader.read(n, Optional.empty(), faults));
    Optional<Agenda> agenda = fields.required("agenda").flatMap(n -> AgendaReader.read(n, faults));
    boolean best = fields.flag("best");
    return fields.build(
        () ->
            new WayOut(
                loosenings, least, givesUp, brief.orElseThrow(), agenda.orElseThrow(), best));
  }

  private static Optional<Loosening> loosening(Node node, Faults faults) {
    Fields fields = Fields.of(node, "loosening", LOOSENING, faults);
    Optional<Wish> wish = fields.required("wish").flatMap(n -> WishForm.read(n, faults));
    Optional<Wish> instead = fields.optional("instead").flatMap(n -> WishForm.read(n, faults));
    String text = fields.text("text");
    return fields.build(() -> new Loosening(wish.orElseThrow(), instead, text));
  }

  /** The clash in JSON. */
  public static String write(Clash clash) {
    return JsonWriter.write(tree(clash));
  }

  static Node tree(Clash clash) {
    return Header.CLASH
        .begin()
        .put("conflicts", Branch.list(clash.conflicts(), ClashFormat::tree))
        .put("waysOut", Branch.list(clash.waysOut(), ClashFormat::tree))
        .put("complete", clash.complete())
        .end();
  }

  private static Node tree(Conflict conflict) {
    return new Branch()
        .put("wishes", Branch.list(conflict.wishes(), ClashFormat::tree))
        .put("smallest", conflict.smallest())
        .end();
  }

  private static Node tree(Asked asked) {
    return new Branch().put("wish", WishForm.tree(asked.wish())).put("text", asked.text()).end();
  }

  private static Node tree(WayOut way) {
    return new Branch()
        .put("loosenings", Branch.list(way.loosenings(), ClashFormat::tree))
        .put("least", way.least())
        .put("givesUp", way.givesUp())
        .put("brief", BriefWriter.document(way.brief()))
        .put("agenda", AgendaWriter.tree(way.agenda()).end())
        .put("best", way.best())
        .end();
  }

  private static Node tree(Loosening loosening) {
    Branch branch = new Branch().put("wish", WishForm.tree(loosening.wish()));
    loosening.instead().ifPresent(instead -> branch.put("instead", WishForm.tree(instead)));
    return branch.put("text", loosening.text()).end();
  }
}
