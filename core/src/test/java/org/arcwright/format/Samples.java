package org.arcwright.format;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.Figures;
import org.arcwright.brief.Brief;
import org.arcwright.brief.EnergyCurve;
import org.arcwright.brief.Group;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Per;
import org.arcwright.catalog.Phase;
import org.arcwright.catalog.SizeRange;
import org.arcwright.catalog.Source;
import org.arcwright.catalog.Speaker;
import org.arcwright.catalog.Step;
import org.arcwright.catalog.Suitability;
import org.arcwright.compose.instance.Instance;

/** Values of the model as wild as their constructors allow. */
final class Samples {
  private static final List<ZoneId> ZONES = List.of(ZoneId.of("Asia/Kolkata"), ZoneId.of("-03:00"));

  private Samples() {}

  /** Texts that YAML and JSON could take for something else. */
  static Arbitrary<String> texts(int most) {
    Arbitrary<String> wild =
        Arbitraries.strings()
            .withChars(" :#'\"-{}[],&*!|>%@`\\\n~=?<.äß\u00A0\u2028\u20AC")
            .withCharRange('a', 'e')
            .withCharRange('0', '2')
            .ofMaxLength(most);
    Arbitrary<String> misleading =
        Arbitraries.of(
            "null",
            "~",
            "true",
            "no",
            "12",
            "1.5",
            "-3",
            "0x1F",
            "1e3",
            ".inf",
            "10:30",
            "---",
            "- a",
            "a: b",
            "# a",
            "{a}",
            "[a]",
            "2026-12-03",
            "<<",
            "=",
            "\uD83D\uDE00");
    Arbitrary<String> prose =
        Arbitraries.of("one", "two:", "\"three\"", "four,", "it's", "5", "-", "#six", "e\u0301")
            .list()
            .ofMinSize(1)
            .ofMaxSize(Math.max(1, most / 8))
            .map(words -> String.join(" ", words));
    return Arbitraries.oneOf(wild, misleading, prose).filter(text -> !text.isBlank());
  }

  /** All ids that occur. */
  static final List<String> IDS =
      List.of(
          "a", "b-c", "dot-voting", "1", "null", "true", "1e5", "0", "no", "x-1-y", "on", "12-30");

  static Arbitrary<String> ids() {
    return Arbitraries.of(IDS);
  }

  static Arbitrary<Set<String>> idSets(int least) {
    return ids().list().ofMinSize(least).ofMaxSize(4).map(LinkedHashSet::new);
  }

  private static Arbitrary<Integer> numbers(int least, int most) {
    return Arbitraries.integers().between(least, most);
  }

  private static Arbitrary<Duration> minutes(int least, int most) {
    return numbers(least, most).map(Duration::ofMinutes);
  }

  private static <E extends Enum<E>> Arbitrary<Set<E>> someOf(Class<E> type) {
    return Arbitraries.of(type).set().ofMinSize(1);
  }

  private static Arbitrary<List<String>> lines() {
    return texts(80).list().ofMaxSize(3);
  }

