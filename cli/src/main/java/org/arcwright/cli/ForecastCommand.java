package org.arcwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.arcwright.catalog.Catalog;
import org.arcwright.cli.document.FanDrawing;
import org.arcwright.cli.document.ForecastDocument;
import org.arcwright.cli.document.Marks;
import org.arcwright.cli.document.Style;
import org.arcwright.forecast.Forecast;
import org.arcwright.forecast.Forecaster;
import org.arcwright.format.ForecastFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** From an agenda to when it will really end. */
@Command(
    name = "forecast",
    description = {"Says when an agenda will really end, and what puts that at risk.", ""},
    sortOptions = false)
final class ForecastCommand implements Callable<Integer> {
  @Mixin private AgendaInput input = new AgendaInput();

  @Option(
      names = "--confidence",
      paramLabel = "PERCENT",
      converter = Percents.class,
      description =
          "how sure you want to be of ending on time, such as 90%%; exit code 1 if the agenda is"
              + " not")
  private Optional<Integer> confidence = Optional.empty();

  @Mixin private PictureOption output = new PictureOption();

  @Parameters(index = "1..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;

  ForecastCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Optional<WholeFile> outFile = output.file();
    outFile
        .filter(input::holds)
        .ifPresent(
            file -> {
              throw new Refusal(file.path() + ": that is read here; name another file");
            });
    Catalog catalog = catalogs.read(more, terminal).catalog();
    AgendaInput.Read read = input.read(catalog, terminal);
    Forecaster forecaster = Forecaster.of(catalog);
    Forecast forecast =
        read.asking(
            () ->
                read.brief()
                    .map(brief -> forecaster.forecast(read.agenda(), brief))
                    .orElseGet(() -> forecaster.forecast(read.agenda())));
    Delivery.of(
        terminal, outFile, (marks, style, width) -> document(forecast, marks, style, width));
    boolean sure = confidence.isEmpty() || 100 * forecast.onTime() >= confidence.get();
    return sure ? Exit.DONE : Exit.NEGATIVE;
  }

  private String document(Forecast forecast, Marks marks, Style style, int width) {
    return switch (output.form()) {
      case TEXT -> ForecastDocument.write(forecast, confidence, marks, style, width);
      case JSON -> ForecastFormat.write(forecast);
      case SVG -> FanDrawing.svg(forecast);
    };
  }
}
