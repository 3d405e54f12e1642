package org.arcwright.examples.bench;

import java.util.function.BiFunction;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.oracle.CpSat;

/** General solvers that are given the same instances. */
enum Peer {
  /** OR-Tools CP-SAT, 2 workers. */
  CP_SAT("CP-SAT", Peer::cpSat);

  /**
   * What a solver came to.
   *
   * @param said in words
   * @param milliseconds its own time, the making of the model left out
   */
  record Answer(String said, double milliseconds) {}

  private final String title;
  private final BiFunction<Instance, Double, Answer> solve;

  Peer(String title, BiFunction<Instance, Double, Answer> solve) {
    this.title = title;
    this.solve = solve;
  }

  String title() {
    return title;
  }

  /** Its answer within so many seconds. */
  Answer solve(Instance instance, double seconds) {
    return solve.apply(instance, seconds);
  }

  private static Answer cpSat(Instance instance, double seconds) {
    CpSat.Answer answer = CpSat.solve(instance, seconds);
    return new Answer(
        switch (answer.status()) {
          case OPTIMAL -> "proves " + answer.cost();
          case FEASIBLE -> answer.cost() + ", bound " + answer.bound() + ", no proof";
          default -> "nothing found";
        },
        answer.seconds() * 1000);
  }
}
