package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Split;
import org.arcwright.standin.StandIn;
import org.arcwright.standin.StandIns;
import org.arcwright.standin.Swap;
import org.arcwright.standin.ToolLoss;
import org.arcwright.standin.Turnout;
import org.junit.jupiter.api.Test;

class StandInsFormatTest {
  private static final String ONE =
      """
      {"format": "arcwright-stand-ins", "version": 1, "pairs": 1, "covered": 1,
       "tools": [{"tool": "board", "swaps": [{"place": 0}]}],
       "fewer": [], "alone": [], "decisions": [1],
       "agenda": {"format": "arcwright-agenda", "version": 1, "title": "Winter planning",
        "goal": "choose", "mode": "remote", "people": 12, "items": [
         {"exercise": "weather-report", "title": "Weather report", "phase": "open", "length": 10},
         {"break": "ordinary", "length": 10}]}}
      """;

  @Property(tries = 100, seed = "635")
  void what_is_written_is_read_as_equal(@ForAll("all") StandIns standIns) {
    String text = StandInsFormat.write(standIns);

    assertThat(StandInsFormat.read("s.json", text)).isEqualTo(standIns);
    assertThat(SchemaFile.complaints(Schema.STAND_INS, text)).isEmpty();
  }

  @Test
  void a_place_that_is_no_exercise_and_a_wrong_count_are_told_where_they_stand() {
    assertThat(Complaints.of(() -> StandInsFormat.read("s.json", ONE)))
        .anySatisfy(
            line -> assertThat(line).contains("3:42: decisions[0], 1: the place of an exercise"));
    assertThat(
            Complaints.of(
                () ->
                    StandInsFormat.read(
                        "s.json", ONE.replace("\"decisions\": [1]", "\"decisions\": []"))))
        .anySatisfy(line -> assertThat(line).contains("1:72: covered, 1: below stand 0"));
  }

  @Provide
  Arbitrary<StandIns> all() {
    return Samples.agendas().flatMap(StandInsFormatTest::all);
  }

  private static Arbitrary<StandIns> all(Agenda agenda) {
    List<Integer> places =
        IntStream.range(0, agenda.items().size())
            .filter(place -> agenda.items().get(place) instanceof Activity)
            .boxed()
            .toList();
    if (places.isEmpty()) {
      return Arbitraries.just(new StandIns(agenda, List.of(), List.of(), List.of(), List.of()));
    }
    Arbitrary<Integer> place = Arbitraries.of(places);
    Arbitrary<Swap> swaps = Combinators.combine(place, standIns().optional()).as(Swap::new);
    Arbitrary<ToolLoss> losses =
        Combinators.combine(Samples.ids(), swaps.list().ofMaxSize(3)).as(ToolLoss::new);
    Arbitrary<Turnout> turnouts =
        Combinators.combine(
                place,
                Arbitraries.integers().between(1, 500),
                Arbitraries.integers().between(1, 9_000).optional(),
                standIns().optional())
            .as(
                (where, least, seconds, other) ->
                    new Turnout(
                        where,
                        other.isPresent() ? List.of(least + 2, least) : List.of(),
                        least,
                        seconds.map(s -> new Split(least, 1 + s % least)),
                        seconds.map(Duration::ofSeconds),
                        other));
    return Combinators.combine(
            losses.list().ofMaxSize(2),
            turnouts.list().ofMaxSize(2),
            swaps.list().ofMaxSize(2),
            place.list().ofMaxSize(2))
        .as(
            (tools, fewer, alone, decisions) ->
                new StandIns(agenda, tools, fewer, alone, decisions));
  }

  private static Arbitrary<StandIn> standIns() {
    return Combinators.combine(
            Samples.ids(),
            Samples.texts(60),
            Arbitraries.integers().between(1, 9_000),
            Arbitraries.integers().between(-200, 200),
            Arbitraries.longs(),
            Samples.idSets(0),
            Samples.texts(40).list().ofMaxSize(2))
        .as(
            (id, title, seconds, change, points, tools, materials) ->
                new StandIn(
                    id,
                    title,
                    Duration.ofSeconds(seconds),
                    Duration.ofMinutes(change),
                    points,
                    new LinkedHashSet<>(tools),
                    materials));
  }
}
