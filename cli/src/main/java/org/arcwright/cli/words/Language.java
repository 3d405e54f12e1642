package org.arcwright.cli.words;

import java.text.MessageFormat;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Word;

/**
 * All that documents say, in one language. The sentences stand in message bundles, a file for each
 * language; numbers, dates and times of day are written as people of the locale write them. Texts
 * of the catalog and of the brief are said as they stand there.
 */
public final class Language {
  /** The languages that are complete, as their tags. */
  public static final List<String> ALL = List.of("en", "de");

  /** English as documents use it if nobody asks for another one. */
  public static final Language ENGLISH = new Language(Locale.UK);

  /** Unicode Standard Annex 9: what stands between the two is ordered by itself. */
  private static final char FIRST_STRONG_ISOLATE = '\u2068';

  private static final char POP_ISOLATE = '\u2069';
  private static final String BUNDLE = "org.arcwright.cli.words.documents";
  private static final Set<String> RIGHT_TO_LEFT =
      Set.of("ar", "arc", "ckb", "dv", "fa", "he", "iw", "ku", "ps", "sd", "ug", "ur", "yi");

  private final Locale locale;
  private final ResourceBundle bundle;

  private Language(Locale locale) {
    this.locale = locale;
    this.bundle = ResourceBundle.getBundle(BUNDLE, locale);
  }

  /**
   * The language of a tag such as {@code en} or, with a region for dates and numbers, {@code
   * en-US}; none if it is not complete.
   */
  public static Optional<Language> of(String tag) {
    Locale locale = Locale.forLanguageTag(tag);
    if (!ALL.contains(locale.getLanguage())) {
      return Optional.empty();
    }
    return Optional.of(tag.equals("en") ? ENGLISH : new Language(locale));
  }

  /** Its tag, as HTML wants it. */
  public String tag() {
    return equals(ENGLISH) ? "en" : locale.toLanguageTag();
  }

  /** Whether sentences that stand in no bundle, but in English in the code, may be used. */
  public boolean isEnglish() {
    return locale.getLanguage().equals("en");
  }

  /** {@code ltr} or {@code rtl}, as HTML wants it. */
  public String direction() {
    return RIGHT_TO_LEFT.contains(locale.getLanguage()) ? "rtl" : "ltr";
  }

  /**
   * A sentence. Texts in its places that run the other way are set apart, so that they turn nothing
   * around them.
   *
   * @param values what stands in its places; texts are not read as patterns
   * @throws java.util.MissingResourceException if the bundle has no such key
   */
  public String say(String key, Object... values) {
    Object[] apart = values.clone();
    for (int i = 0; i < apart.length; i++) {
      if (apart[i] instanceof String text && runsOtherwise(text)) {
        apart[i] = FIRST_STRONG_ISOLATE + text + POP_ISOLATE;
      }
    }
    return new MessageFormat(bundle.getString(key), locale).format(apart);
  }

  /** Whether the text has letters of the other direction, or marks that change it. */
  private boolean runsOtherwise(String text) {
    boolean leftToRight = direction().equals("ltr");
    return text.codePoints()
        .map(Character::getDirectionality)
        .anyMatch(
            way ->
                switch (way) {
                  case Character.DIRECTIONALITY_LEFT_TO_RIGHT -> !leftToRight;
                  case Character.DIRECTIONALITY_RIGHT_TO_LEFT,
                      Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC ->
                      leftToRight;
                  default ->
                      way >= Character.DIRECTIONALITY_LEFT_TO_RIGHT_EMBEDDING
                          && way <= Character.DIRECTIONALITY_POP_DIRECTIONAL_FORMAT;
                });
  }

  /** Whether there is such a sentence. */
  public boolean knows(String key) {
    return bundle.containsKey(key);
  }

  /**
   * A text of the catalog, such as a tool's title, as this language says it; as it stands if the
   * bundle does not have it. The bundle's key is made of the text, so that a catalog of somebody's
   * own keeps its words.
   */
  public String said(Said what, String text) {
    String key = what.key(text);
    return knows(key) ? say(key) : text;
  }

  /** A word of the trade; {@code family} is what it is one of, such as {@code kind}. */
  public String name(String family, Word word) {
    return say(family + "." + word.word());
  }

  /** A kind of exercise; what is none of the catalog's exercises is the sponsor's own. */
  public String kind(Optional<Kind> kind) {
    return kind.map(known -> name("kind", known)).orElseGet(() -> say("kind.own"));
  }

  /** What a time without work is. */
  public String pause(boolean meal) {
    return say(meal ? "pause.meal" : "pause.break");
  }

  /** {@code 35 min}, {@code 2 h} or {@code 2 h 40 min}, with blanks at which no line ends. */
  public String time(Duration duration) {
    long hours = duration.toHours();
    int minutes = duration.toMinutesPart();
    if (hours == 0) {
      return say("time.minutes", minutes);
    }
    return minutes == 0 ? say("time.hours", hours) : say("time.both", hours, minutes);
  }

  /** As {@link #time}. */
  public String minutes(int minutes) {
    return time(Duration.ofMinutes(minutes));
  }

  /** {@code 93 %}; {@code over 99 %} and {@code under 1 %}, for nothing is certain. */
  public String chance(double chance) {
    long percent = Math.round(100 * chance);
    return percent == 0 || percent == 100
        ? say(percent == 0 ? "chance.hardly" : "chance.nearly")
        : say("percent", percent);
  }

  /** A day in full, with its weekday. */
  public String date(LocalDate day) {
    return DateTimeFormatter.ofLocalizedDate(FormatStyle.FULL).withLocale(locale).format(day);
  }

  /** A day without its weekday. */
  public String day(LocalDate day) {
    return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(locale).format(day);
  }

  /** A time of day. */
  public String clock(LocalTime time) {
    return DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT).withLocale(locale).format(time);
  }

  /** An energy in tenths as a level, such as {@code 3} or {@code 3.4}. */
  public String level(int tenths) {
    return say("level", tenths / 10.0);
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  public String list(List<String> words) {
    return joined(words, "list.last");
  }

  /** {@code a}, {@code a or b}, {@code a, b or c}. */
  public String any(List<String> words) {
    return joined(words, "list.any");
  }

  private String joined(List<String> words, String last) {
    String text = "";
    for (int i = 0; i < words.size(); i++) {
      String key = i == words.size() - 1 ? last : "list.more";
      text = i == 0 ? words.get(i) : say(key, text, words.get(i));
    }
    return text;
  }

  /** A text with a full stop, unless it ends in one or in its like; nothing remains nothing. */
  public String sentence(String text) {
    return text.isEmpty() || text.matches("(?s).*[.!?…:]") ? text : say("sentence", text);
  }

  /** Texts as sentences, one after another. */
  public String sentences(List<String> texts) {
    return String.join(" ", texts.stream().map(this::sentence).toList());
  }

  /** A sentence's first letter made large. */
  public String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, text.offsetByCodePoints(0, 1)).toUpperCase(locale)
            + text.substring(text.offsetByCodePoints(0, 1));
  }
}
