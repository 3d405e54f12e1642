package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.arcwright.format.ProblemsFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BriefCheckCommandTest {
  @TempDir Path folder;

  @Test
  void a_good_brief_has_no_problems() throws IOException {
    Path brief = Briefs.write(folder, Briefs.SHORT);

    assertThat(Run.of("brief", "check", brief))
        .isEqualTo(new Run(Exit.DONE, "1 brief, no problems.\n", ""));
  }

  @Test
  void all_problems_of_all_files_are_told_at_once() throws IOException {
    Path one =
        Briefs.write(
            folder,
            Briefs.SHORT.replace("people: 5", "people: 0").replace("mode: remote", "mod: remote"));
    Path two = Files.writeString(folder.resolve("two.yaml"), "title: Two\n");
    Path none = folder.resolve("none.yaml");

    Run run = Run.of("brief", "check", one, two, none);

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains(
            one + ":3:9: people, 0: ",
            one + ":4:1: unknown key, mod: perhaps mode\n",
            two + ":1:1: missing key, goal: ",
            none + ": no such file")
        .endsWith("3 briefs, 8 problems.\n");
  }

  @Test
  void what_is_allowed_but_odd_is_a_hint() throws IOException {
    Path brief =
        Briefs.write(
            folder, Briefs.SHORT.replace("cap: 75m", "cap: 5h") + "rhythm: {break: none}\n");

    Run run = Run.of("brief", "check", brief);

    assertThat(run)
        .isEqualTo(
            new Run(
                Exit.DONE,
                """
                %1$s:5:6: hint: cap, 5h: at screens people last under four hours; two sittings would serve them better (common practice, no source)
                %1$s:8:17: hint: break, none: nobody can rest; people want a break about every 60 minutes (HSE L26)
                1 brief, no problems, 2 hints.
                """
                    .formatted(brief),
                ""));
  }

  @Test
  void programs_get_json() throws IOException {
    Path odd = Briefs.write(folder, Briefs.SHORT + "buffer: 1%\n");
    Path wrong = Files.writeString(folder.resolve("wrong.yaml"), Briefs.SHORT + "bufer: 1%\n");

    Run run = Run.of("brief", "check", odd, wrong, "--format", "json");

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(ProblemsFormat.read("out.json", run.out()))
        .singleElement()
        .satisfies(problem -> assertThat(problem.remedy()).isEqualTo("perhaps buffer"));
    assertThat(run.out()).contains("\"hints\": [", "\"value\": \"1%\"");
  }
}
