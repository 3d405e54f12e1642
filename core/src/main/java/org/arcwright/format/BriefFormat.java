package org.arcwright.format;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Oddities;
import org.arcwright.brief.Oddity;
import org.arcwright.catalog.Catalog;
import org.arcwright.format.tree.Fault;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Sequence;
import org.arcwright.format.tree.YamlWriter;

/**
 * Briefs in YAML or JSON, at most 1 MB. Only {@code title}, {@code goal}, {@code people}, {@code
 * mode} and {@code cap} must stand there:
 *
 * <pre>
 * title: Winter planning
 * goal: choose-a-direction
 * people: {count: 12, acquainted: mixed, openness: 1}      # or just 12
 * mode: remote                                             # remote, in-person, hybrid
 * cap: 3h                                                  # 3h, 90m, 2h30m or PT2H30M
 * start: 2026-12-03 09:30
 * zone: Europe/Vienna
 * zones: [Asia/Kolkata, Europe/Lisbon]                    # where others take part
 * tools: [call, breakouts, board]                          # without it: what is usual for the mode
 * rhythm: {stretch: 30m..60m, break: 10m}                  # break: none
 * meal: {at: 12:00..12:45, minutes: 45}                    # or meals: [...]; or after the start: 2h..2h30m
 * curve: arch                                              # or points: [[0, 3], [40, 3.6], [100, 2.4]]
 * buffer: 15%
 * given: [shared-picture]
 * wishes:
 *   include: [dot-voting]
 *   leave-out: [premortem]
 *   used-last-time: [weather-report]
 *   pin: [{exercise: chat-burst, at: 10:30}]               # or after the start: 60m
 * own-items:
 *   - {id: guest-talk, title: A guest's view, minutes: 20, phase: widen, at: 45m, energy: 2, format: plenary}
 * </pre>
 *
 * <p>Programs put {@code "format": "arcwright-brief", "version": 1} before the rest.
 *
 * <p>Times of day need a start, and those before it count for the next day. Every reader throws
 * {@link FormatException} with all that is wrong.
 */
public final class BriefFormat {
  private BriefFormat() {}

  /** Reads a brief; its words are not held against any catalog. */
  public static Brief read(Path file) {
    return read(Document.of(file, Document.BY_HAND), Optional.empty());
  }

  /** Reads a brief from a text; the name says where it comes from and how it is written. */
  public static Brief read(String name, String text) {
    return read(Document.of(name, text), Optional.empty());
  }

  /** Reads a brief; goal, exercises, tools, work products and phases must be the catalog's. */
  public static Brief read(Path file, Catalog catalog) {
    return read(Document.of(file, Document.BY_HAND), Optional.of(catalog));
  }

  /** Reads a brief from a text, as {@link #read(Path, Catalog)} does. */
  public static Brief read(String name, String text, Catalog catalog) {
    return read(Document.of(name, text), Optional.of(catalog));
  }

  /**
   * Reads a brief as {@link #read(Path, Catalog)} does, and tells beside what is wrong what is odd.
   * Nothing is thrown for what stands in the file.
   */
  public static BriefReading check(Path file, Catalog catalog) {
    return check(Document.of(file, Document.BY_HAND), catalog);
  }

  /** Checks a text; the name says where it comes from and how it is written. */
  public static BriefReading check(String name, String text, Catalog catalog) {
    return check(Document.of(name, text), catalog);
  }

  private static BriefReading check(Document document, Catalog catalog) {
    Optional<Brief> brief =
        document.tryRead((node, faults) -> BriefReader.read(node, Optional.of(catalog), faults));
    if (!document.isSound() || brief.isEmpty()) {
      return new BriefReading(Optional.empty(), document.problems(), List.of());
    }
    Node root = document.root().orElseThrow();
    List<Problem> hints =
        Oddities.of(brief.get(), catalog).stream()
            .map(oddity -> hint(document, root, oddity))
            .sorted(
                Comparator.<Problem>comparingInt(hint -> hint.place().line())
                    .thenComparingInt(hint -> hint.place().column()))
            .toList();
    return new BriefReading(brief, List.of(), hints);
  }

  private static Problem hint(Document document, Node root, Oddity oddity) {
    String field = oddity.field();
    boolean single = field.startsWith("meals[0]") && root.lookUp("meals").isEmpty();
    Node node = root.at(single ? field.replace("meals[0]", "meal") : field);
    String name = field.replaceAll("\\[\\d+\\]", "");
    return document.problem(
        new Fault(
            node.line(),
            node.column(),
            name.substring(name.lastIndexOf('.') + 1),
            oddity.value(),
            oddity.remark()));
  }

  private static Brief read(Document document, Optional<Catalog> catalog) {
    return document.read((node, faults) -> BriefReader.read(node, catalog, faults));
  }

  /** The brief in YAML, with what it leaves to defaults written out; times are whole minutes. */
  public static String write(Brief brief) {
    return YamlWriter.write(BriefWriter.tree(brief));
  }

  /** The brief in JSON, for other programs: as {@link #write}, under a header. */
  public static String writeJson(Brief brief) {
    return JsonWriter.write(BriefWriter.document(brief));
  }

  /**
   * The line in which a brief says something, counted from 1, if it does.
   *
   * @param field keys with points between them, such as {@code people.openness}
   * @param word the element of a list that is meant, if the field is a list
   * @throws FormatException if the file is no YAML or JSON
   */
  public static OptionalInt line(Path file, String field, String word) {
    return Document.of(file, Document.BY_HAND)
        .read((node, faults) -> Optional.of(line(node, field, word)));
  }

  private static OptionalInt line(Node node, String field, String word) {
    Optional<Node> found = node.lookUp(field);
    if (found.isEmpty()) {
      return OptionalInt.empty();
    }
    if (found.get() instanceof Sequence list) {
      for (Node element : list.nodes()) {
        if (element.shown().equals(word)) {
          return OptionalInt.of(element.line());
        }
      }
    }
    return OptionalInt.of(found.get().line());
  }
}
