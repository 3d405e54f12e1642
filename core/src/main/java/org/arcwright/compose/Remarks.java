package org.arcwright.compose;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Nearest;
import org.arcwright.catalog.Phase;
import org.arcwright.catalog.Word;
import org.arcwright.compose.check.Finding;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.reduce.Reduction;
import org.arcwright.compose.reduce.Refusal;

/** Says a checker's findings in a facilitator's words. */
final class Remarks {
  private final Reduction reduction;
  private final Agenda agenda;
  private final Wording words;

  Remarks(Reduction reduction, Agenda agenda) {
    this.reduction = reduction;
    this.agenda = agenda;
    this.words = new Wording(reduction);
  }

  List<Review.Remark> on(List<Finding> findings) {
    return findings.stream()
        .map(
            finding ->
                new Review.Remark(
                    finding.rule(), Duration.ofMinutes(finding.at()), sentence(finding)))
        .toList();
  }

  private String sentence(Finding finding) {
    return order(finding)
        .or(() -> exercise(finding))
        .or(() -> phase(finding))
        .or(() -> pause(finding))
        .or(() -> wish(finding))
        .or(() -> rule(finding))
        .orElseGet(finding::text);
  }

  private Optional<String> order(Finding finding) {
    String text = null;
    if (finding instanceof Finding.NoExercise) {
      text = "There is no exercise in it; each phase needs at least one.";
    } else if (finding instanceof Finding.Gap gap) {
      text =
          gap.expected() == 0
              ? "The first item starts at %s; start it right at the beginning, %s."
                  .formatted(words.time(gap.at()), words.time(0))
              : "What starts at %s should start at %s, where the item before it ends."
                  .formatted(words.time(gap.at()), words.time(gap.expected()));
    } else if (finding instanceof Finding.BreakAtEdge edge) {
      text =
          edge.opens()
              ? "It opens with a break; open with an exercise."
              : "It closes with a break; leave that out, or close with an exercise.";
    } else if (finding instanceof Finding.OverCap over) {
      text =
          "Exercises of %s, breaks of %s and a buffer of %s minutes make %s; the time at hand is %s. Shorten or leave out something."
              .formatted(
                  over.exercises(),
                  over.breaks(),
                  over.buffer(),
                  over.exercises() + over.breaks() + over.buffer(),
                  over.cap());
    }
    return Optional.ofNullable(text);
  }

  private Optional<String> exercise(Finding finding) {
    String text = null;
    if (finding instanceof Finding.UnknownExercise unknown) {
      text = unknown(unknown);
    } else if (finding instanceof Finding.Repeated repeated) {
      text =
          "%s at %s was there before, at %s; take another exercise."
              .formatted(
                  words.title(repeated.id()),
                  words.time(repeated.at()),
                  words.time(repeated.earlier()));
    } else if (finding instanceof Finding.LengthNotAllowed length) {
      text =
          "%s at %s lasts %s minutes; for %s people it takes %s."
              .formatted(
                  words.title(length.id()),
                  words.time(length.at()),
                  length.length(),
                  reduction.brief().group().count(),
                  Wording.or(length.allowed()));
    } else if (finding instanceof Finding.NeedMissing need) {
      text =
          "%s at %s needs %s, which nothing before it leaves; put an exercise that does before it."
              .formatted(
                  words.title(need.id()), words.time(need.at()), words.product(need.product()));
    }
    return Optional.ofNullable(text);
  }

  private String unknown(Finding.UnknownExercise unknown) {
    Refusal refusal = reduction.leftOut().get(unknown.id());
    if (refusal != null) {
      return "%s at %s does not go with this brief: %s."
          .formatted(words.title(unknown.id()), words.time(unknown.at()), refusal.reason());
    }
    return "%s at %s is neither in the catalog nor among the brief's own items%s."
        .formatted(
            Wording.quoted(unknown.id()),
            words.time(unknown.at()),
            Nearest.to(unknown.id(), reduction.catalog().exercises().keySet())
                .map(near -> "; perhaps " + near)
                .orElse(""));
  }

  private Optional<String> phase(Finding finding) {
    String text = null;
    if (finding instanceof Finding.UnknownPhase unknown) {
      text =
          "%s at %s stands in the phase %s, which this goal does not have; its phases are %s."
              .formatted(
                  words.title(unknown.id()),
                  words.time(unknown.at()),
                  phaseAt(unknown.at()),
                  String.join(", ", reduction.goal().arc().stream().map(Phase::name).toList()));
    } else if (finding instanceof Finding.PhaseOutOfOrder late) {
      text =
          "%s at %s belongs to %s, but %s has begun before it; move it forward."
              .formatted(
                  words.title(late.id()),
                  words.time(late.at()),
                  words.phase(late.phase()),
                  words.phase(late.begun()));
    } else if (finding instanceof Finding.KindNotAllowed kind) {
      text = kind(kind);
    } else if (finding instanceof Finding.PhaseCount count) {
      text =
          "%s has %s; right is %s."
              .formatted(
                  words.phase(count.phase()),
                  count.count() == 0
                      ? "no exercise"
                      : count.count() == 1 ? "one exercise" : count.count() + " exercises",
                  range(count.bounds()));
    } else if (finding instanceof Finding.PhaseMinutes minutes) {
      text =
          "%s takes %s minutes in all; right is %s."
              .formatted(words.phase(minutes.phase()), minutes.minutes(), range(minutes.bounds()));
    } else if (finding instanceof Finding.YieldMissing missing) {
      text =
          "%s ends at %s without %s; put an exercise that leaves it in or before that phase."
              .formatted(
                  words.phase(missing.phase()),
                  words.time(missing.at()),
                  words.product(missing.product()));
    }
    return Optional.ofNullable(text);
  }

