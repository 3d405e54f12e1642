package org.arcwright.cli.document;

import org.arcwright.cli.words.Language;

/**
 * How sure an agenda is to end on time, where a brief was composed for that.
 *
 * @param wanted per cent that were asked for
 * @param onTime the chance to end on time
 * @param buffer per cent of the work that the agenda keeps free at the least
 * @param free minutes that it keeps free in all
 * @param reached whether the chance is enough
 * @param complete whether every smaller buffer was tried, or every one if none is enough
 */
public record Sureness(
    int wanted, double onTime, int buffer, int free, boolean reached, boolean complete) {
  /** All of it in a sentence. */
  public String sentence(Language language) {
    return Words.untied(language.say("why.sure", wanted, answer(language)));
  }

  private String answer(Language language) {
    String chance = language.chance(onTime);
    String time = language.minutes(free);
    if (!reached) {
      return language.say(complete ? "why.sure.never" : "why.sure.not-found", chance, time);
    }
    if (buffer == 0) {
      return language.say(
          free == 0 ? "why.sure.seldom-over" : "why.sure.ends-before", chance, time);
    }
    return language.say(
        complete ? "why.sure.least" : "why.sure.perhaps-less", chance, time, buffer);
  }
}
