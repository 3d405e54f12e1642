package org.arcwright.cli.handout;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Part;
import org.arcwright.cli.page.Block.Point;
import org.arcwright.cli.page.Block.Points;
import org.arcwright.cli.page.Block.Text;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.words.Hours;
import org.arcwright.cli.words.Language;
import org.arcwright.record.WorkshopRecord;

/**
 * The agenda of the call in which the results are handed over to the sponsor. It holds what the
 * record holds, and takes as long as that needs. Minutes: common practice, no source.
 */
public final class HandoverSheet {
  private static final int ROUND = 5;

  private final Account account;
  private final WorkshopRecord record;
  private final Language language;
  private final Hours hours;
  private final List<Block> parts = new ArrayList<>();
  private Duration sofar = Duration.ZERO;

  private HandoverSheet(Account account) {
    this.account = account;
    this.record = account.record();
    this.language = account.language();
    this.hours = new Hours(begins(account), language);
  }

  /** When the call is, if that is arranged. */
  static Optional<ZonedDateTime> begins(Account account) {
    return account
        .record()
        .after()
        .handover()
        .flatMap(time -> account.start().map(start -> time.atZone(start.getZone())));
  }

  /** How long the call takes. */
  static Duration length(Account account) {
    HandoverSheet call = new HandoverSheet(account);
    call.write();
    return call.sofar;
  }

  /** The sheet. */
  public static Sheet of(Account account) {
    HandoverSheet call = new HandoverSheet(account);
    call.write();
    Language language = call.language;
    List<String> facts = new ArrayList<>();
    call.record.sponsor().ifPresent(who -> facts.add(language.say("report.sponsor", who)));
    String day = call.hours.date().orElseGet(() -> language.say("handover.open"));
    facts.add(day);
    call.hours
        .zone()
        .ifPresent(
            zone ->
                facts.add(
                    language.say("hours.zone", call.hours.span(Duration.ZERO, call.sofar), zone)));
    facts.add(language.time(call.sofar));
    return new Sheet(account.title(), language.say("handover.kicker"), facts, call.parts);
  }

  private void write() {
    item(
        "outcome",
        5,
        record.outcome().map(text -> List.<Block>of(new Text(text))).orElseGet(List::of));
    item(
        "decisions",
        2 * record.decisions().size(),
        points(
            record.decisions().stream()
                .map(decision -> Point.of(decision.what(), account.way(decision)))
                .toList()));
    item("open-points", 3 * record.openPoints().size(), points(kept(record.openPoints())));
    item(
        "actions",
        record.actions().size(),
        points(
            record.actions().stream()
                .map(
                    action ->
                        Point.of(
                            action.when().isPresent()
                                ? account.line(action)
                                : language.say("handover.no-day", account.line(action))))
                .toList()));
    item("parking-lot", record.parkingLot().size(), points(kept(record.parkingLot())));
    item(
        "next",
        5,
        points(account.followUps().stream().map(day -> Point.of(language.date(day))).toList()));
  }

  private List<Point> kept(List<org.arcwright.record.Point> points) {
    return points.stream()
        .map(
            point ->
                Point.of(
                    point
                        .who()
                        .map(who -> language.say("report.with", point.what(), who))
                        .orElseGet(() -> language.say("handover.nobody", point.what()))))
        .toList();
  }

  private static List<Block> points(List<Point> points) {
    return points.isEmpty() ? List.of() : List.of(new Points(points));
  }

  /** An item, unless there is nothing to say. */
  private void item(String name, int minutes, List<Block> content) {
    if (!content.isEmpty()) {
      Duration end = sofar.plusMinutes((minutes + ROUND - 1) / ROUND * (long) ROUND);
      String title =
          language.say("run.item", hours.span(sofar, end), language.say("handover." + name));
      parts.add(new Part(name, title, false, content));
      sofar = end;
    }
  }
}