  /** Of at most three steps, 400 seconds a turn and 70 turns, which is within a day. */
  static Arbitrary<Exercise> exercises() {
    Arbitrary<Step> steps =
        Combinators.combine(
                texts(300),
                Arbitraries.of(Speaker.class),
                Arbitraries.of(Format.class),
                numbers(1, 400).list().ofSize(3).map(Samples::ascending),
                Arbitraries.of(Per.class),
                numbers(1, 50))
            .filter(
                (text, who, format, minutes, per, rounds) ->
                    format != Format.SOLO || per != Per.PERSON)
            .as(
                (text, who, format, minutes, per, rounds) ->
                    new Step(text, who, format, minutes, per, per == Per.ROUND ? rounds : 1));
    Arbitrary<Map<Mode, Suitability>> modes =
        Combinators.combine(numbers(0, 3), texts(100), idSets(0), lines())
            .as(Suitability::of)
            .list()
            .ofSize(3)
            .map(Samples::byMode);
    Arbitrary<Exercise.Care> care =
        Combinators.combine(texts(80).list().ofMinSize(1).ofMaxSize(2), texts(80), lines())
            .as(
                (cautions, optOut, access) ->
                    new Exercise.Care(cautions, Optional.of(optOut), access));
    Arbitrary<Exercise.Notes> notes =
        Combinators.combine(lines(), lines(), lines(), texts(80)).as(Exercise.Notes::new);
    Arbitrary<Source> sources =
        Arbitraries.oneOf(
            texts(200).map(Source.Published::new),
            texts(200).map(Source.Memory::new),
            Arbitraries.just(new Source.CommonPractice()));
    return Combinators.combine(
            ids(),
            texts(60),
            texts(400),
            idSets(1),
            steps.list().ofMinSize(1).ofMaxSize(3),
            modes,
            care,
            notes)
        .flatAs(
            (id, title, opening, yields, stepList, modeMap, careOf, notesOf) ->
                Combinators.combine(
                        Arbitraries.of(Kind.class),
                        texts(120),
                        numbers(1, 70),
                        numbers(1, 5),
                        numbers(0, 3),
                        Arbitraries.of(true, false),
                        idSets(0),
                        sources)
                    .as(
                        (kind, purpose, most, energy, openness, moves, needs, source) ->
                            new Exercise(
                                id,
                                title,
                                kind,
                                purpose,
                                new SizeRange(1, most),
                                Optional.of(new SizeRange(1, 1 + most / 2)),
                                energy,
                                openness,
                                moves,
                                needs,
                                yields,
                                opening,
                                stepList,
                                modeMap,
                                careOf,
                                notesOf,
                                source)));
  }

  private static Minutes ascending(List<Integer> seconds) {
    List<Integer> sorted = seconds.stream().sorted().toList();
    return new Minutes(
        Duration.ofSeconds(sorted.get(0)),
        Duration.ofSeconds(sorted.get(1)),
        Duration.ofSeconds(sorted.get(2)));
  }

  private static Map<Mode, Suitability> byMode(List<Suitability> each) {
    Map<Mode, Suitability> modes = new EnumMap<>(Mode.class);
    for (Mode mode : Mode.values()) {
      modes.put(mode, each.get(modes.size()));
    }
    return modes;
  }

  static Arbitrary<Goal> goals() {
    Arbitrary<Phase.Share> shares =
        numbers(0, 100)
            .list()
            .ofSize(3)
            .map(list -> list.stream().sorted().toList())
            .map(list -> new Phase.Share(list.get(0), list.get(1), list.get(2)));
    Arbitrary<Phase> phases =
        Combinators.combine(
                ids(),
                texts(60),
                someOf(Kind.class),
                numbers(1, 5),
                numbers(5, 30),
                shares,
                idSets(0))
            .as(Phase::new);
    return Combinators.combine(
            ids(),
            texts(60),
            texts(200),
            idSets(0),
            lines(),
            phases.list().ofMinSize(1).ofMaxSize(5).uniqueElements(Phase::name))
        .as(
            (id, title, purpose, given, cautions, arc) ->
                new Goal(id, title, purpose, arc.get(0).yields(), given, cautions, arc));
  }

