package org.arcwright.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.format.LogFormat;
import org.arcwright.live.Day;
import org.arcwright.live.Progress;
import org.arcwright.live.Stand;
import picocli.CommandLine.Option;

/** Where the day stands, as told in options. */
final class StandOption {
  @Option(
      names = "--now",
      paramLabel = "TIME",
      converter = DayTime.Converter.class,
      description = {
        "what time it is, such as 10:40 (where the agenda does not say when it starts: hours and"
            + " minutes from the start); without it, by this machine's clock"
      })
  private Optional<DayTime> now = Optional.empty();

  @Option(
      names = "--upto",
      paramLabel = "ITEM",
      description =
          "what runs now: an exercise's id, its number in the agenda, or break; all before it is"
              + " over")
  private Optional<String> upto = Optional.empty();

  @Option(
      names = "--since",
      paramLabel = "TIME",
      converter = DayTime.Converter.class,
      description = "when that began; without it, when it was planned to")
  private Optional<DayTime> since = Optional.empty();

  @Option(
      names = "--done",
      paramLabel = "LOG",
      description = "a log of the day, as live writes it, instead of --upto")
  private Optional<Path> done = Optional.empty();

  @Option(
      names = "--end",
      paramLabel = "TIME",
      converter = DayTime.Converter.class,
      description = "when everybody has to be free, if that is not when it was promised")
  private Optional<DayTime> end = Optional.empty();

  /**
   * Where a day stands.
   *
   * @param plan what it follows: the agenda, or what its log says was agreed
   */
  record Told(Agenda plan, Stand stand) {}

  /** Whether nobody said what has run, so that all is taken to have gone as planned. */
  boolean isAssumed() {
    return done.isEmpty() && upto.isEmpty();
  }

  /** Where the day of that agenda stands. */
  Told of(Agenda agenda, InstantSource clock) {
    if (done.isPresent() && (upto.isPresent() || since.isPresent())) {
      throw new Refusal("--done and --upto both say what has run; give one of them");
    }
    if (since.isPresent() && upto.isEmpty()) {
      throw new Refusal("--since says when what runs began; name that with --upto");
    }
    try {
      return done.isPresent() ? logged(agenda, done.get(), clock) : told(agenda, clock);
    } catch (InvalidValueException e) {
      throw new Refusal(String.valueOf(e.getMessage()), e);
    }
  }

  private Told logged(Agenda agenda, Path log, InstantSource clock) {
    Progress progress = LogFormat.read(log).progress();
    Day day = DayLog.day(agenda, log, progress);
    Agenda plan = day.plan();
    Optional<OffsetDateTime> zero = Stand.zero(plan, progress);
    OffsetDateTime time =
        now.isPresent() && zero.isPresent()
            ? zero.get().plus(now.get().on(plan))
            : clock.instant().atZone(ZoneId.systemDefault()).toOffsetDateTime();
    if (!progress.notBefore(time).equals(time)) {
      Duration last = Duration.between(zero.orElse(time), progress.notBefore(time));
      throw new Refusal(
          log
              + ": its last entry is of "
              + DayTime.shown(plan, last)
              + ", and it cannot be earlier now; give a later --now");
    }
    Duration since = Duration.between(zero.orElse(time), time);
    return new Told(plan, Stand.of(plan, progress, time, until(plan, since)));
  }

  private Told told(Agenda agenda, InstantSource clock) {
    Duration time = now.map(t -> t.on(agenda)).orElseGet(() -> sinceStart(agenda, clock));
    Duration until = until(agenda, time);
    Optional<Duration> began = since.map(t -> t.on(agenda));
    if (began.filter(t -> t.compareTo(time) > 0).isPresent()) {
      throw new Refusal(
          "--since "
              + since.orElseThrow().text()
              + ": that is later than now, "
              + DayTime.shown(agenda, time));
    }
    return new Told(
        agenda,
        upto.isPresent()
            ? Stand.at(agenda, upto.get(), began, time, until)
            : Stand.asPlanned(agenda, time, until));
  }

  /** When everybody has to be free, which must be still to come. */
  private Duration until(Agenda agenda, Duration time) {
    Duration until = end.map(t -> t.on(agenda)).orElse(agenda.cap());
    if (time.isNegative()) {
      throw new Refusal(
          "the day begins only at "
              + DayTime.shown(agenda, Duration.ZERO)
              + "; nothing has slipped yet");
    }
    if (until.compareTo(time) <= 0) {
      throw new Refusal(
          "it is "
              + DayTime.shown(agenda, time)
              + " and the day was to be over at "
              + DayTime.shown(agenda, until)
              + "; if people can stay, say until when with a later --end");
    }
    return until;
  }

  private static Duration sinceStart(Agenda agenda, InstantSource clock) {
    ZonedDateTime start =
        agenda
            .start()
            .orElseThrow(
                () ->
                    new Refusal(
                        "the agenda does not say when it starts; say with --now how long ago that"
                            + " was, such as --now 1h40m"));
    Duration since = Duration.between(start.toInstant(), clock.instant());
    if (since.isNegative() || since.compareTo(Duration.ofDays(1)) > 0) {
      throw new Refusal(
          "the agenda is for " + start.toLocalDate() + ", not for now; say the time with --now");
    }
    return since;
  }
}
