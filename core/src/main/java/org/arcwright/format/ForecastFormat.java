package org.arcwright.format;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.forecast.Band;
import org.arcwright.forecast.Basis;
import org.arcwright.forecast.Forecast;
import org.arcwright.forecast.Part;
import org.arcwright.forecast.Part.Kept;
import org.arcwright.forecast.Part.Rest;
import org.arcwright.forecast.Part.Work;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.ScalarType;
import org.arcwright.format.tree.Values;

/**
 * A forecast in JSON, for other programs:
 *
 * <pre>{@code
 * {
 *   "format": "arcwright-forecast", "version": 1,
 *   "promised": 90, "onTime": 0.9312,
 *   "begins": [0, 0, 5, 5, 10],
 *   "ends": [71, 72, ... 98],
 *   "parts": [
 *     {"basis": "catalog", "took": [8, 9, 10, 12, 14], "begins": [0, 0, 5, 5, 10], "ends": [8, 11, 14, 17, 21],
 *      "kept": {"onTime": 0.9401, "end": 84}},
 *     {"onTime": 0.71, "took": [10, 10, 15, 15, 20], "begins": [8, 11, 14, 17, 21], "ends": [19, 23, 27, 32, 38]}],
 *   "agenda": {"format": "arcwright-agenda", ...}
 * }
 * }</pre>
 *
 * <p>Times are whole minutes from the planned start, chances run from 0 to 1 with four decimals.
 * {@code ends} says when the last item is over with 1, 2 ... 99 per cent, all other lists of times
 * with 5, 20, 50, 80 and 95 per cent. {@code parts} follow the agenda's items; a break has {@code
 * onTime}, the chance that it begins within five minutes of plan; an exercise has {@code kept},
 * what would follow if it took exactly its planned time. What is written is read as an equal
 * forecast.
 */
public final class ForecastFormat {
  private static final Keys KEYS =
      Keys.of(
          "format: \"arcwright-forecast\"",
          "version: 1",
          "promised: 90",
          "onTime: 0.93",
          "begins: [0, 0, 5, 5, 10]",
          "ends",
          "parts",
          "agenda");
  private static final Keys WORK =
      Keys.of(
          "basis: \"catalog\"",
          "took: [8, 9, 10, 12, 14]",
          "begins: [0, 0, 5, 5, 10]",
          "ends: [8, 11, 14, 17, 21]",
          "kept: {\"onTime\": 0.94, \"end\": 84}");
  private static final Keys KEPT = Keys.of("onTime: 0.94", "end: 84");
  private static final Keys REST =
      Keys.of(
          "onTime: 0.71",
          "took: [10, 10, 15, 15, 20]",
          "begins: [8, 11, 14, 17, 21]",
          "ends: [19, 23, 27, 32, 38]");
  private static final String BAND = "[8, 11, 14, 17, 21]";

  private ForecastFormat() {}

  /**
   * Reads a file of at most 1 MB.
   *
   * @throws FormatException with all that is wrong
   */
  public static Forecast read(Path file) {
    return Document.json(file, Document.BY_HAND).read(ForecastFormat::forecast);
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static Forecast read(String name, String text) {
    return Document.json(name, text).read(ForecastFormat::forecast);
  }

  private static Optional<Forecast> forecast(Node node, Faults faults) {
    Fields fields = Fields.of(node, "forecast", KEYS, faults);
    Header.FORECAST.demand(fields, faults);
    Duration promised = Duration.ofMinutes(fields.whole("promised"));
    double onTime = chance(fields, "onTime", faults);
    Optional<Band> begins = band(fields, "begins");
    List<Duration> ends = fields.wholes("ends").stream().map(Duration::ofMinutes).toList();
    List<Part> parts = fields.list("parts", ForecastFormat::part);
    Optional<Agenda> agenda = fields.required("agenda").flatMap(n -> AgendaReader.read(n, faults));
    return fields.build(
        () ->
            new Forecast(
                agenda.orElseThrow(), promised, onTime, begins.orElseThrow(), ends, parts));
  }

  private static Optional<Part> part(Node node, Faults faults) {
    boolean work = node instanceof Mapping mapping && mapping.find("basis").isPresent();
    Fields fields = Fields.of(node, "part", work ? WORK : REST, faults);
    Optional<Band> took = band(fields, "took");
    Optional<Band> begins = band(fields, "begins");
    Optional<Band> ends = band(fields, "ends");
    if (work) {
      Basis basis = fields.word(Basis.class, "basis");
      Optional<Kept> kept = fields.required("kept").flatMap(n -> kept(n, faults));
      return fields.build(
          () ->
              new Work(
                  basis,
                  took.orElseThrow(),
                  begins.orElseThrow(),
                  ends.orElseThrow(),
                  kept.orElseThrow()));
    }
    double onTime = chance(fields, "onTime", faults);
    return fields.build(
        () -> new Rest(onTime, took.orElseThrow(), begins.orElseThrow(), ends.orElseThrow()));
  }

  private static Optional<Kept> kept(Node node, Faults faults) {
    Fields fields = Fields.of(node, "kept", KEPT, faults);
    double onTime = chance(fields, "onTime", faults);
    Duration end = Duration.ofMinutes(fields.whole("end"));
    return fields.build(() -> new Kept(onTime, end));
  }

  private static double chance(Fields fields, String key, Faults faults) {
    return fields
        .required(key)
        .flatMap(n -> Values.number(n, key, faults))
        .map(BigDecimal::doubleValue)
        .orElse(0.0);
  }

  private static Optional<Band> band(Fields fields, String key) {
    fields.checkLength(key, 5, BAND);
    fields.alias("band", fields.optional(key).orElse(fields.node()));
    List<Duration> times = fields.wholes(key).stream().map(Duration::ofMinutes).toList();
    return times.size() != 5
        ? Optional.empty()
        : fields.build(
            () -> new Band(times.get(0), times.get(1), times.get(2), times.get(3), times.get(4)));
  }

  /** The forecast in JSON. */
  public static String write(Forecast forecast) {
    return JsonWriter.write(
        Header.FORECAST
            .begin()
            .put("promised", forecast.promised().toMinutes())
            .put("onTime", number(forecast.onTime()))
            .put("begins", tree(forecast.begins()))
            .put("ends", Branch.list(forecast.ends(), time -> Branch.number(time.toMinutes())))
            .put("parts", Branch.list(forecast.parts(), ForecastFormat::tree))
            .put("agenda", AgendaWriter.tree(forecast.agenda()).end())
            .end());
  }

  private static Node tree(Part part) {
    Branch branch = new Branch();
    if (part instanceof Work work) {
      branch.put("basis", work.basis().word());
    } else if (part instanceof Rest rest) {
      branch.put("onTime", number(rest.onTime()));
    }
    branch
        .put("took", tree(part.took()))
        .put("begins", tree(part.begins()))
        .put("ends", tree(part.ends()));
    if (part instanceof Work work) {
      branch.put(
          "kept",
          new Branch()
              .put("onTime", number(work.kept().onTime()))
              .put("end", work.kept().end().toMinutes())
              .end());
    }
    return branch.end();
  }

  private static Node tree(Band band) {
    List<Duration> times = List.of(band.p5(), band.p20(), band.p50(), band.p80(), band.p95());
    return Branch.list(times, time -> Branch.number(time.toMinutes()));
  }

  /** A number with its decimals. */
  static Node number(double number) {
    String text = BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    return new Scalar(0, 0, ScalarType.DECIMAL, text);
  }
}
