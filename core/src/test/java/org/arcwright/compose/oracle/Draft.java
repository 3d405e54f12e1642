package org.arcwright.compose.oracle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.instance.Instance.Rules;
import org.arcwright.compose.instance.Instance.Stretch;
import org.arcwright.compose.instance.Instance.Weights;

/** An instance in the making, so that a test can say how it differs from another in one line. */
public final class Draft {
  private final int grid;
  private int cap;
  private List<Integer> curve;
  private Stretch stretch = new Stretch(0, 60);
  private int breakMinutes;
  private List<Meal> meals = List.of();
  private int bufferPercent;
  private List<String> products = List.of();
  private List<String> initial = List.of();
  private final List<Phase> phases = new ArrayList<>();
  private final List<Candidate> candidates = new ArrayList<>();
  private List<String> include = List.of();
  private List<Pin> pins = List.of();
  private Rules rules = Rules.NONE;
  private Weights weights = Weights.NONE;

  /** Starts with nothing but time, a level curve of 30 and stretches of up to an hour. */
  public Draft(int grid, int cap) {
    this.grid = grid;
    this.cap = cap;
    this.curve = Collections.nCopies(cap / grid, 30);
  }

  /** Starts with a copy. */
  public static Draft of(Instance instance) {
    return new Draft(instance.grid(), instance.cap())
        .curve(instance.curve())
        .stretch(instance.stretch().min(), instance.stretch().max())
        .breakMinutes(instance.breakMinutes())
        .meals(instance.meals())
        .bufferPercent(instance.bufferPercent())
        .products(instance.products())
        .initial(instance.initial())
        .phases(instance.phases())
        .candidates(instance.candidates())
        .include(instance.include())
        .pins(instance.pins())
        .rules(instance.rules())
        .weights(instance.weights());
  }

  /** Sets the cap; the curve is cut, or its last cell repeated. */
  public Draft cap(int minutes) {
    List<Integer> cells = new ArrayList<>(curve);
    while (cells.size() < minutes / grid) {
      cells.add(cells.get(cells.size() - 1));
    }
    cap = minutes;
    curve = cells.subList(0, minutes / grid);
    return this;
  }

  /** Sets the curve, one number for each cell. */
  public Draft curve(List<Integer> tenths) {
    curve = tenths;
    return this;
  }

  /** Sets the stretch. */
  public Draft stretch(int min, int max) {
    stretch = new Stretch(min, max);
    return this;
  }

  /** Sets the length of ordinary breaks. */
  public Draft breakMinutes(int minutes) {
    breakMinutes = minutes;
    return this;
  }

  /** Sets the meals. */
  public Draft meals(List<Meal> inOrder) {
    meals = inOrder;
    return this;
  }

  /** Sets the meals. */
  public Draft meals(Meal... inOrder) {
    return meals(Arrays.asList(inOrder));
  }

  /** Sets the closing buffer. */
  public Draft bufferPercent(int percent) {
    bufferPercent = percent;
    return this;
  }

  /** Sets the products. */
  public Draft products(List<String> names) {
    products = names;
    return this;
  }

  /** Sets what exists before the start. */
  public Draft initial(List<String> names) {
    initial = names;
    return this;
  }

  /** Sets the phases. */
  public Draft phases(List<Phase> inOrder) {
    phases.clear();
    phases.addAll(inOrder);
    return this;
  }

  /** Changes one phase. */
  public Draft phase(int number, UnaryOperator<Phase> change) {
    phases.set(number, change.apply(phases.get(number)));
    return this;
  }

  /** Sets the candidates. */
  public Draft candidates(List<Candidate> all) {
    candidates.clear();
    candidates.addAll(all);
    return this;
  }

  /** Sets the ids that must appear. */
  public Draft include(List<String> ids) {
    include = ids;
    return this;
  }

  /** Sets the ids that must appear. */
  public Draft include(String... ids) {
    return include(Arrays.asList(ids));
  }

  /** Sets the pins. */
  public Draft pins(List<Pin> all) {
    pins = all;
    return this;
  }

  /** Sets the pins. */
  public Draft pins(Pin... all) {
    return pins(Arrays.asList(all));
  }

  /** Sets the rules. */
  public Draft rules(Rules all) {
    rules = all;
    return this;
  }

  /** Sets the weights. */
  public Draft weights(Weights prices) {
    weights = prices;
    return this;
  }

  /** The instance. */
  public Instance build() {
    return new Instance(
        grid,
        cap,
        curve,
        stretch,
        breakMinutes,
        meals,
        bufferPercent,
        products,
        initial,
        phases,
        candidates,
        include,
        pins,
        rules,
        weights);
  }
}
