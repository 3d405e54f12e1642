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

  /** Where the day of that agenda stands. */
  Stand of(Agenda agenda, InstantSource clock) {
    if (done.isPresent() && (upto.isPresent() || since.isPresent())) {
      throw new Refusal("--done and --upto both say what has run; give one of them");
    }
    if (since.isPresent() && upto.isEmpty()) {
      throw new Refusal("--since says when what runs began; name that with --upto");
    }
    Duration until = end.map(time -> time.on(agenda)).orElse(agenda.cap());
    try {
      return done.isPresent()
          ? logged(agenda, done.get(), until, clock)
          : told(agenda, until, clock);
    } catch (InvalidValueException e) {
      throw new Refusal(String.valueOf(e.getMessage()), e);
    }
  }

  private Stand logged(Agenda agenda, Path log, Duration until, InstantSource clock) {
    LogFormat.Reading reading = LogFormat.read(log);
    Optional<OffsetDateTime> zero = Stand.zero(agenda, reading.progress());
    OffsetDateTime time =
        now.isPresent() && zero.isPresent()
            ? zero.get().plus(now.get().on(agenda))
            : clock.instant().atZone(ZoneId.systemDefault()).toOffsetDateTime();
    return Stand.of(agenda, reading.progress(), time, until);
  }

  private Stand told(Agenda agenda, Duration until, InstantSource clock) {
    Duration time = now.map(t -> t.on(agenda)).orElseGet(() -> sinceStart(agenda, clock));
    return upto.isPresent()
        ? Stand.at(agenda, upto.get(), since.map(t -> t.on(agenda)), time, until)
        : Stand.asPlanned(agenda, time, until);
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
