package org.arcwright.compose.explain;

import java.util.HashMap;
import java.util.Map;
import java.util.function.IntFunction;
import org.arcwright.compose.explain.Feasibility.Status;

/** The first of several steps that is enough, where each question is dear. */
final class FirstFit {
  private final int from;
  private final int size;
  private final IntFunction<Status> probe;
  private final Map<Integer, Status> known = new HashMap<>();
  private int tooFew;
  private int enough;

  /**
   * What was found.
   *
   * @param index of the first step that is enough; -1 if none is
   * @param certain whether all before it are proven not to be enough
   */
  record Found(int index, boolean certain) {}

  private FirstFit(int from, int size, IntFunction<Status> probe) {
    this.from = from;
    this.size = size;
    this.probe = probe;
    this.tooFew = from - 1;
    this.enough = size;
  }

  /**
   * Finds it where more need not be enough because less is: as {@link #whereMoreIsNeverLess}, but
   * then asks about every step before, too.
   *
   * @param from the first step to think of; all before it are known not to be enough
   * @param size number of steps
   */
  static Found of(int from, int size, IntFunction<Status> probe) {
    FirstFit search = new FirstFit(from, size, probe);
    search.gallop();
    search.halve();
    return search.allBefore();
  }

  /**
   * Finds it where whatever is more than enough is enough: asks about the last step, for where that
   * is too little all are; else goes twice as far each time until a step is enough, and halves what
   * was stepped over. What is not known counts as enough.
   *
   * @return its index; {@code size} if there is none
   */
  static int whereMoreIsNeverLess(int size, IntFunction<Status> probe) {
    FirstFit search =
        new FirstFit(
            0, size, i -> probe.apply(i) == Status.FITS_NOT ? Status.FITS_NOT : Status.FITS);
    if (size > 0 && search.fits(size - 1)) {
      search.gallop();
      search.halve();
    }
    return search.enough;
  }

  /** Whether any step is enough. */
  static Status any(int from, int size, IntFunction<Status> probe) {
    FirstFit search = new FirstFit(from, size, probe);
    search.gallop();
    if (search.enough < size) {
      return Status.FITS;
    }
    Found found = search.allBefore();
    return found.index() >= 0 ? Status.FITS : found.certain() ? Status.FITS_NOT : Status.UNKNOWN;
  }

  private void gallop() {
    int steps = size - from;
    for (int far = 1; far < 2 * steps && enough == size; far *= 2) {
      int i = from + Math.min(far, steps) - 1;
      if (fits(i)) {
        enough = i;
      } else {
        tooFew = i;
      }
    }
  }

  private void halve() {
    while (enough < size && enough - tooFew > 1) {
      int middle = (enough + tooFew) / 2;
      if (fits(middle)) {
        enough = middle;
      } else {
        tooFew = middle;
      }
    }
  }

  private Found allBefore() {
    boolean certain = true;
    for (int i = from; i < enough; i++) {
      if (fits(i)) {
        return new Found(i, certain);
      }
      certain &= known.get(i) == Status.FITS_NOT;
    }
    return new Found(enough < size ? enough : -1, certain);
  }

  private boolean fits(int i) {
    return known.computeIfAbsent(i, probe::apply) == Status.FITS;
  }
}
