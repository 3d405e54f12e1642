package org.arcwright.standin;

import java.util.List;
import java.util.stream.IntStream;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.catalog.InvalidValueException;

/**
 * What to do when something fails on the day.
 *
 * <p>The stand-ins for one cause go together: whichever of them are used, alone or with others, all
 * that is left has what it needs, every phase leaves what it must, no exercise comes twice, no
 * stretch without a break is too long, and the workshop ends in its time, if need be at the expense
 * of the closing buffer.
 *
 * @param agenda in which
 * @param tools one for each tool that the agenda leans on, the one that most exercises lean on
 *     first
 * @param fewer what becomes of each exercise when fewer people come, in the agenda's order; own
 *     items are not among them
 * @param alone what one person cannot lead without a producer, and what to do instead
 * @param decisions places of the decision exercises, which change if the sponsor is not there
 */
public record StandIns(
    Agenda agenda,
    List<ToolLoss> tools,
    List<Turnout> fewer,
    List<Swap> alone,
    List<Integer> decisions) {
  /** Copies the lists; refuses a place that is no exercise of the agenda. */
  public StandIns {
    tools = List.copyOf(tools);
    fewer = List.copyOf(fewer);
    alone = List.copyOf(alone);
    decisions = List.copyOf(decisions);
    for (int i = 0; i < tools.size(); i++) {
      check(agenda, "tools[" + i + "].swaps", places(tools.get(i).swaps()), ".place");
    }
    check(agenda, "fewer", fewer.stream().map(Turnout::place).toList(), ".place");
    check(agenda, "alone", places(alone), ".place");
    check(agenda, "decisions", decisions, "");
  }

  private static List<Integer> places(List<Swap> swaps) {
    return swaps.stream().map(Swap::place).toList();
  }

  private static void check(Agenda agenda, String list, List<Integer> places, String field) {
    for (int i = 0; i < places.size(); i++) {
      int place = places.get(i);
      if (place < 0
          || place >= agenda.items().size()
          || !(agenda.items().get(place) instanceof AgendaItem.Activity)) {
        throw new InvalidValueException(
            list + "[" + i + "]" + field, place, "the place of an exercise is right");
      }
    }
  }

  /** What concerns that tool alone. */
  public StandIns onlyWithout(String tool) {
    return new StandIns(
        agenda,
        tools.stream().filter(loss -> loss.tool().equals(tool)).toList(),
        List.of(),
        List.of(),
        List.of());
  }

  /** How many pairs of an exercise and a tool it leans on there are. */
  public int pairs() {
    return tools.stream().mapToInt(loss -> loss.swaps().size()).sum();
  }

  /** How many of them have a stand-in. */
  public int covered() {
    return tools.stream().mapToInt(ToolLoss::covered).sum();
  }

  /** Places of the exercises that no tool can stop. */
  public List<Integer> leaningOnNothing() {
    return IntStream.range(0, agenda.items().size())
        .filter(place -> agenda.items().get(place) instanceof AgendaItem.Activity)
        .filter(
            place ->
                tools.stream()
                    .flatMap(loss -> loss.swaps().stream())
                    .noneMatch(swap -> swap.place() == place))
        .boxed()
        .toList();
  }
}
