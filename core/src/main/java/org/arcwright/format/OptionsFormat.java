package org.arcwright.format;

import java.nio.file.Path;
import org.arcwright.compose.Options;
import org.arcwright.format.tree.JsonWriter;

/**
 * Options in JSON, for other programs. Each has an agenda, its proof and prices, and a profile to
 * compare it by; what all share stands once. {@code end} says why there are no more: {@code
 * enough}, {@code none-left}, {@code too-dear} (then {@code beyond} may say what one more would
 * cost) or {@code stopped}. Where there is not even one, {@code answer} says why.
 *
 * <pre>{@code
 * {
 *   "format": "arcwright-options", "version": 1,
 *   "rule": {"options": 3, "share": 50, "within": 25},
 *   "end": "enough",
 *   "options": [
 *     {"agenda": {"format": "arcwright-agenda", ...}, "proof": {...}, "prices": [...],
 *      "profile": {"work": 160, "breaks": 2, "resting": 20, "energyFit": 91,
 *                  "formats": {"plenary": 4, "small-groups": 3}, "talking": 84, "alone": 21,
 *                  "openness": 1, "tools": ["board", "call"]}}],
 *   "leftOut": [...],
 *   "instance": {"format": "arcwright-instance", ...}
 * }
 * }</pre>
 *
 * <p>Times are minutes. What is written is read as an equal answer.
 */
public final class OptionsFormat {
  private OptionsFormat() {}

  /**
   * Reads a file of at most 64 MB.
   *
   * @throws FormatException with all that is wrong
   */
  public static Options read(Path file) {
    return Document.json(file, Document.BY_PROGRAM).read(OptionsReader::read);
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static Options read(String name, String text) {
    return Document.json(name, text).read(OptionsReader::read);
  }

  /** The options in JSON. */
  public static String write(Options options) {
    return JsonWriter.write(OptionsWriter.tree(options));
  }
}