  static Arbitrary<Brief> briefs() {
    Arbitrary<Optional<java.time.ZonedDateTime>> starts =
        Combinators.combine(
                Arbitraries.of("Europe/Vienna", "UTC", "+05:30", "Asia/Kathmandu"),
                numbers(0, 1439))
            .as(
                (zone, minute) ->
                    LocalDateTime.of(2026, 6, 3, 0, 0).plusMinutes(minute).atZone(ZoneId.of(zone)))
            .optional();
    Arbitrary<Moment> moments = minutes(0, 59).map(Moment.After::new);
    Arbitrary<Meal> meals =
        Combinators.combine(minutes(0, 59), minutes(60, 300), minutes(5, 240)).as(Meal::new);
    Arbitrary<EnergyCurve> curves =
        Arbitraries.oneOf(
            Arbitraries.of(EnergyCurve.Shape.class).map(EnergyCurve.Shape::curve),
            Combinators.combine(numbers(0, 100), numbers(10, 50))
                .as(EnergyCurve.Point::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(5)
                .uniqueElements(EnergyCurve.Point::percent)
                .map(
                    points ->
                        new EnergyCurve(
                            points.stream().sorted((a, b) -> a.percent() - b.percent()).toList())));
    Arbitrary<Wishes> wishes =
        Combinators.combine(
                ids().set().ofMaxSize(3),
                Arbitraries.of("left-out", "gone").set(),
                Combinators.combine(ids(), moments)
                    .as(Wishes.Pin::new)
                    .list()
                    .ofMaxSize(2)
                    .uniqueElements(Wishes.Pin::exercise),
                ids().set().ofMaxSize(2))
            .as(Wishes::new);
    Arbitrary<OwnItem> ownItems =
        Combinators.combine(
                ids(),
                texts(120),
                minutes(1, 300),
                ids().optional(),
                moments.optional(),
                numbers(1, 5),
                Arbitraries.of(Format.class))
            .as(OwnItem::new);
    Arbitrary<Group> groups =
        Combinators.combine(
                numbers(1, 1000), Arbitraries.of(Group.Acquaintance.class), numbers(0, 3))
            .as(Group::new);
    Arbitrary<Rhythm> rhythms =
        Combinators.combine(minutes(0, 30), minutes(30, 300), minutes(0, 120)).as(Rhythm::new);
    return Combinators.combine(
            texts(120),
            ids(),
            groups,
            Arbitraries.of(Mode.class),
            minutes(60, 2400),
            starts,
            rhythms,
            meals.list().ofMaxSize(2))
        .flatAs(
            (title, goal, group, mode, cap, start, rhythm, mealList) ->
                Combinators.combine(
                        idSets(0),
                        curves,
                        numbers(0, 100),
                        idSets(0),
                        wishes,
                        ownItems.list().ofMaxSize(3).uniqueElements(OwnItem::id),
                        numbers(0, 23))
                    .as(
                        (tools, curve, buffer, given, wished, own, hour) ->
                            new Brief(
                                title,
                                goal,
                                group,
                                mode,
                                cap,
                                start,
                                ZONES.subList(0, hour % 3),
                                tools,
                                rhythm,
                                mealList,
                                curve,
                                buffer,
                                given,
                                atClock(wished, start, hour, cap),
                                own)));
  }

  /** A pin by the clock, where there is a start and the day is long enough. */
  private static Wishes atClock(
      Wishes wishes, Optional<java.time.ZonedDateTime> start, int hour, Duration cap) {
    if (start.isEmpty() || cap.toHours() < 24) {
      return wishes;
    }
    List<Wishes.Pin> pins = new ArrayList<>(wishes.pins());
    pins.add(new Wishes.Pin("by-the-clock", new Moment.Clock(LocalTime.of(hour, 30))));
    return new Wishes(wishes.include(), wishes.leaveOut(), pins, wishes.usedLastTime());
  }

  static Arbitrary<Instance> instances() {
    Arbitrary<Instance.Phase> phases =
        Combinators.combine(
                texts(40),
                texts(20).set().ofMaxSize(3),
                numbers(1, 9),
                numbers(0, 9),
                numbers(0, 40),
                numbers(-50, 500))
            .as(
                (name, kinds, least, most, cells, target) ->
                    new Instance.Phase(
                        name,
                        kinds,
                        new Instance.Bounds(least, most),
                        new Instance.Bounds(5 * cells, 5 * least),
                        target,
                        List.of("p: 1")));
    Arbitrary<Instance.Candidate> candidates =
        Combinators.combine(
                texts(30),
                texts(20),
                numbers(1, 4).set().ofMinSize(1).ofMaxSize(3),
                numbers(0, 999),
                numbers(-9, 99),
                texts(20),
                numbers(0, Integer.MAX_VALUE))
            .as(
                (id, kind, cells, lengthCost, energy, format, cost) ->
                    new Instance.Candidate(
                        id,
                        kind,
                        new TreeSet<>(cells).stream().map(cell -> 5 * cell).toList(),
                        cells.stream().map(cell -> lengthCost).toList(),
                        energy,
                        format,
                        List.of("p: 1"),
                        List.of("q"),
                        cost));
    return Combinators.combine(
            numbers(1, 30),
            phases.list().ofMinSize(1).ofMaxSize(4),
            candidates.list().ofMaxSize(6).uniqueElements(Instance.Candidate::id),
            texts(20).list().ofMaxSize(3),
            numbers(0, 99).list().ofSize(7),
            numbers(0, 3),
            rules())
        .as(
            (cells, phaseList, candidateList, include, prices, meals, rules) ->
                new Instance(
                    5,
                    5 * cells,
                    java.util.Collections.nCopies(cells, prices.get(0)),
                    new Instance.Stretch(5, 20),
                    5 * meals,
                    java.util.Collections.nCopies(meals, new Instance.Meal(5, 10 * meals, 20)),
                    prices.get(1),
                    List.of("p: 1", "q"),
                    List.of("q"),
                    phaseList,
                    candidateList,
                    include,
                    include.stream().map(id -> new Instance.Pin(id, 5 * cells)).toList(),
                    rules,
                    new Instance.Weights(
                        prices.get(0),
                        prices.get(1),
                        prices.get(2),
                        prices.get(3),
                        prices.get(4),
                        prices.get(5),
                        prices.get(6))));
  }

  private static Arbitrary<Instance.Rules> rules() {
    Arbitrary<Set<String>> some = texts(20).set().ofMaxSize(3);
    Arbitrary<Instance.Apart> apart =
        Combinators.combine(texts(40), some, some, Arbitraries.of(true, false))
            .as(Instance.Apart::new);
    Arbitrary<Instance.AtMost> atMost =
        Combinators.combine(texts(40), some, numbers(0, 9)).as(Instance.AtMost::new);
    return Combinators.combine(apart.list().ofMaxSize(3), atMost.list().ofMaxSize(2))
        .as(Instance.Rules::new);
  }

  static Arbitrary<Agenda> agendas() {
    Arbitrary<AgendaItem> items =
        Combinators.combine(
                ids(),
                texts(120),
                Arbitraries.of(Kind.class).optional(),
                numbers(1, 9000),
                Arbitraries.of(Format.class),
                numbers(10, 50),
                numbers(0, 3))
            .as(
                (id, title, kind, seconds, format, energy, what) ->
                    what == 0
                        ? new AgendaItem.Pause(
                            Duration.ZERO, Duration.ofSeconds(seconds), seconds % 2 == 0)
                        : new AgendaItem.Activity(
                            id,
                            title,
                            kind,
                            "phase-1",
                            Duration.ZERO,
                            Duration.ofSeconds(seconds),
                            format,
                            energy));
    Arbitrary<Figures> figures =
        Combinators.combine(minutes(1, 99), numbers(0, 100), Arbitraries.longs().list().ofSize(8))
            .as(
                (time, fit, cost) ->
                    new Figures(
                        Map.of(Kind.DECISION, time),
                        fit,
                        time,
                        new Figures.Cost(
                            cost.get(0),
                            cost.get(1),
                            cost.get(2),
                            cost.get(3),
                            cost.get(4),
                            cost.get(5),
                            cost.get(6),
                            cost.get(7))));
    return Combinators.combine(
            briefs(),
            items.list().ofMinSize(1).ofMaxSize(8),
            numbers(10, 50).list().ofMaxSize(9),
            figures,
            texts(40))
        .as(
            (brief, itemList, curve, counted, title) ->
                new Agenda(
                    brief.title(),
                    brief.goal(),
                    brief.mode(),
                    brief.group().count(),
                    brief.cap(),
                    brief.start(),
                    List.of(new Agenda.PhaseTitle("phase-1", title)),
                    inARow(itemList),
                    brief.rhythm().pause(),
                    curve,
                    counted));
  }

  private static List<AgendaItem> inARow(List<AgendaItem> items) {
    List<AgendaItem> row = new ArrayList<>();
    Duration end = Duration.ZERO;
    for (AgendaItem item : items) {
      if (item instanceof AgendaItem.Activity a) {
        row.add(
            new AgendaItem.Activity(
                a.exercise(),
                a.title(),
                a.kind(),
                a.phase(),
                end,
                a.length(),
                a.format(),
                a.energy()));
      } else if (item instanceof AgendaItem.Pause p) {
        row.add(new AgendaItem.Pause(end, p.length(), p.meal()));
      }
      end = end.plus(item.length());
    }
    return row;
  }
}
