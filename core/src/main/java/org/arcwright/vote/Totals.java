package org.arcwright.vote;

import java.util.List;
import java.util.stream.IntStream;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/**
 * What each option got in all, where nobody kept the ballots. Sums that the ballots cannot have
 * made are refused: a count of points is checked by their number. The highest sum is ahead.
 *
 * @param options 2 to 500
 * @param sums for each option what it got, in the order of the options
 * @param ballots how many people voted, 1 to 1,000
 * @param limits what one ballot can hold
 */
public record Totals(List<String> options, List<Integer> sums, int ballots, Limits limits)
    implements Tally {
  /**
   * What one ballot can hold.
   *
   * @param points in all
   * @param onOne most on one option
   * @param used whether every ballot holds all of them
   */
  public record Limits(int points, int onOne, boolean used) {
    /** Refuses a ballot of nothing. */
    public Limits {
      Checks.range("points", points, 1, 1_000_000);
      Checks.range("points on one option", onOne, 1, points);
    }

    /** Votes that are spread, as {@link Multivote} counts them. */
    public static Limits of(Multivote.Allotment allotment) {
      return new Limits(allotment.votes(), allotment.onOne(), false);
    }

    /** The best of a number of picks gets most, as {@link RankedPoints} counts them. */
    public static Limits ofRankedPoints(int picks) {
      return new Limits(picks * (picks + 1) / 2, picks, true);
    }

    /** A point for each option below, as {@link Borda} counts them. */
    public static Limits ofBorda(int options) {
      return new Limits(options * (options - 1) / 2, options - 1, true);
    }

    /** A yes to as many as one likes, as {@link Approval} counts them. */
    public static Limits ofApproval(int options) {
      return new Limits(options, 1, false);
    }
  }

  /** Refuses sums that so many ballots cannot have made. */
  public Totals {
    options = Ballots.options(options);
    sums = List.copyOf(sums);
    Checks.range("voters", ballots, 1, Ballots.MOST_BALLOTS);
    if (sums.size() != options.size()) {
      throw new InvalidValueException(
          "totals", sums.size() + " numbers", "each of " + options.size() + " options has one");
    }
    for (int i = 0; i < sums.size(); i++) {
      int most = ballots * limits.onOne();
      if (sums.get(i) < 0 || sums.get(i) > most) {
        throw new InvalidValueException(
            "totals",
            options.get(i) + ": " + sums.get(i),
            ballots + " voters give one option 0 to " + most + "; count again");
      }
    }
    long sum = sums.stream().mapToLong(Integer::longValue).sum();
    long all = (long) ballots * limits.points();
    if (sum > all || (limits.used() && sum < all)) {
      throw new InvalidValueException(
          "totals",
          sum + " in all",
          ballots
              + " voters give "
              + (limits.used() ? "" : "at most ")
              + all
              + " in all; count again");
    }
  }

  @Override
  public List<Score> scores() {
    return IntStream.range(0, options.size())
        .mapToObj(i -> Score.of(options.get(i), IntStream.of(sums.get(i))))
        .toList();
  }

  /** The option with the highest sum, a tie, or no result if nobody used a vote. */
  @Override
  public Outcome outcome() {
    return sums.stream().allMatch(sum -> sum == 0)
        ? new Outcome.NoResult(Outcome.Cause.NO_VOTES, options)
        : ranking().outcome();
  }
}
