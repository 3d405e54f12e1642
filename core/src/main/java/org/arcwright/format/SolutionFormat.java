package org.arcwright.format;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.arcwright.catalog.Word;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Solution;
import org.arcwright.compose.search.Solution.Status;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Mapping;

/**
 * Answers to the composition problem in JSON:
 *
 * <pre>{@code
 * {"format": "arcwright-solution", "version": 1,
 *  "status": "optimal", "cost": 120, "tie": 7531, "bound": 120, "labels": 900, "items": [
 *   {"id": "two-objects", "phase": 0, "start": 0, "length": 15},
 *   {"break": true, "start": 15, "length": 10}]}
 * }</pre>
 *
 * <p>The status is {@code optimal}, {@code feasible}, {@code infeasible} or {@code stopped}; phases
 * count from 0, times are minutes. There are a {@code cost} and a {@code tie} with items only, and
 * a {@code bound} unless nothing fits.
 */
public final class SolutionFormat {
  private static final Keys KEYS =
      Keys.of(
          "format: \"arcwright-solution\"",
          "version: 1",
          "status: \"optimal\"",
          "cost: 120",
          "tie: 7531",
          "bound: 120",
          "labels: 900",
          "items: []");
  private static final Keys ACTIVITY =
      Keys.of("id: \"two-objects\"", "phase: 0", "start: 0", "length: 15");
  private static final Keys PAUSE = Keys.of("break: true", "start: 15", "length: 10");

  /** A status as files have it. */
  enum StatusWord implements Word {
    OPTIMAL,
    FEASIBLE,
    INFEASIBLE,
    STOPPED;

    @Override
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private SolutionFormat() {}

  /**
   * Reads a file of at most 64 MB.
   *
   * @throws FormatException with all that is wrong
   */
  public static Solution read(Path file) {
    return Document.json(file, Document.BY_PROGRAM).read(SolutionFormat::solution);
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static Solution read(String name, String text) {
    return Document.json(name, text).read(SolutionFormat::solution);
  }

  private static Optional<Solution> solution(Node node, Faults faults) {
    Fields fields = Fields.of(node, "solution", KEYS, faults);
    Header.SOLUTION.demand(fields, faults);
    Status status = Status.valueOf(fields.word(StatusWord.class, "status").name());
    long cost = hasItems(status) ? fields.longWhole("cost") : 0;
    long tie = hasItems(status) ? fields.longWhole("tie") : 0;
    long bound = status == Status.INFEASIBLE ? 0 : fields.longWhole("bound");
    long labels = fields.longWhole("labels");
    List<Item> items = fields.list("items", SolutionFormat::item);
    return fields.build(() -> new Solution(status, cost, tie, bound, items, labels));
  }

  private static Optional<Item> item(Node node, Faults faults) {
    boolean pause = node instanceof Mapping mapping && mapping.find("break").isPresent();
    Fields fields = Fields.of(node, "item", pause ? PAUSE : ACTIVITY, faults);
    String id = pause ? "" : fields.text("id");
    int phase = pause ? 0 : fields.whole("phase");
    if (pause && !fields.flag("break")) {
      faults.add(node.at("break"), "break", "true is right; an exercise has no such key");
    }
    int start = fields.whole("start");
    int length = fields.whole("length");
    return fields.build(
        () -> pause ? new Item.Pause(start, length) : new Item.Activity(id, phase, start, length));
  }

  /** The solution in JSON, an item a line. */
  public static String write(Solution solution) {
    Status status = solution.status();
    Branch branch = Header.SOLUTION.begin().put("status", StatusWord.valueOf(status.name()).word());
    if (hasItems(status)) {
      branch.put("cost", solution.cost()).put("tie", solution.tie());
    }
    if (status != Status.INFEASIBLE) {
      branch.put("bound", solution.bound());
    }
    return JsonWriter.write(
        branch
            .put("labels", solution.labels())
            .put("items", Branch.list(solution.items(), SolutionFormat::tree))
            .end());
  }

  private static boolean hasItems(Status status) {
    return status == Status.OPTIMAL || status == Status.FEASIBLE;
  }

  private static Node tree(Item item) {
    Branch branch = new Branch();
    if (item instanceof Item.Activity activity) {
      branch.put("id", activity.id()).put("phase", activity.phase());
    } else {
      branch.put("break", true);
    }
    return branch.put("start", item.start()).put("length", item.length()).end();
  }
}