  private String kind(Finding.KindNotAllowed finding) {
    String what = words.title(finding.id()) + " at " + words.time(finding.at());
    List<String> kinds =
        finding.kinds().stream()
            .filter(kind -> Word.find(Kind.class, kind).isPresent())
            .sorted()
            .toList();
    int slash = finding.kind().indexOf('/');
    if (slash >= 0) {
      List<String> phases =
          Arrays.stream(finding.kind().substring(slash + 1).split("\\+"))
              .map(words::phase)
              .toList();
      return "%s leaves nothing that %s is for; it belongs to %s."
          .formatted(what, words.phase(finding.phase()), Wording.or(phases));
    }
    return Word.find(Kind.class, finding.kind()).isEmpty()
        ? "%s belongs to another phase than %s, says the brief."
            .formatted(what, words.phase(finding.phase()))
        : "%s is of the kind %s; %s takes %s."
            .formatted(what, finding.kind(), words.phase(finding.phase()), Wording.or(kinds));
  }

  private String phaseAt(long minute) {
    return agenda.activities().stream()
        .filter(activity -> activity.start().toMinutes() == minute)
        .map(Activity::phase)
        .map(Wording::quoted)
        .findFirst()
        .orElse("named there");
  }

  private Optional<String> pause(Finding finding) {
    String text = null;
    if (finding instanceof Finding.BreakLength pause) {
      text =
          pause.allowed().isEmpty()
              ? "The break at %s lasts %s minutes; this brief has no break there."
                  .formatted(words.time(pause.at()), pause.length())
              : "The break at %s lasts %s minutes; this brief wants %s."
                  .formatted(words.time(pause.at()), pause.length(), Wording.or(pause.allowed()));
    } else if (finding instanceof Finding.SideBySide twice) {
      text =
          "The break at %s follows right after a break; put an exercise between the two."
              .formatted(words.time(twice.at()));
    } else if (finding instanceof Finding.StretchTooLong stretch) {
      text =
          "From %s on people work %s minutes without a break; at most %s are right. Put a break in between."
              .formatted(words.time(stretch.at()), stretch.minutes(), stretch.most());
    } else if (finding instanceof Finding.MealElsewhere meal) {
      text =
          "The meal of %s minutes starts at %s; it should start between %s and %s."
              .formatted(
                  meal.meal().minutes(),
                  words.time(meal.at()),
                  words.time(meal.meal().from()),
                  words.time(meal.meal().to()));
    } else if (finding instanceof Finding.MealMissing meal) {
      text =
          "The meal of %s minutes is missing; start it between %s and %s."
              .formatted(
                  meal.meal().minutes(),
                  words.time(meal.meal().from()),
                  words.time(meal.meal().to()));
    }
    return Optional.ofNullable(text);
  }

  private Optional<String> wish(Finding finding) {
    String text = null;
    if (finding instanceof Finding.WishMissing wish) {
      Refusal refusal = reduction.leftOut().get(wish.id());
      text =
          "%s is wished for and missing; put it in%s."
              .formatted(
                  words.title(wish.id()),
                  refusal == null
                      ? ""
                      : ", or mend the brief, for it cannot be used: " + refusal.reason());
    } else if (finding instanceof Finding.PinElsewhere pin) {
      text =
          "%s starts at %s; the brief wants it at %s."
              .formatted(words.title(pin.id()), words.time(pin.at()), words.time(pin.pinned()));
    }
    return Optional.ofNullable(text);
  }

  private Optional<String> rule(Finding finding) {
    String text = null;
    if (finding instanceof Finding.NotNext next) {
      text =
          "%s at %s follows %s%s, against the rule %s; put another exercise%s between them."
              .formatted(
                  words.title(next.id()),
                  words.time(next.at()),
                  words.title(next.before()),
                  next.breakBetween() ? " after a break" : "",
                  Wording.quoted(next.name()),
                  next.breakBetween() ? "" : " or a break");
    } else if (finding instanceof Finding.TooMany many) {
      text =
          "%s at %s is one too many: the rule %s allows %s, and there are %s. Take another exercise."
              .formatted(
                  words.title(many.id()),
                  words.time(many.at()),
                  Wording.quoted(many.name()),
                  many.most(),
                  many.count());
    }
    return Optional.ofNullable(text);
  }

  private static String range(Bounds bounds) {
    return bounds.min() == bounds.max()
        ? String.valueOf(bounds.min())
        : "from " + bounds.min() + " to " + bounds.max();
  }
}
