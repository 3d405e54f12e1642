package org.arcwright.cli.handout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Cell;
import org.arcwright.cli.page.Block.Facts;
import org.arcwright.cli.page.Block.Part;
import org.arcwright.cli.page.Block.Picture;
import org.arcwright.cli.page.Block.Point;
import org.arcwright.cli.page.Block.Points;
import org.arcwright.cli.page.Block.Steps;
import org.arcwright.cli.page.Block.Table;
import org.arcwright.cli.page.Block.Text;
import org.arcwright.cli.page.Block.Words;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.picture.CoursePicture;
import org.arcwright.cli.picture.CourseWords;
import org.arcwright.cli.words.Hours;
import org.arcwright.cli.words.Language;
import org.arcwright.record.Course.Row;
import org.arcwright.record.Decision;
import org.arcwright.record.Happening;
import org.arcwright.record.Takeaway;
import org.arcwright.record.Vote;
import org.arcwright.record.WorkshopRecord;

/**
 * What came of the workshop: a page for the sponsor first, the details after it. What the record
 * does not have is left out.
 */
public final class ReportSheet {
  private final Account account;
  private final WorkshopRecord record;
  private final Language language;

  private ReportSheet(Account account) {
    this.account = account;
    this.record = account.record();
    this.language = account.language();
  }

  /** The sheet. */
  public static Sheet of(Account account) {
    ReportSheet report = new ReportSheet(account);
    List<Block> blocks = new ArrayList<>();
    report.record.outcome().ifPresent(text -> report.part(blocks, "outcome", new Text(text)));
    report.decisions(blocks);
    report.actions(blocks);
    report.points(blocks, "open-points", report.record.openPoints());
    report.next(blocks);
    List<Block> details = report.details();
    if (!details.isEmpty()) {
      blocks.add(new Part("details", report.language.say("report.details"), false, details));
    }
    return new Sheet(
        account.title(), report.language.say("report.kicker"), account.facts(), blocks);
  }

  private void part(List<Block> blocks, String name, Block... content) {
    blocks.add(Part.of(name, language.say("report." + name), content));
  }

  private void decisions(List<Block> blocks) {
    if (!record.decisions().isEmpty()) {
      part(
          blocks,
          "decisions",
          new Steps(
              record.decisions().stream()
                  .map(decision -> Point.of(decision.what(), account.way(decision)))
                  .toList()));
    }
  }

  private void actions(List<Block> blocks) {
    if (!record.actions().isEmpty()) {
      List<List<Cell>> rows =
          record.actions().stream()
              .map(
                  action ->
                      List.of(
                          Cell.of(action.who()),
                          Cell.of(action.what()),
                          Cell.of(
                              action
                                  .when()
                                  .map(language::day)
                                  .orElseGet(() -> language.say("report.no-day")))))
              .toList();
      List<String> heads =
          List.of(
              language.say("report.who"), language.say("report.what"), language.say("report.when"));
      part(blocks, "actions", new Table(language.say("report.actions"), heads, rows));
    }
  }

  private void points(List<Block> blocks, String name, List<org.arcwright.record.Point> points) {
    if (!points.isEmpty()) {
      part(
          blocks,
          name,
          new Points(
              points.stream()
                  .map(
                      point ->
                          Point.of(
                              point
                                  .who()
                                  .map(who -> language.say("report.with", point.what(), who))
                                  .orElse(point.what())))
                  .toList()));
    }
  }

  private void next(List<Block> blocks) {
    List<Point> points = new ArrayList<>();
    record
        .after()
        .handover()
        .ifPresent(
            time ->
                points.add(
                    Point.of(
                        language.say("report.handover"),
                        language.say(
                            "report.day-and-hour",
                            language.date(time.toLocalDate()),
                            language.clock(time.toLocalTime())))));
    List<LocalDate> days = account.followUps();
    if (!days.isEmpty()) {
      points.add(
          Point.of(
              language.say(
                  record.after().first().isPresent()
                      ? "report.follow-ups"
                      : account.isFollowedUpAfterWeekend()
                          ? "report.follow-ups.after-weekend"
                          : "report.follow-ups.proposed"),
              language.list(days.stream().map(language::day).toList())));
    }
    if (!points.isEmpty()) {
      part(blocks, "next", new Points(points));
    }
  }

