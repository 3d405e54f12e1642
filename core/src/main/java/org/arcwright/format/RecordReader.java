package org.arcwright.format;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.arcwright.brief.Moment;
import org.arcwright.catalog.Mode;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Values;
import org.arcwright.live.Progress.Workshop;
import org.arcwright.record.Action;
import org.arcwright.record.After;
import org.arcwright.record.Decision;
import org.arcwright.record.Happening;
import org.arcwright.record.Point;
import org.arcwright.record.Remark;
import org.arcwright.record.Takeaway;
import org.arcwright.record.Vote;
import org.arcwright.record.WorkshopRecord;

/** Reads the record of a workshop. */
final class RecordReader {
  private static final Keys KEYS =
      Keys.of(
          "title: Winter planning",
          "mode: remote",
          "people: 9",
          "start: 2026-12-03 09:30",
          "zone: Europe/Vienna",
          "sponsor",
          "outcome",
          "happened",
          "decisions",
          "votes",
          "open-points",
          "parking-lot",
          "takeaways",
          "actions",
          "thanks",
          "notes",
          "follow-ups",
          "format: arcwright-record",
          "version: 1");
  private static final Keys HAPPENED =
      Keys.of("item: dot-voting", "title", "from: 09:33", "to: 09:44", "note");
  private static final Keys DECISION =
      Keys.of("what: We lend repair kits.", "how", "by", "why", "votes");
  private static final Keys POINT = Keys.of("what: Who keeps the key?", "who");
  private static final Keys TAKEAWAY = Keys.of("said: I learnt a lot.", "by");
  private static final Keys ACTION = Keys.of("who: Mara", "what: Ask for an offer.", "when");
  private static final Keys NOTE = Keys.of("at: 10:05", "text: The board was slow.");
  private static final Keys FOLLOW_UPS = Keys.of("handover", "first", "every-weeks", "times");

  private final Faults faults;
  private Optional<ZonedDateTime> start = Optional.empty();

  private RecordReader(Faults faults) {
    this.faults = faults;
  }

  static Optional<WorkshopRecord> read(Node node, Faults faults) {
    return new RecordReader(faults).read(node);
  }

  private Optional<WorkshopRecord> read(Node node) {
    Fields fields = Fields.of(node, "record", KEYS, faults);
    Header.RECORD.allow(fields, faults);
    String title = fields.text("title");
    Mode mode = fields.word(Mode.class, "mode");
    int people = fields.whole("people");
    start = new BriefTimes(fields, faults).start();
    boolean startFaulty = start.isEmpty() && fields.optional("start").isPresent();
    Optional<String> sponsor = fields.optionalText("sponsor");
    Optional<String> outcome = fields.optionalText("outcome");
    List<Happening> happened =
        startFaulty ? List.of() : fields.optionalList("happened", (n, f) -> happening(n));
    List<Decision> decisions = fields.optionalList("decisions", RecordReader::decision);
    List<Vote> votes = fields.optionalList("votes", VoteReader::read);
    List<Point> open = fields.optionalList("open-points", RecordReader::point);
    List<Point> parked = fields.optionalList("parking-lot", RecordReader::point);
    List<Takeaway> takeaways = fields.optionalList("takeaways", RecordReader::takeaway);
    List<Action> actions = fields.optionalList("actions", RecordReader::action);
    List<String> thanks = fields.optionalTexts("thanks");
    List<Remark> notes = startFaulty ? List.of() : fields.optionalList("notes", (n, f) -> note(n));
    Optional<After> after = fields.optional("follow-ups").flatMap(this::after);
    return fields.build(
        () ->
            new WorkshopRecord(
                new Workshop(title, mode, people, start),
                sponsor,
                outcome,
                happened,
                decisions,
                votes,
                open,
                parked,
                takeaways,
                actions,
                thanks,
                notes,
                after.orElse(After.USUAL)));
  }

  private Optional<Happening> happening(Node node) {
    Fields fields = Fields.of(node, "happening", HAPPENED, faults);
    String item = fields.text("item");
    Optional<String> title = fields.optionalText("title");
    Optional<Duration> from = fields.required("from").flatMap(this::time);
    Optional<Duration> to = fields.required("to").flatMap(this::time);
    Optional<String> note = fields.optionalText("note");
    return fields.build(
        () -> new Happening(item, title, from.orElseThrow(), to.orElseThrow(), note));
  }

