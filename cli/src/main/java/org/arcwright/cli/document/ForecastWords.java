package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.forecast.Band;
import org.arcwright.forecast.Basis;
import org.arcwright.forecast.Forecast;
import org.arcwright.forecast.Part.Rest;
import org.arcwright.forecast.Part.Work;

/** What a forecast says, in sentences. */
final class ForecastWords {
  private final Forecast forecast;
  private final Agenda agenda;
  private final Clock clock;

  ForecastWords(Forecast forecast) {
    this.forecast = forecast;
    this.agenda = forecast.agenda();
    this.clock = new Clock(agenda.start());
  }

  /** The chance to end on time. */
  String onTime() {
    return "The chance to be done by "
        + clock.at(forecast.promised())
        + " is "
        + Words.chance(forecast.onTime())
        + ", if nobody shortens anything on the day.";
  }

  /** What is kept free, and what a wanted confidence asks for. */
  String free(Optional<Integer> confidence) {
    Duration free = forecast.promised().minus(agenda.end());
    String kept =
        free.isZero() || free.isNegative()
            ? "The agenda keeps nothing free"
            : "The agenda keeps " + Words.time(free) + " free";
    if (confidence.isEmpty()) {
      return kept + ".";
    }
    Duration wanted = forecast.buffer(confidence.get());
    String asked = "; for " + confidence.get() + " % it takes " + Words.time(wanted);
    Duration lacking = wanted.minus(free);
    boolean enough = lacking.isZero() || lacking.isNegative();
    return kept
        + asked
        + (enough ? ", so that is enough." : ", so " + Words.time(lacking) + " are lacking.");
  }

  /** When each break begins. */
  List<String> breaks() {
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < agenda.items().size(); i++) {
      if (agenda.items().get(i) instanceof Pause pause
          && forecast.parts().get(i) instanceof Rest rest) {
        sentences.add(
            "The "
                + (pause.meal() ? "meal" : "break")
                + " planned "
                + clock.said(pause.start())
                + " begins within five minutes of that with "
                + Words.chance(rest.onTime())
                + ", and on nine days of ten between "
                + clock.at(rest.begins().p5())
                + " and "
                + clock.at(rest.begins().p95())
                + ".");
      }
    }
    return sentences;
  }

  /** Which exercise carries most of the risk, and what holding it would bring. */
  String risk() {
    Optional<Integer> place = forecast.riskiest();
    if (place.isEmpty()) {
      return "No single exercise moves the end by a minute.";
    }
    AgendaItem item = agenda.items().get(place.get());
    Work work = (Work) forecast.parts().get(place.get());
    String title = item instanceof Activity activity ? activity.title() : "";
    Band took = work.took();
    String planned = Words.time(item.length());
    return Words.quoted(title)
        + " carries most of it: planned for "
        + planned
        + ", it takes "
        + Words.time(took.p5())
        + " to "
        + Words.time(took.p95())
        + " on nine days of ten. Held to its "
        + planned
        + ", it lets you be done by "
        + clock.at(work.kept().end())
        + " instead of "
        + clock.at(forecast.end(80))
        + " with 80 %, and the chance to end on time is "
        + Words.chance(work.kept().onTime())
        + " instead of "
        + Words.chance(forecast.onTime())
        + ".";
  }

  /** What is assumed. */
  List<String> basis() {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "Each exercise takes what its steps say for "
            + (agenda.people() == 1 ? "1 person" : agenda.people() + " people")
            + "; the time you plan is the likeliest, and whoever plans less than usual saves two"
            + " thirds of it and overruns by the rest.");
    sentences.add(
        "Workshops start as late as meetings do, half of them on time and the others five or ten"
            + " minutes late (Allen and others 2018, 252 meetings), and people come back from"
            + " breaks in the same way.");
    add(sentences, Basis.ASSUMED, "the catalog does not know", "a rule of thumb around the plan");
    add(
        sentences,
        Basis.NEAREST_SIZE,
        "the catalog does not foresee for so many people",
        "the range for the nearest number that it does");
    return sentences;
  }

  private void add(List<String> sentences, Basis basis, String why, String instead) {
    List<String> titles = new ArrayList<>();
    for (int i = 0; i < agenda.items().size(); i++) {
      if (agenda.items().get(i) instanceof Activity activity
          && forecast.parts().get(i) instanceof Work work
          && work.basis() == basis) {
        titles.add(Words.quoted(activity.title()));
      }
    }
    if (!titles.isEmpty()) {
      sentences.add(Words.list(titles) + ", which " + why + ": " + instead + " is taken.");
    }
  }
}
