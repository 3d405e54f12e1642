package org.arcwright.cli.document;

import java.util.Optional;
import org.arcwright.catalog.Kind;

/**
 * The characters a picture is drawn with. A kind's fill opens (divergent) or closes (convergent) as
 * the kind does; the word stands beside each fill, so that none has to be known by heart.
 *
 * @param fills for icebreaker, divergent, convergent, decision, reflection and own item
 * @param curve a point of the target curve
 * @param ground the line on which exercises stand
 * @param open the same line under the closing buffer
 * @param wall the axis of energy
 * @param level the axis at a level that has a number
 * @param corner where the two axes meet
 * @param dash between two times
 * @param outer where a forecast is likely to be
 * @param inner where it is most likely
 */
public record Marks(
    String fills,
    char curve,
    char ground,
    char open,
    char wall,
    char level,
    char corner,
    char dash,
    char outer,
    char inner) {
  /** Box and block characters that terminals have had since code page 437, and a bullet. */
  public static final Marks UNICODE =
      new Marks("░╱╲▓═+", '•', '─', '╌', '│', '┤', '└', '–', '░', '▓');

  /** Where the terminal does not speak UTF-8. */
  public static final Marks ASCII =
      new Marks(":/\\#=+", 'o', '-', '.', '|', '|', '+', '-', ':', '#');

  char fill(Optional<Kind> kind) {
    return fills.charAt(kind.map(Kind::ordinal).orElse(fills.length() - 1));
  }
}