  private Optional<Duration> time(Node node) {
    Optional<Moment> moment = BriefTimes.moment(node, faults);
    if (moment.isEmpty()) {
      return Optional.empty();
    }
    if (moment.get() instanceof Moment.After after) {
      return Optional.of(after.duration());
    }
    if (start.isEmpty()) {
      faults.add(node, "at", "a time of day needs a start; add start and zone to the record");
      return Optional.empty();
    }
    Duration after = moment.get().after(start.get());
    Duration before = after.minusDays(1);
    return Optional.of(before.compareTo(Happening.EARLIEST) >= 0 ? before : after);
  }

  private static Optional<Decision> decision(Node node, Faults faults) {
    Fields fields = Fields.of(node, "decision", DECISION, faults);
    String what = fields.text("what");
    Optional<String> how = fields.optionalText("how");
    Optional<String> by = fields.optionalText("by");
    Optional<String> why = fields.optionalText("why");
    List<Vote> votes = fields.optionalList("votes", VoteReader::read);
    return fields.build(() -> new Decision(what, how, by, why, votes));
  }

  private static Optional<Point> point(Node node, Faults faults) {
    if (node instanceof Scalar) {
      return Values.text(node, "point", faults)
          .flatMap(text -> Values.build(node, faults, () -> new Point(text, Optional.empty())));
    }
    Fields fields = Fields.of(node, "point", POINT, faults);
    String what = fields.text("what");
    Optional<String> who = fields.optionalText("who");
    return fields.build(() -> new Point(what, who));
  }

  private static Optional<Takeaway> takeaway(Node node, Faults faults) {
    if (node instanceof Scalar) {
      return Values.text(node, "takeaway", faults)
          .flatMap(text -> Values.build(node, faults, () -> new Takeaway(text, Optional.empty())));
    }
    Fields fields = Fields.of(node, "takeaway", TAKEAWAY, faults);
    String said = fields.text("said");
    Optional<String> by = fields.optionalText("by");
    return fields.build(() -> new Takeaway(said, by));
  }

  private static Optional<Action> action(Node node, Faults faults) {
    Fields fields = Fields.of(node, "action", ACTION, faults);
    String who = fields.text("who");
    String what = fields.text("what");
    Optional<LocalDate> when = fields.optional("when").flatMap(n -> day(n, "when", faults));
    return fields.build(() -> new Action(who, what, when));
  }

  private Optional<Remark> note(Node node) {
    Fields fields = Fields.of(node, "note", NOTE, faults);
    Optional<Duration> at = fields.required("at").flatMap(this::time);
    String text = fields.text("text");
    return fields.build(() -> new Remark(at.orElseThrow(), text));
  }

  private Optional<After> after(Node node) {
    Fields fields = Fields.of(node, "follow-ups", FOLLOW_UPS, faults);
    Optional<LocalDateTime> handover =
        fields
            .optional("handover")
            .flatMap(
                n ->
                    parsed(
                        n,
                        "handover",
                        "write date and time as 2026-12-04 10:00",
                        text -> LocalDateTime.parse(text.replaceFirst(" +", "T")),
                        faults));
    if (handover.isPresent() && start.isEmpty()) {
      faults.add(
          fields.node().at("handover"), "handover", "it needs a zone; add start and zone above");
    }
    Optional<LocalDate> first = fields.optional("first").flatMap(n -> day(n, "first", faults));
    int every = fields.optionalWhole("every-weeks").orElse(After.USUAL.everyWeeks());
    int times = fields.optionalWhole("times").orElse(After.USUAL.times());
    return fields.build(() -> new After(handover, first, every, times));
  }

  private static Optional<LocalDate> day(Node node, String what, Faults faults) {
    return parsed(node, what, "write the day as 2026-12-10", LocalDate::parse, faults);
  }

  private static <T> Optional<T> parsed(
      Node node, String what, String remedy, Function<String, T> parser, Faults faults) {
    Optional<String> text = Values.text(node, what, faults);
    try {
      return text.map(String::strip).map(parser);
    } catch (DateTimeException e) {
      faults.add(node, what, remedy);
      return Optional.empty();
    }
  }
}
