package org.arcwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.Tool;
import org.arcwright.examples.Repository.Ran;
import org.arcwright.format.CatalogFormat;
import org.arcwright.format.Schema;
import org.arcwright.format.TableFormat;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/** What the guide to the shelf says is so, and what it tells people to type works. */
class ShelfGuideTest {
  private static final Path GUIDE = Repository.ROOT.resolve("library-data/README.md");
  private static final String JAR = "java -jar cli/target/arcwright.jar ";

  @TempDir Path scratch;
  private String guide;
  private Path shelf;

  @BeforeEach
  void followTheGuide() throws IOException {
    guide = Files.readString(GUIDE);
    shelf = scratch.resolve("our-shelf");
    Files.createDirectories(shelf.resolve("exercises"));
    Files.writeString(shelf.resolve("exercises/one-minute-paper.yaml"), blocks("yaml").get(0));
  }

  @Test
  void the_worked_example_is_an_exercise_and_lasts_as_long_as_it_says() {
    Catalog catalog = CatalogFormat.readDirectory(shelf, BuiltIn.catalog());

    Exercise exercise = catalog.exercise("one-minute-paper").orElseThrow();
    assertThat(BuiltIn.catalog().exercise(exercise.id())).isEmpty();
    assertThat(exercise.breakout().orElseThrow().groups(12)).isEqualTo(3);
    assertThat(exercise.minutes(12)).hasToString("7.5-10-14 min");
    assertThat(guide).contains("the whole takes 7.5 to 14 minutes, usually 10");
  }

  @Test
  void the_worked_example_keeps_to_the_schema() {
    assertThat(SchemaTest.complaints(Schema.EXERCISE, blocks("yaml").get(0))).isEmpty();
  }

  @Test
  void each_command_does_what_it_says() {
    List<String> commands = blocks("sh").stream().flatMap(String::lines).toList();

    assertThat(commands).hasSizeGreaterThanOrEqualTo(4).allMatch(line -> line.startsWith(JAR));
    for (String command : commands) {
      String words = command.substring(JAR.length()).replace("our-shelf", shelf.toString());
      Ran ran = Repository.arcwright(scratch, words.split(" "));
      assertThat(ran.code()).as("%s%n%s", command, ran.err()).isZero();
    }
  }

  @Test
  void an_agenda_takes_it_up_when_a_brief_asks_for_it() throws IOException {
    Path brief = scratch.resolve("brief.yaml");
    String text = Files.readString(Repository.ROOT.resolve("examples/briefs/next-service.yaml"));
    Files.writeString(brief, text + "wishes: {include: [one-minute-paper]}\n");

    Ran ran =
        Repository.arcwright(scratch, "compose", brief.toString(), "--catalog", shelf.toString());

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out()).contains("One-minute paper");
  }

  @Test
  void each_field_of_an_exercise_is_explained() {
    Set<String> fields =
        new TreeSet<>(
            JsonMapper.shared()
                .readTree(Schema.EXERCISE.text())
                .path("properties")
                .propertyNames());

    assertThat(new TreeSet<>(names(section("What each field does")))).isEqualTo(fields);
  }

  @Test
  void each_column_is_explained() {
    String table = section("In a spreadsheet").replaceAll("(?m)^(\\|[^|]*\\|).*$", "$1");

    assertThat(names(table)).containsExactlyInAnyOrderElementsOf(TableFormat.header());
  }

  @Test
  void the_words_are_those_of_the_catalog() {
    for (Product product : BuiltIn.catalog().products().values()) {
      assertThat(guide).contains("| `" + product.id() + "` | " + product.meaning() + " |\n");
    }
    for (Tool tool : BuiltIn.catalog().tools().values()) {
      List<String> modes = new ArrayList<>();
      for (Mode mode : Mode.values()) {
        if (tool.modes().contains(mode)) {
          modes.add(mode.word());
        }
      }
      assertThat(guide)
          .contains(
              "| `"
                  + tool.id()
                  + "` | "
                  + tool.meaning()
                  + " | "
                  + String.join(", ", modes)
                  + " |\n");
    }
  }

  private List<String> blocks(String language) {
    return all("(?ms)^```" + language + "\\n(.*?)^```$", guide);
  }

  private String section(String heading) {
    return all("(?ms)^## " + heading + "\\n(.*?)(?=^## |\\z)", guide).get(0);
  }

  /** What stands in back quotes in the first cell of each row. */
  private static List<String> names(String section) {
    List<String> names = new ArrayList<>();
    for (String cell : all("(?m)^\\| (`[^|]*) \\|", section)) {
      names.addAll(all("`([^`]+)`", cell));
    }
    return names;
  }

  private static List<String> all(String pattern, String text) {
    List<String> found = new ArrayList<>();
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }
}
