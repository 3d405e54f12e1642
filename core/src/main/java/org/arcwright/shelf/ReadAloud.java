package org.arcwright.shelf;

import static java.util.stream.Collectors.joining;

import java.time.Duration;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.arcwright.catalog.Exercise;

/**
 * How long it takes to read a text aloud: 183 words a minute (Brysbaert 2019, "How many words do we
 * read per minute? A review and meta-analysis of reading rate", Journal of Memory and Language 109,
 * 104047).
 */
public final class ReadAloud {
  /** Words of English read aloud in a minute. */
  public static final int WORDS_A_MINUTE = 183;

  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"|\u201c[^\u201d]*\u201d");

  private ReadAloud() {}

  /** How many words a text has: whatever stands between white space. */
  public static int words(String text) {
    return text.isBlank() ? 0 : text.strip().split("\\s+", -1).length;
  }

  /** What stands between double quotes: the words that are said. */
  static String quoted(String text) {
    return QUOTED.matcher(text).results().map(MatchResult::group).collect(joining(" "));
  }

  /** How long so many words take, to the second. */
  public static Duration time(int words) {
    return Duration.ofSeconds(words * 60L / WORDS_A_MINUTE);
  }

  /** Whether the opening can be said within the first step's usual time. */
  public static boolean fits(Exercise exercise) {
    Duration first = exercise.steps().get(0).minutes().typical();
    return time(words(exercise.opening())).compareTo(first) <= 0;
  }

  /** A time in words: {@code 1 min 10 s}, {@code 6 h 40 min}. */
  static String text(Duration time) {
    String hours = time.toHours() > 0 ? time.toHours() + " h " : "";
    String minutes = time.toMinutesPart() > 0 ? time.toMinutesPart() + " min " : "";
    String seconds =
        time.toHours() == 0 && time.toSecondsPart() > 0 ? time.toSecondsPart() + " s" : "";
    String text = (hours + minutes + seconds).strip();
    return text.isEmpty() ? "0 s" : text;
  }
}
