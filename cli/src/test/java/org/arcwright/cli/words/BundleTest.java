package org.arcwright.cli.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Goal;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** Every language says the same things, and nothing is translated that nobody reads. */
class BundleTest {
  static final List<String> LANGUAGES = Language.ALL;
  private static final Path MAIN = Path.of("src/main");
  private static final Path BUNDLES = MAIN.resolve("resources/org/arcwright/cli/words");
  private static final Pattern PLACE = Pattern.compile("\\{(\\d+)");

  private static Map<String, String> bundle(String language) {
    try (Reader in =
        Files.newBufferedReader(BUNDLES.resolve("documents_" + language + ".properties"))) {
      Properties properties = new Properties();
      properties.load(in);
      Map<String, String> bundle = new TreeMap<>();
      properties.stringPropertyNames().forEach(key -> bundle.put(key, properties.getProperty(key)));
      return bundle;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Set<String> places(String pattern) {
    Set<String> places = new TreeSet<>();
    Matcher matcher = PLACE.matcher(pattern);
    while (matcher.find()) {
      places.add(matcher.group(1));
    }
    return places;
  }

  @ParameterizedTest
  @FieldSource("LANGUAGES")
  void every_bundle_has_the_same_keys_and_places(String language) {
    Map<String, String> english = bundle("en");
    Map<String, String> other = bundle(language);
    english.keySet().removeIf(BundleTest::isOfTheCatalog);
    other.keySet().removeIf(BundleTest::isOfTheCatalog);
    String file = "documents_" + language + ".properties";

    assertThat(without(english, other)).as("Translate these keys, in %s", file).isEmpty();
    assertThat(without(other, english)).as("Take these keys out of %s", file).isEmpty();
    english.forEach(
        (key, pattern) ->
            assertThat(places(other.get(key)))
                .as("Places {…} of %s in %s", key, file)
                .isEqualTo(places(pattern)));
  }

  /** English says otherwise only what a sentence needs otherwise; a translation says all. */
  @ParameterizedTest
  @FieldSource("LANGUAGES")
  void the_catalogs_short_texts_are_said_in_every_language(String tag) {
    Catalog catalog = BuiltIn.catalog();
    Language language = Language.of(tag).orElseThrow();
    Set<String> wanted = new TreeSet<>();
    catalog.products().values().forEach(it -> wanted.add(Said.PRODUCT.key(it.title())));
    if (!language.isEnglish()) {
      catalog.tools().values().forEach(tool -> wanted.add(Said.TOOL.key(tool.title())));
      for (Goal goal : catalog.goals().values()) {
        wanted.add(Said.GOAL.key(goal.title()));
        wanted.add(Said.GOAL.key(goal.purpose()));
        goal.arc().forEach(phase -> wanted.add(Said.PHASE.key(phase.title())));
      }
    }

    assertThat(bundle(tag).keySet().stream().filter(BundleTest::isOfTheCatalog))
        .containsExactlyInAnyOrderElementsOf(wanted);
    assertThat(language.said(Said.TOOL, "a tool of a firm's own"))
        .isEqualTo("a tool of a firm's own");
  }

  private static boolean isOfTheCatalog(String key) {
    return key.startsWith("catalog.");
  }

  private static Map<String, String> without(Map<String, String> some, Map<String, String> others) {
    Map<String, String> left = new TreeMap<>(some);
    left.keySet().removeAll(others.keySet());
    return left;
  }

  /** A sentence that was copied and not translated. */
  @ParameterizedTest
  @FieldSource("LANGUAGES")
  void no_sentence_is_left_in_english(String language) {
    Map<String, String> other = bundle(language);

    assertThat(bundle("en"))
        .allSatisfy(
            (key, pattern) -> {
              if (!language.equals("en")
                  && pattern.replaceAll("\\{[^}]*}", "").split("\\s+").length > 3) {
                assertThat(other.get(key)).as(key).isNotEqualTo(pattern);
              }
            });
  }

  @ParameterizedTest
  @FieldSource("LANGUAGES")
  void every_pattern_can_be_read_and_has_no_quote_that_the_pattern_would_swallow(String language) {
    bundle(language)
        .forEach(
            (key, pattern) -> {
              assertThat(pattern).as(key).isNotBlank().doesNotContain("'");
              assertThat(new MessageFormat(pattern).toPattern()).as(key).isNotEmpty();
            });
  }

  @Test
  void no_key_is_unused() throws IOException {
    String code;
    try (Stream<Path> files = Files.walk(MAIN)) {
      code =
          files
              .filter(file -> file.toString().matches(".*\\.(java|ftlh)"))
              .map(BundleTest::text)
              .collect(Collectors.joining("\n"));
    }

    assertThat(bundle("en").keySet())
        .filteredOn(key -> !isOfTheCatalog(key))
        .allMatch(
            key ->
                code.contains("\"" + key + "\"")
                    || code.contains("name(\"" + key.substring(0, Math.max(0, key.indexOf('.'))))
                    || code.contains("\"" + key.substring(0, key.lastIndexOf('.') + 1) + "\" +"));
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
