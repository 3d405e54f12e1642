package org.arcwright.format;

import java.nio.file.Path;
import org.arcwright.format.tree.YamlWriter;
import org.arcwright.record.WorkshopRecord;

/**
 * Records of workshops in YAML or JSON, at most 1 MB. Only {@code title}, {@code mode} and {@code
 * people} must stand there:
 *
 * <pre>
 * title: Winter planning
 * mode: remote
 * people: 9
 * start: 2026-12-03 09:30                                  # when it was to start
 * zone: Europe/Vienna
 * sponsor: The board
 * outcome: We lend repair kits, for one season to begin with.
 * happened:
 *   - {item: weather-report, from: 09:33, to: 09:44, note: Two joined by phone.}
 *   - {item: break, from: 10:20, to: 10:32}                # or after the start: 50m
 *   - {item: guest-talk, title: A guest's view, from: 10:32, to: 10:50}
 * decisions:
 *   - what: We lend repair kits.
 *     how: dots, then a round of consent
 *     by: all nine present
 *     why: Most asked for, and two of us can teach it.
 *     votes:
 *       - question: What do we look at more closely?
 *         method: multivoting
 *         votes-each: 3
 *         on-one: 2
 *         options: [Repair kits, Seeds, Tents]
 *         ballots: [{Repair kits: 2, Seeds: 1}, {Tents: 3}]    # or voters: 9 and totals: {...}
 *         result: Repair kits                              # or a list of those that were kept
 * votes: []                                                # that led to no decision
 * open-points: [Who keeps the key?, {what: Insurance, who: Mara}]
 * parking-lot: [A second branch]
 * takeaways: [{said: I did not know how much we have., by: Ilse}]
 * actions: [{who: Mara, what: Ask for an offer., when: 2026-12-10}]
 * thanks: [To Joan for the room.]
 * notes: [{at: 10:05, text: The board was slow.}]
 * follow-ups: {handover: 2026-12-04 10:00, first: 2026-12-17, every-weeks: 2, times: 3}
 * </pre>
 *
 * <p>{@link org.arcwright.record.Method} lists how votes may be counted; each has keys of its own,
 * which {@link Schema#RECORD} describes. Every reader throws {@link FormatException} with all that
 * is wrong.
 */
public final class RecordFormat {
  private RecordFormat() {}

  /** Reads a record. */
  public static WorkshopRecord read(Path file) {
    return Document.of(file, Document.BY_HAND).read(RecordReader::read);
  }

  /** Reads a record from a text; the name says where it comes from and how it is written. */
  public static WorkshopRecord read(String name, String text) {
    return Document.of(name, text).read(RecordReader::read);
  }

  /** The record in YAML. */
  public static String write(WorkshopRecord made) {
    return YamlWriter.write(RecordWriter.tree(made));
  }
}
