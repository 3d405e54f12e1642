package org.arcwright.format;

import java.time.Duration;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.arcwright.brief.Brief;
import org.arcwright.brief.EnergyCurve;
import org.arcwright.brief.Group;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Node;

/** Writes a brief as {@link BriefReader} reads it, with everything said that defaults would say. */
final class BriefWriter {
  private BriefWriter() {}

  static Node tree(Brief brief) {
    return tree(new Branch(), brief);
  }

  /** The same, with the header that a program looks for. */
  static Node document(Brief brief) {
    return tree(Header.BRIEF.begin(), brief);
  }

  private static Node tree(Branch begun, Brief brief) {
    Branch branch =
        begun
            .put("title", brief.title())
            .put("goal", brief.goal())
            .put("people", tree(brief.group()))
            .put("mode", brief.mode().word())
            .put("cap", Times.text(brief.cap()));
    Times.putStart(branch, brief.start());
    branch
        .putSome("zones", brief.zones().stream().map(ZoneId::getId).toList())
        .putSome("tools", brief.tools())
        .put("rhythm", tree(brief.rhythm()));
    if (!brief.meals().isEmpty()) {
      branch.put("meals", Branch.list(brief.meals(), BriefWriter::tree));
    }
    branch
        .put("curve", tree(brief.curve()))
        .put("buffer", brief.bufferPercent() + "%")
        .putSome("given", brief.given());
    if (!brief.wishes().equals(Wishes.NONE)) {
      branch.put("wishes", tree(brief.wishes()));
    }
    if (!brief.ownItems().isEmpty()) {
      branch.put("own-items", Branch.list(brief.ownItems(), BriefWriter::tree));
    }
    return branch.end();
  }

  private static Node tree(Group group) {
    return new Branch()
        .put("count", group.count())
        .put("acquainted", group.acquaintance().word())
        .put("openness", group.openness())
        .end();
  }

  private static Node tree(Rhythm rhythm) {
    return new Branch()
        .put("stretch", range(rhythm.shortest(), rhythm.longest()))
        .put("break", rhythm.pause().isZero() ? "none" : Times.text(rhythm.pause()))
        .end();
  }

  private static String range(Duration from, Duration to) {
    return Times.text(from) + ".." + Times.text(to);
  }

  static Node tree(Meal meal) {
    return new Branch()
        .put("at", range(meal.earliest(), meal.latest()))
        .put("minutes", Times.minutes(meal.length()))
        .end();
  }

  private static Node tree(EnergyCurve curve) {
    Optional<Node> named =
        Arrays.stream(EnergyCurve.Shape.values())
            .filter(shape -> shape.curve().equals(curve))
            .findFirst()
            .map(shape -> Branch.text(shape.word()));
    return named.orElseGet(() -> Branch.list(curve.points(), BriefWriter::tree));
  }

  private static Node tree(EnergyCurve.Point point) {
    return Branch.list(
        List.of(Branch.number(point.percent()), Levels.tree(point.tenths())), node -> node);
  }

  private static Node tree(Wishes wishes) {
    Branch branch =
        new Branch()
            .putSome("include", wishes.include())
            .putSome("leave-out", wishes.leaveOut())
            .putSome("used-last-time", wishes.usedLastTime());
    if (!wishes.pins().isEmpty()) {
      branch.put("pin", Branch.list(wishes.pins(), BriefWriter::tree));
    }
    return branch.end();
  }

  private static Node tree(Wishes.Pin pin) {
    return new Branch().put("exercise", pin.exercise()).put("at", text(pin.at())).end();
  }

  static Node tree(OwnItem item) {
    return new Branch()
        .put("id", item.id())
        .put("title", item.title())
        .put("minutes", Times.minutes(item.length()))
        .put("phase", item.phase())
        .put("at", item.at().map(BriefWriter::text))
        .put("energy", item.energy())
        .put("format", item.format().word())
        .end();
  }

  static String text(Moment moment) {
    if (moment instanceof Moment.Clock clock) {
      return clock.time().toString();
    }
    return Times.text(((Moment.After) moment).duration());
  }
}
