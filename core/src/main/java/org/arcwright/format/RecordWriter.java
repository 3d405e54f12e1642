package org.arcwright.format;

import java.time.Duration;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import org.arcwright.brief.Moment;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Node;
import org.arcwright.record.Action;
import org.arcwright.record.After;
import org.arcwright.record.Decision;
import org.arcwright.record.Happening;
import org.arcwright.record.Point;
import org.arcwright.record.Remark;
import org.arcwright.record.Takeaway;
import org.arcwright.record.WorkshopRecord;

/** Writes the record of a workshop as {@link RecordReader} reads it. */
final class RecordWriter {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

  private final Optional<ZonedDateTime> start;

  private RecordWriter(Optional<ZonedDateTime> start) {
    this.start = start;
  }

  static Node tree(WorkshopRecord made) {
    return new RecordWriter(made.workshop().start()).all(made);
  }

  private Node all(WorkshopRecord made) {
    Branch branch =
        new Branch()
            .put("title", made.workshop().title())
            .put("mode", made.workshop().mode().word())
            .put("people", made.workshop().people());
    Times.putStart(branch, start);
    branch
        .put("sponsor", made.sponsor())
        .put("outcome", made.outcome())
        .put("happened", Branch.list(made.happened(), this::tree))
        .put("decisions", Branch.list(made.decisions(), RecordWriter::tree));
    if (!made.votes().isEmpty()) {
      branch.put("votes", Branch.list(made.votes(), VoteWriter::tree));
    }
    return branch
        .put("open-points", Branch.list(made.openPoints(), RecordWriter::tree))
        .put("parking-lot", Branch.list(made.parkingLot(), RecordWriter::tree))
        .put("takeaways", Branch.list(made.takeaways(), RecordWriter::tree))
        .put("actions", Branch.list(made.actions(), RecordWriter::tree))
        .put("thanks", made.thanks())
        .put("notes", Branch.list(made.remarks(), this::tree))
        .put("follow-ups", tree(made.after()))
        .end();
  }

  private Node tree(Happening happening) {
    return new Branch()
        .put("item", happening.item())
        .put("title", happening.title())
        .put("from", time(happening.from()))
        .put("to", time(happening.to()))
        .put("note", happening.note())
        .end();
  }

  /** By the clock where that is read as the same time, else after the start. */
  private String time(Duration after) {
    if (start.isPresent()) {
      LocalTime clock = start.get().plus(after).toLocalTime();
      Duration read = new Moment.Clock(clock).after(start.get());
      if (read.equals(after) || after.isNegative()) {
        return clock.toString();
      }
    }
    return Times.text(after);
  }

  private static Node tree(Decision decision) {
    Branch branch =
        new Branch()
            .put("what", decision.what())
            .put("how", decision.how())
            .put("by", decision.by())
            .put("why", decision.why());
    if (!decision.votes().isEmpty()) {
      branch.put("votes", Branch.list(decision.votes(), VoteWriter::tree));
    }
    return branch.end();
  }

  private static Node tree(Point point) {
    return new Branch().put("what", point.what()).put("who", point.who()).end();
  }

  private static Node tree(Takeaway takeaway) {
    return new Branch().put("said", takeaway.said()).put("by", takeaway.by()).end();
  }

  private static Node tree(Action action) {
    return new Branch()
        .put("who", action.who())
        .put("what", action.what())
        .put("when", action.when().map(Object::toString))
        .end();
  }

  private Node tree(Remark remark) {
    return new Branch().put("at", time(remark.at())).put("text", remark.text()).end();
  }

  private static Node tree(After after) {
    return new Branch()
        .put("handover", after.handover().map(TIME::format))
        .put("first", after.first().map(Object::toString))
        .put("every-weeks", after.everyWeeks())
        .put("times", after.times())
        .end();
  }
}
