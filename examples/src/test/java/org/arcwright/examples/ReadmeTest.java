package org.arcwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.arcwright.examples.Repository.Ran;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README promises is run here, word for word. */
class ReadmeTest {
  private static final Pattern BLOCK =
      Pattern.compile("^```(\\w+)\\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);
  private static final String JAR = "java -jar cli/target/arcwright.jar ";

  @TempDir Path scratch;

  private static List<String> blocks(String language) {
    List<String> blocks = new ArrayList<>();
    Matcher matcher = BLOCK.matcher(Repository.readme());
    while (matcher.find()) {
      if (matcher.group(1).equals(language)) {
        blocks.add(matcher.group(2));
      }
    }
    return blocks;
  }

  @Test
  void the_first_two_commands_compose_an_agenda_and_run_the_tests() {
    List<String> commands = blocks("sh").stream().flatMap(String::lines).toList();

    assertThat(commands.get(0)).startsWith("mvn -q -DskipTests package && " + JAR + "compose ");
    assertThat(commands.get(1)).isEqualTo("mvn verify");
  }

  @Test
  void each_command_does_what_it_says() {
    List<String> commands =
        blocks("sh").stream()
            .flatMap(String::lines)
            .filter(line -> line.contains(JAR))
            .map(line -> line.substring(line.indexOf(JAR) + JAR.length()))
            .toList();

    assertThat(commands).hasSizeGreaterThanOrEqualTo(5);
    for (String command : commands) {
      Ran ran = Repository.arcwright(scratch, command.split(" "));
      assertThat(ran.code()).as("%s%n%s", command, ran.err()).isZero();
    }
  }

  @Test
  void the_output_is_real() {
    String shown = blocks("text").get(0);
    Ran ran = Repository.arcwright(scratch, "compose", "examples/briefs/next-service.yaml");

    assertThat(timeless(ran.out())).contains(timeless(shown));
  }

  @Test
  void the_brief_is_read() throws IOException {
    Path brief = Files.writeString(scratch.resolve("brief.yaml"), blocks("yaml").get(0));

    Ran ran = Repository.arcwright(scratch, "compose", brief.toString());

    assertThat(ran.code()).as(ran.err()).isZero();
  }

  @Test
  void every_goal_is_named() {
    assertThat(BuiltIn.catalog().goals().keySet())
        .allMatch(goal -> Repository.readme().contains("`" + goal + "`"));
  }

  @Test
  void the_program_is_the_example() throws IOException {
    String program =
        Files.readString(
            Repository.ROOT.resolve("examples/src/main/java/org/arcwright/examples/Embedded.java"));
    List<String> lines = Arrays.stream(program.split("\n")).map(String::strip).toList();

    assertThat(lines).containsAll(blocks("java").get(0).lines().map(String::strip).toList());
  }

  /** How long the search took differs from run to run. */
  private static String timeless(String text) {
    return text.replaceAll("\\d+\\.\\d\\d s\\)", "0.00 s)");
  }
}
