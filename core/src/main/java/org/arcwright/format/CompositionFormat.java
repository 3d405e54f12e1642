package org.arcwright.format;

import java.nio.file.Path;
import org.arcwright.compose.Composition;
import org.arcwright.compose.explain.Clash;
import org.arcwright.format.tree.JsonWriter;

/**
 * A composer's whole answer in JSON, for other programs. {@code answer} says what kind it is, and
 * with it which keys stand there: {@code composed} has an agenda, its proof and prices; {@code
 * nothing-fits} has reasons; {@code stopped} has a bound, if one is known, and the labels used.
 *
 * <pre>{@code
 * {
 *   "format": "arcwright-composition", "version": 1,
 *   "answer": "composed",
 *   "agenda": {"format": "arcwright-agenda", ...},
 *   "proof": {"best": true, "cost": 695, "bound": 695, "labels": 100626, "milliseconds": 42.5},
 *   "prices": [{"exercise": "dot-voting", "why": "used last time", "points": 500}],
 *   "leftOut": [{"exercise": "premortem", "field": "wishes.leave-out", "reason": "left out by the brief"}],
 *   "instance": {"format": "arcwright-instance", ...}
 * }
 * }</pre>
 *
 * <p>What is written is read as an equal answer.
 */
public final class CompositionFormat {
  private CompositionFormat() {}

  /**
   * Reads a file of at most 64 MB.
   *
   * @throws FormatException with all that is wrong
   */
  public static Composition read(Path file) {
    return Document.json(file, Document.BY_PROGRAM).read(CompositionReader::read);
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static Composition read(String name, String text) {
    return Document.json(name, text).read(CompositionReader::read);
  }

  /** The answer in JSON. */
  public static String write(Composition answer) {
    return JsonWriter.write(CompositionWriter.tree(answer));
  }

  /**
   * The answer in JSON, and what clashes under {@code clash}, which readers of compositions pass
   * over; see {@link ClashFormat}.
   */
  public static String write(Composition answer, Clash clash) {
    return JsonWriter.write(
        CompositionWriter.branch(answer).put("clash", ClashFormat.tree(clash)).end());
  }
}