  private List<Block> details() {
    List<Block> blocks = new ArrayList<>();
    course(blocks);
    for (int i = 0; i < record.decisions().size(); i++) {
      Decision decision = record.decisions().get(i);
      if (decision.why().isPresent() || !decision.votes().isEmpty()) {
        blocks.add(decision(decision, i + 1));
      }
    }
    if (!record.votes().isEmpty()) {
      List<Block> votes = new ArrayList<>();
      record.votes().forEach(vote -> votes.add(vote(vote, "vote-" + (votes.size() + 1))));
      blocks.add(new Part("votes", language.say("report.votes"), false, votes));
    }
    points(blocks, "parking-lot", record.parkingLot());
    if (!record.takeaways().isEmpty()) {
      part(
          blocks,
          "takeaways",
          record.takeaways().stream().map(this::takeaway).toArray(Block[]::new));
    }
    if (!record.remarks().isEmpty()) {
      Hours hours = account.hours();
      part(
          blocks,
          "notes",
          new Facts(
              record.remarks().stream()
                  .map(remark -> Point.of(hours.at(remark.at()), remark.text()))
                  .toList()));
    }
    if (!record.thanks().isEmpty()) {
      part(blocks, "thanks", new Points(record.thanks().stream().map(Point::of).toList()));
    }
    return blocks;
  }

  private void course(List<Block> blocks) {
    if (record.happened().isEmpty()) {
      return;
    }
    Hours hours = account.hours();
    boolean planned = account.course().promised().isPresent();
    List<Block> content = new ArrayList<>();
    CourseWords.ended(account.course(), hours, language)
        .ifPresent(sentence -> content.add(new Text(sentence)));
    content.add(
        new Picture(
            CoursePicture.draw(account.course(), hours, language, "course-", account.title()),
            List.of()));
    List<String> heads = new ArrayList<>(List.of(language.say("agenda.what")));
    if (planned) {
      heads.add(language.say("course.head.planned"));
    }
    heads.add(language.say("course.head.happened"));
    if (planned) {
      heads.add(language.say("course.head.difference"));
    }
    List<List<Cell>> rows =
        account.course().rows().stream().map(row -> row(row, hours, planned)).toList();
    content.add(new Table(language.say("report.course"), heads, rows));
    blocks.add(
        new Part(
            "course",
            language.say(planned ? "report.course" : "report.course.unplanned"),
            false,
            content));
  }

  private List<Cell> row(Row row, Hours hours, boolean planned) {
    String notes =
        String.join(
            " ", row.held().stream().map(Happening::note).flatMap(Optional::stream).toList());
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.of(CourseWords.title(row, language), notes));
    if (planned) {
      cells.add(Cell.of(CourseWords.planned(row, hours, language)));
    }
    cells.add(Cell.of(CourseWords.held(row, hours, language)));
    if (planned) {
      cells.add(Cell.of(CourseWords.longer(row, language)));
    }
    return cells;
  }

  private Part decision(Decision decision, int number) {
    List<Block> blocks = new ArrayList<>();
    List<Point> facts = new ArrayList<>();
    decision.by().ifPresent(by -> facts.add(Point.of(language.say("report.decision.by"), by)));
    decision.how().ifPresent(how -> facts.add(Point.of(language.say("report.decision.how"), how)));
    decision.why().ifPresent(why -> facts.add(Point.of(language.say("report.decision.why"), why)));
    if (!facts.isEmpty()) {
      blocks.add(new Facts(facts));
    }
    for (int i = 0; i < decision.votes().size(); i++) {
      blocks.add(vote(decision.votes().get(i), "decision-" + number + "-vote-" + (i + 1)));
    }
    String title = language.say("report.decision", number, decision.what());
    return new Part("decision-" + number, title, false, blocks);
  }

  private Part vote(Vote vote, String id) {
    return new Part(id, vote.question(), false, VoteBlocks.of(vote, language));
  }

  private Block takeaway(Takeaway takeaway) {
    List<String> paragraphs = new ArrayList<>(List.of(takeaway.said()));
    takeaway.by().ifPresent(by -> paragraphs.add(language.say("report.said-by", by)));
    return new Words(paragraphs);
  }
}
