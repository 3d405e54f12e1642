package org.arcwright.catalog;

/**
 * How many people, both ends included.
 *
 * @param min fewest, 1 or more
 * @param max most, {@code min} to 1,000
 */
public record SizeRange(int min, int max) {
  /** Refuses a range that is turned round or outside 1 to 1,000. */
  public SizeRange {
    Checks.range("min", min, 1, 1000);
    if (max < min) {
      throw new InvalidValueException("max", max, "it is under min " + min + "; swap the two");
    }
    Checks.range("max", max, 1, 1000);
  }

  /** Whether {@code people} lies in the range. */
  public boolean contains(int people) {
    return min <= people && people <= max;
  }

  /** How many groups {@code people} make: as few as the largest size allows. */
  public int groups(int people) {
    return (people + max - 1) / max;
  }

  /** Size of the largest group when {@code people} are dealt out evenly. */
  public int largestGroup(int people) {
    return (people + groups(people) - 1) / groups(people);
  }

  /** Whether {@code people}, dealt out evenly, leave no group under {@code min}. */
  public boolean splits(int people) {
    return people >= min && people / groups(people) >= min;
  }

  /** The groups when {@code people} are dealt out evenly. */
  public Split split(int people) {
    return new Split(people, groups(people));
  }

  @Override
  public String toString() {
    return min == max ? String.valueOf(min) : min + "-" + max;
  }
}
