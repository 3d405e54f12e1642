package org.arcwright.format;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Figures;
import org.arcwright.compose.Review;
import org.arcwright.compose.Review.Remark;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;

/**
 * What a checker says of an agenda, in JSON:
 *
 * <pre>{@code
 * {
 *   "format": "arcwright-review", "version": 1,
 *   "fits": false,
 *   "remarks": [{"rule": 5, "at": 0, "text": "From 09:00 on people work 95 minutes without a break; ..."}],
 *   "figures": {...}
 * }
 * }</pre>
 *
 * <p>{@code rule} is the rule's number in the statement of the composition problem, {@code at} the
 * minutes from the start that the remark is about. What is written is read as an equal review.
 */
public final class ReviewFormat {
  private static final Keys KEYS =
      Keys.of("format: \"arcwright-review\"", "version: 1", "fits: true", "remarks: []", "figures");
  private static final Keys REMARK =
      Keys.of("rule: 5", "at: 0", "text: \"It closes with a break.\"");

  private ReviewFormat() {}

  /**
   * Reads a file of at most 1 MB.
   *
   * @throws FormatException with all that is wrong
   */
  public static Review read(Path file) {
    return Document.json(file, Document.BY_HAND).read(ReviewFormat::review);
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static Review read(String name, String text) {
    return Document.json(name, text).read(ReviewFormat::review);
  }

  private static Optional<Review> review(Node node, Faults faults) {
    Fields fields = Fields.of(node, "review", KEYS, faults);
    Header.REVIEW.demand(fields, faults);
    boolean fits = fields.flag("fits");
    List<Remark> remarks = fields.list("remarks", ReviewFormat::remark);
    fields
        .required("fits")
        .filter(n -> fits != remarks.isEmpty())
        .ifPresent(n -> faults.add(n, "fits", "true without remarks, false with some, is right"));
    Optional<Figures> figures =
        fields.required("figures").flatMap(n -> FiguresForm.read(n, faults));
    return fields.build(() -> new Review(remarks, figures.orElseThrow()));
  }

  private static Optional<Remark> remark(Node node, Faults faults) {
    Fields fields = Fields.of(node, "remark", REMARK, faults);
    int rule = fields.whole("rule");
    Optional<Duration> at = fields.required("at").flatMap(n -> Times.minutes(n, "at", faults));
    String text = fields.text("text");
    return fields.build(() -> new Remark(rule, at.orElseThrow(), text));
  }

  /** The review in JSON. */
  public static String write(Review review) {
    return JsonWriter.write(
        Header.REVIEW
            .begin()
            .put("fits", review.fits())
            .put("remarks", Branch.list(review.remarks(), ReviewFormat::tree))
            .put("figures", FiguresForm.tree(review.figures()))
            .end());
  }

  private static Node tree(Remark remark) {
    return new Branch()
        .put("rule", remark.rule())
        .put("at", Times.minutes(remark.at()))
        .put("text", remark.text())
        .end();
  }
}
