package org.arcwright.shelf;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words by which a text asks people to move their bodies, or to tell what is personal. Most such
 * words have harmless uses, too ("a stretch of work", "run the vote", "where we stand"), so each is
 * known with what stands around it. Common practice, no source; made by reading the built-in shelf.
 */
public final class CarefulWords {
  private static final String EVERYBODY =
      "(?:everybody|everyone|each person|people|participants|all|both|partners|pairs|groups?)";

  /** Verbs that are bodily in whatever company. */
  private static final String ALWAYS =
      "(?<!without )(?:stand(?:s|ing)?|gets?|getting|jump(?:s|ing)?|hop(?:s|ping)?) up\\b"
          + "|on (?:your|their|our) feet|(?:lies?|lying) down|(?:sits?|sitting) on the floor"
          + "|kneel(?:s|ing)?\\b|crawl(?:s|ing)?\\b|squat(?:s|ting)?\\b|push-ups?|jumping jacks?"
          + "|danc(?:e|es|ing)\\b|jog(?:s|ging)?\\b|hop(?:s|ping)? (?:on|around|about|to)\\b"
          + "|lin(?:e|es|ing) up\\b|(?:form|make|stand in|get into) an? (?:line|row|queue)\\b"
          + "|step(?:s|ping)? (?:forwards?|backwards?|sideways|into the (?:circle|middle))"
          + "|(?:swap|change|switch)(?:s|es|ing)? (?:seats|chairs|places|sides of the room)"
          + "|hold(?:s|ing)? hands|hug(?:s|ging)?\\b|massag(?:e|es|ing)\\b"
          + "|touch(?:es|ing)? (?:your|their|each other|one another|the)\\b"
          + "|shak(?:e|es|ing) (?:out|hands|your|their|our|arms|legs)\\b"
          + "|swing(?:s|ing)? (?:your|their|our|the) (?:arms|legs|hips)"
          + "|(?:bend|twist|roll|turn)(?:s|ing)? (?:your|their|our|the) "
          + "(?:head|neck|shoulders?|arms?|body|bodies|backs?|knees?|hips|upper)"
          + "|balanc(?:e|es|ing) on\\b|rac(?:e|es|ing) to\\b|(?:throw|toss|catch)(?:es|s|ing)? (?:a|the)"
          + " (?:soft )?(?:ball|beanbag|cushion)";

  /** Walking, but not through a list, nor somebody through something. */
  private static final String WALK =
      "(?<!not )\\bwalk(?:s|ing)?\\b(?! (?:\\w+ )?(?:through|away|over)\\b)(?! about\\. If)";

  /** Stretching, but no stretch of work. */
  private static final String STRETCH =
      "(?<!(?:\\ba|\\bthe|this|that|each|which|what|full|last|one|next|every|of|long|short|first)"
          + " )\\bstretch(?:es|ing)?\\b(?! (?:of|goals?|target)\\b)";

  private static final String RUN =
      "\\brun(?:s|ning)? (?:around|about|to (?:the|a|your|their)|across|on the spot|in place"
          + "|laps?|a lap|up|down|back|from (?:one|the)|as fast)\\b";

  private static final String JUMP =
      "\\bjump(?:s|ing)?\\b (?:on|in the air|over|as|with|high|around|together|for|\\d|once|twice"
          + "|three|five|ten)\\b|(?:"
          + EVERYBODY
          + "|then|and|,|to) jumps?(?= *[.,;:]|$)|(?:^|[.!?:;] )Jump\\b";

  private static final String STAND =
      "(?:^|[.!?:;] )Stand\\b(?! (?:by|for))|\\b"
          + EVERYBODY
          + " (?:all |now |please )?stands?\\b(?! (?:behind|for|in for|aside|out|by|stuck|today|on"
          + " (?:it|this)|alone|together on|still on))"
          + "|\\bstand(?:s|ing)? (?:in (?:a (?:line|row|circle)|the (?:middle|circle|corner)|two"
          + "|front of (?:the (?:room|group|others)|everybody))|along the (?:wall|line)"
          + "|next to (?:a|the|your|each)|at the (?:wall|window|side)|against|back to back"
          + "|on (?:one|your|their) (?:leg|foot|toes|chairs?)|opposite)\\b";

  private static final String MOVE =
      "\\bmov(?:e|es|ing) (?:around|about|to (?:the|a|another|one) (?:\\w+ )?"
          + "(?:corner|side|wall|table|spot|place|end|line)|your|their (?:arms|legs|bodies))\\b"
          + "|\\bgo(?:es|ing)? (?:for a walk|outside|to the (?:corner|side|wall|place|spot) (?:of|that|where))\\b";

  private static final Pattern BODY =
      Pattern.compile(
          String.join("|", ALWAYS, WALK, STRETCH, RUN, JUMP, STAND, MOVE),
          Pattern.CASE_INSENSITIVE);

  private static final Pattern PERSONAL =
      Pattern.compile(
          "\\b(?:childhood|grief|griev(?:e|es|ing)|bereave(?:d|ment)|trauma(?:s|tic)?|mourn(?:s|ing)?"
              + "|deaths?|funerals?|suicid(?:e|al)|addict(?:ion|ions|ed)|harass(?:ed|ment)|still hurts?"
              + "|ashamed|vulnerab(?:le|ility)|cried|(?:in|to|with) tears"
              + "|(?:deepest|most painful|darkest|hardest|worst|lowest) (?:\\w+ )?(?:fears?|moments?"
              + "|memor(?:y|ies)|experiences?|times?|hours?|points?) (?:of|in) (?:your|their|one's|my)"
              + " (?:life|lives|career)"
              + "|your (?:own )?(?:deepest|greatest|worst|biggest) (?:\\w+ )?(?:fears?|pain|loss"
              + "|failures?|regrets?|shame|mistakes?)"
              + "|(?:your|their) (?:own )?(?:secrets?|illness|mental health|family|parents|marriage"
              + "|divorce|faith|religion|body|life story)|(?:from|of|in) (?:your|their) (?:own )?li(?:fe|ves)"
              + "|(?:a|the) (?:loss (?:of|in|you|they)|secret)|lost (?:somebody|someone|a loved one)"
              + "|(?:personal|private) (?:crisis|crises|struggles?|loss(?:es)?|pain|secrets?|failures?)"
              + "|(?:something|things?) (?:very |deeply |truly )?(?:personal|private|painful|intimate)"
              + "|(?:something|one thing|a thing) (?:that )?(?:nobody|no one|few people)"
              + " (?:here |else )?knows?"
              + "|(?:time|moment|day|situation)s? (?:when|in which|that) (?:you|they) (?:\\w+ )?(?:failed|felt"
              + "|cried|hurt|lost|were (?:\\w+ )?(?:hurt|afraid|scared|lonely|lost|ill|bullied))"
              + "|(?:hurt|wounded) (?:you|them) (?:most|deeply)|what (?:hurts?|scares?) you)\\b",
          Pattern.CASE_INSENSITIVE);

  private CarefulWords() {}

  /** The first words that ask for movement. */
  public static Optional<String> ofBodies(String text) {
    return first(BODY, text);
  }

  /** The first words that ask for what is personal. */
  public static Optional<String> ofDisclosure(String text) {
    return first(PERSONAL, text);
  }

  private static Optional<String> first(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    return matcher.find()
        ? Optional.of(matcher.group().replaceAll("^[\\s.,!?:;]+", ""))
        : Optional.empty();
  }
}
