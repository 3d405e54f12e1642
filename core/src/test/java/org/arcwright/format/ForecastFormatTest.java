package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.Catalog;
import org.arcwright.forecast.Forecast;
import org.arcwright.forecast.Forecaster;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ForecastFormatTest {
  private static final Forecaster WITHOUT_CATALOG =
      Forecaster.of(Catalog.of(List.of(), List.of(), List.of(), List.of()));

  private static final String TWO_ITEMS =
      ForecastFormat.write(
          WITHOUT_CATALOG.forecast(
              AgendaFormat.read(
                  "agenda.json",
                  """
                  {"format": "arcwright-agenda", "version": 1, "title": "Winter planning",
                   "goal": "choose", "mode": "remote", "people": 12, "items": [
                    {"exercise": "weather-report", "title": "Weather report", "phase": "open", "length": 10},
                    {"break": "ordinary", "length": 10}]}
                  """)));

  @Property(tries = 100, seed = "635")
  void what_is_written_is_read_as_the_same_forecast(@ForAll("agendas") Agenda agenda) {
    Forecast forecast = WITHOUT_CATALOG.forecast(agenda);
    String text = ForecastFormat.write(forecast);

    assertThat(ForecastFormat.read("f.json", text)).isEqualTo(forecast);
    assertThat(SchemaFile.complaints(Schema.FORECAST, text)).isEmpty();
  }

  @Provide
  Arbitrary<Agenda> agendas() {
    return Samples.agendas();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      value = {
        "arcwright-forecast ~ arcwright-log ~ 2:13: format, arcwright-log: this is no forecast; arcwright-forecast is right",
        "\"basis\": \"assumed\" ~ \"basis\": \"asumed\" ~ 108:23: basis, asumed: perhaps assumed",
        "\"took\": [10, ~ \"took\": [30, ~ 108:191: band, 10: the five times of a band ascend",
      })
  void a_fault_is_told_at_its_place(String text, String faulty, String complaint) {
    assertThat(Complaints.of(() -> ForecastFormat.read("f.json", TWO_ITEMS.replace(text, faulty))))
        .anySatisfy(line -> assertThat(line).contains(complaint));
  }
}
