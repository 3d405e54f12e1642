package org.arcwright.format;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Apart;
import org.arcwright.compose.instance.Instance.AtMost;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.instance.Instance.Rules;
import org.arcwright.compose.instance.Instance.Weights;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Node;

/**
 * Instances of the composition problem in JSON, so that another solver can read them. {@code
 * initial}, {@code include}, {@code pins}, {@code meals}, {@code rules} and {@code weights} may be
 * left out, which is to leave them empty; a weight left out is 0. So may the header, {@code
 * "format": "arcwright-instance", "version": 1}. Linear in the size of the file.
 */
public final class InstanceFormat {
  private InstanceFormat() {}

  /**
   * Reads a file of at most 64 MB.
   *
   * @throws FormatException with all that is wrong
   */
  public static Instance read(Path file) {
    return Document.json(file, Document.BY_PROGRAM).read(InstanceReader::read);
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static Instance read(String name, String text) {
    return Document.json(name, text).read(InstanceReader::read);
  }

  /** The instance in JSON, a candidate a line; equal instances give equal texts. */
  public static String write(Instance instance) {
    return JsonWriter.write(tree(instance));
  }

  static Node tree(Instance instance) {
    return Header.INSTANCE
        .begin()
        .put("grid", instance.grid())
        .put("cap", instance.cap())
        .put("curve", Branch.numbers(instance.curve()))
        .put(
            "stretch",
            new Branch()
                .put("min", instance.stretch().min())
                .put("max", instance.stretch().max())
                .end())
        .put("breakMinutes", instance.breakMinutes())
        .put("meals", Branch.list(instance.meals(), InstanceFormat::tree))
        .put("bufferPercent", instance.bufferPercent())
        .put("products", instance.products())
        .put("initial", instance.initial())
        .put("phases", Branch.list(instance.phases(), InstanceFormat::tree))
        .put("candidates", Branch.list(instance.candidates(), InstanceFormat::tree))
        .put("include", instance.include())
        .put("pins", Branch.list(instance.pins(), InstanceFormat::tree))
        .put("rules", tree(instance.rules()))
        .put("weights", tree(instance.weights()))
        .end();
  }

  static Node tree(Meal meal) {
    return new Branch()
        .put("from", meal.from())
        .put("to", meal.to())
        .put("minutes", meal.minutes())
        .end();
  }

  private static Node tree(Phase phase) {
    return new Branch()
        .put("name", phase.name())
        .put("kinds", sorted(phase.kinds()))
        .put("count", tree(phase.count()))
        .put("minutes", tree(phase.minutes()))
        .put("target", phase.target())
        .put("yields", phase.yields())
        .end();
  }

  private static Node tree(Bounds bounds) {
    return Branch.numbers(List.of(bounds.min(), bounds.max()));
  }

  private static Node tree(Candidate candidate) {
    return new Branch()
        .put("id", candidate.id())
        .put("kind", candidate.kind())
        .put("lengths", Branch.numbers(candidate.lengths()))
        .put("lengthCosts", Branch.numbers(candidate.lengthCosts()))
        .put("energy", candidate.energy())
        .put("format", candidate.format())
        .put("needs", candidate.needs())
        .put("yields", candidate.yields())
        .put("cost", candidate.cost())
        .end();
  }

  private static Node tree(Pin pin) {
    return new Branch().put("id", pin.id()).put("at", pin.at()).end();
  }

  private static Node tree(Rules rules) {
    return new Branch()
        .put("apart", Branch.list(rules.apart(), InstanceFormat::tree))
        .put("atMost", Branch.list(rules.atMost(), InstanceFormat::tree))
        .end();
  }

  private static Node tree(Apart rule) {
    return new Branch()
        .put("name", rule.name())
        .put("first", sorted(rule.first()))
        .put("then", sorted(rule.then()))
        .put("acrossBreaks", rule.acrossBreaks())
        .end();
  }

  private static Node tree(AtMost rule) {
    return new Branch()
        .put("name", rule.name())
        .put("of", sorted(rule.of()))
        .put("most", rule.most())
        .end();
  }

  private static List<String> sorted(Set<String> ids) {
    return ids.stream().sorted().toList();
  }

  private static Node tree(Weights weights) {
    return new Branch()
        .put("energy", weights.energy())
        .put("share", weights.share())
        .put("monotony", weights.monotony())
        .put("monotonyAcrossBreak", weights.monotonyAcrossBreak())
        .put("rhythm", weights.rhythm())
        .put("pause", weights.pause())
        .put("idle", weights.idle())
        .end();
  }
}
