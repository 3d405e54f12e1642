package org.arcwright.format;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.compose.explain.WhyThis;
import org.arcwright.compose.explain.WhyThis.HandedOn;
import org.arcwright.compose.explain.WhyThis.Instead;
import org.arcwright.compose.explain.WhyThis.Place;
import org.arcwright.compose.explain.WhyThis.Reason;
import org.arcwright.compose.explain.WhyThis.TakenOver;
import org.arcwright.compose.explain.Wish;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.standin.ToolVerdict;

/**
 * Why an agenda's exercises are in their places, in JSON for other programs. {@code instead} says
 * with {@code kind} what would be without the exercise: {@code asked} (the brief asks for it),
 * {@code swap} (another in its place, all else as it is), {@code anew} (none fits there; the best
 * agenda without it), {@code nothing} (none does without it) or {@code unknown} (the budget ended).
 *
 * <pre>{@code
 * {
 *   "format": "arcwright-why-this", "version": 1,
 *   "agenda": {"format": "arcwright-agenda", ...},
 *   "reasons": [
 *     {"activity": {"exercise": "dot-voting", ...},
 *      "takesOver": [{"product": "items", "from": "brainwriting"}],
 *      "handsOn": [{"product": "shortlist", "to": ["fist-to-five"], "owed": true}],
 *      "place": {"wished": 3.1, "afterBreak": false, "beforeBreak": true},
 *      "instead": {"kind": "swap", "exercise": "card-sort",
 *                  "agenda": {"format": "arcwright-agenda", ...}, "prices": [...]}}]
 * }
 * }</pre>
 *
 * <p>What is written is read as an equal answer.
 */
public final class WhyThisFormat {
  private static final Keys KEYS =
      Keys.of("format: \"arcwright-why-this\"", "version: 1", "agenda", "reasons: []");
  private static final Keys REASON =
      Keys.of("activity", "takesOver: []", "handsOn: []", "place", "instead");
  private static final Keys TAKEN = Keys.of("product: \"items\"", "from: \"brainwriting\"");
  private static final Keys HANDED = Keys.of("product: \"items\"", "to: []", "owed: true");
  private static final Keys PLACE =
      Keys.of("wished: 3.1", "afterBreak: true", "beforeBreak: true", "asked");

  private WhyThisFormat() {}

  /**
   * Reads a file of at most 64 MB.
   *
   * @throws FormatException with all that is wrong
   */
  public static WhyThis read(Path file) {
    return Document.json(file, Document.BY_PROGRAM).read(WhyThisFormat::read);
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static WhyThis read(String name, String text) {
    return Document.json(name, text).read(WhyThisFormat::read);
  }

  private static Optional<WhyThis> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "answer", KEYS, faults);
    Header.WHY_THIS.demand(fields, faults);
    Optional<Agenda> agenda = fields.required("agenda").flatMap(n -> AgendaReader.read(n, faults));
    List<Reason> reasons = fields.list("reasons", WhyThisFormat::reason);
    return fields.build(() -> new WhyThis(agenda.orElseThrow(), reasons));
  }

  private static Optional<Reason> reason(Node node, Faults faults) {
    Fields fields = Fields.of(node, "reason", REASON, faults);
    Optional<Activity> activity =
        fields.required("activity").flatMap(n -> AgendaReader.activity(n, faults));
    List<TakenOver> taken = fields.list("takesOver", WhyThisFormat::taken);
    List<HandedOn> handed = fields.list("handsOn", WhyThisFormat::handed);
    Optional<Place> place = fields.required("place").flatMap(n -> place(n, faults));
    Optional<Instead> instead =
        fields.required("instead").flatMap(n -> InsteadForm.read(n, faults));
    return fields.build(
        () ->
            new Reason(
                activity.orElseThrow(), taken, handed, place.orElseThrow(), instead.orElseThrow()));
  }

  private static Optional<TakenOver> taken(Node node, Faults faults) {
    Fields fields = Fields.of(node, "what is taken over", TAKEN, faults);
    String product = fields.text("product");
    Optional<String> from = fields.optionalText("from");
    return fields.build(() -> new TakenOver(product, from));
  }

  private static Optional<HandedOn> handed(Node node, Faults faults) {
    Fields fields = Fields.of(node, "what is handed on", HANDED, faults);
    String product = fields.text("product");
    List<String> to = fields.texts("to");
    boolean owed = fields.flag("owed");
    return fields.build(() -> new HandedOn(product, to, owed));
  }

  private static Optional<Place> place(Node node, Faults faults) {
    Fields fields = Fields.of(node, "place", PLACE, faults);
    Optional<Integer> wished = fields.required("wished").flatMap(n -> Levels.read(n, faults));
    boolean afterBreak = fields.flag("afterBreak");
    boolean beforeBreak = fields.flag("beforeBreak");
    Optional<Wish> asked = fields.optional("asked").flatMap(n -> WishForm.read(n, faults));
    return fields.build(() -> new Place(wished.orElseThrow(), afterBreak, beforeBreak, asked));
  }

  /** The answer in JSON. */
  public static String write(WhyThis answer) {
    return write(answer, AgendaWriter.tree(answer.agenda()));
  }

  /** The answer in JSON, whose agenda carries the brief it was composed for. */
  public static String write(WhyThis answer, Brief brief) {
    return write(
        answer, AgendaWriter.tree(answer.agenda()).put("brief", BriefWriter.document(brief)));
  }

  /** The same, and under the agenda's {@code withstands} whether it goes on when a tool fails. */
  public static String write(WhyThis answer, Brief brief, ToolVerdict verdict) {
    return write(
        answer,
        AgendaWriter.tree(answer.agenda())
            .put("brief", BriefWriter.document(brief))
            .put("withstands", ToolVerdictForm.tree(verdict)));
  }

  private static String write(WhyThis answer, Branch agenda) {
    return JsonWriter.write(
        Header.WHY_THIS
            .begin()
            .put("agenda", agenda.end())
            .put("reasons", Branch.list(answer.reasons(), WhyThisFormat::tree))
            .end());
  }

  private static Node tree(Reason reason) {
    return new Branch()
        .put("activity", AgendaWriter.tree(reason.activity()))
        .put("takesOver", Branch.list(reason.takesOver(), WhyThisFormat::tree))
        .put("handsOn", Branch.list(reason.handsOn(), WhyThisFormat::tree))
        .put("place", tree(reason.place()))
        .put("instead", InsteadForm.tree(reason.instead()))
        .end();
  }

  private static Node tree(TakenOver taken) {
    return new Branch().put("product", taken.product()).put("from", taken.from()).end();
  }

  private static Node tree(HandedOn handed) {
    return new Branch()
        .put("product", handed.product())
        .put("to", handed.to())
        .put("owed", handed.owed())
        .end();
  }

  private static Node tree(Place place) {
    Branch branch =
        new Branch()
            .put("wished", Levels.tree(place.wished()))
            .put("afterBreak", place.afterBreak())
            .put("beforeBreak", place.beforeBreak());
    place.asked().ifPresent(wish -> branch.put("asked", WishForm.tree(wish)));
    return branch.end();
  }
}
