package org.arcwright.cli;

import java.util.Optional;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.search.OptionRule;
import picocli.CommandLine.Option;

/** How many options somebody wants to choose from. */
final class OptionsOption {
  /** One is what there is without asking. */
  private static final int FEWEST = 2;

  private static final int SHARE = 50;
  private static final int WITHIN = 25;

  @Option(
      names = "--options",
      paramLabel = "K",
      description = "compose K options to choose from, 2 to 9, side by side")
  private Optional<Integer> count = Optional.empty();

  @Option(
      names = "--share",
      paramLabel = "PART",
      converter = PercentConverter.class,
      description =
          "most exercises of an earlier option that a later one may use again; 50%% if not given")
  private Optional<Integer> share = Optional.empty();

  @Option(
      names = "--within",
      paramLabel = "PART",
      converter = PercentConverter.class,
      description = "how many more points than the best an option may have; 25%% if not given")
  private Optional<Integer> within = Optional.empty();

  /** What is asked for; nothing if one agenda will do. */
  Optional<OptionRule> rule() {
    if (count.isEmpty()) {
      if (share.isPresent() || within.isPresent()) {
        throw new Refusal(
            (share.isPresent() ? "--share" : "--within")
                + " says how options may differ; say with --options how many you want");
      }
      return Optional.empty();
    }
    int many = count.get();
    if (many < FEWEST || many > OptionRule.MOST) {
      String range = FEWEST + " to " + OptionRule.MOST;
      throw new Refusal("--options is " + many + ": a whole number from " + range + " is right");
    }
    try {
      return Optional.of(new OptionRule(many, share.orElse(SHARE), within.orElse(WITHIN)));
    } catch (InvalidValueException e) {
      throw new Refusal("--" + e.getMessage(), e);
    }
  }
}
