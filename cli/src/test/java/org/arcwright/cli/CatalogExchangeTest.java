package org.arcwright.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.arcwright.catalog.Catalog;
import org.arcwright.format.CatalogFormat;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Out to a spreadsheet or a program and back, with nothing lost and nothing half written. */
class CatalogExchangeTest {
  private static final Catalog SHELF = BuiltIn.catalog();

  @TempDir Path folder;
  private Path out;

  @BeforeEach
  void name() {
    out = folder.resolve("shelf");
  }

  @Test
  void the_whole_shelf_goes_through_a_table() throws IOException {
    Path table = folder.resolve("shelf.csv");

    assertThat(Run.of("catalog", "export", "--out", table)).isEqualTo(new Run(Exit.DONE, "", ""));
    Run run = Run.of("catalog", "import", table, "--out", out);

    int count = SHELF.exercises().size();
    assertThat(run)
        .isEqualTo(new Run(Exit.DONE, "Wrote " + count + " exercises to " + out + ".\n", ""));
    Catalog words =
        Catalog.of(SHELF.products().values(), SHELF.tools().values(), List.of(), List.of());
    assertThat(CatalogFormat.readDirectory(out, words).exercises()).isEqualTo(SHELF.exercises());
    assertThat(files())
        .hasSize(count)
        .allMatch(file -> file.matches("exercises/[a-z0-9-]+\\.yaml"));
    assertThat(Csv.read("shelf.csv", Files.readString(table)))
        .hasSize(count + 1)
        .allMatch(row -> row.size() == 36);
  }

  @Test
  void the_whole_catalog_goes_through_json() {
    Path json = folder.resolve("shelf.json");

    Run.of("catalog", "export", "--format", "json", "--out", json);
    Run run = Run.of("catalog", "import", json, "--out", out);

    assertThat(run.code()).as(run.err()).isEqualTo(Exit.DONE);
    Catalog read = CatalogFormat.readDirectory(out);
    assertThat(read.products()).isEqualTo(SHELF.products());
    assertThat(read.tools()).isEqualTo(SHELF.tools());
    assertThat(read.exercises()).isEqualTo(SHELF.exercises());
    assertThat(read.goals()).isEqualTo(SHELF.goals());
  }

  @Test
  void without_a_file_it_goes_to_standard_output() {
    Run run = Run.of("catalog", "export");

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.out()).startsWith("\uFEFFid,title,kind,purpose,people-min,");
    assertThat(Run.of("catalog", "export", "--format", "json").out()).startsWith("{\"products\":");
  }

  @Test
  void only_ones_own_leave() throws IOException {
    Path own = folder.resolve("own/exercises");
    Files.createDirectories(own);
    String text = CatalogFormat.write(SHELF.exercise("weather-report").orElseThrow());
    Files.writeString(
        own.resolve("weather-report.yaml"), text.replaceFirst("energy: \\d", "energy: 4"));
    Files.writeString(
        own.resolve("our-weather.yaml"), text.replace("id: weather-report", "id: our-weather"));
    Files.writeString(
        own.resolve("dot-voting.yaml"),
        CatalogFormat.write(SHELF.exercise("dot-voting").orElseThrow()));

    Run run = Run.of("catalog", "export", "--own", "--catalog", folder.resolve("own"));

    assertThat(Csv.read("own.csv", run.out()).stream().map(row -> row.get(0)))
        .containsExactly("id", "our-weather", "weather-report");
    assertThat(Run.of("catalog", "export", "--own"))
        .isEqualTo(
            new Run(
                Exit.WRONG_INPUT,
                "",
                "--own: nothing adds to the built-in catalog; name a folder with --catalog\n"));
  }

  @Test
  void every_fault_is_told_with_row_and_column_and_nothing_is_written() throws IOException {
    Path table = table(text -> text.replaceFirst(",icebreaker,", ",opener,"));

    Run run = Run.of("catalog", "import", table, "--out", out);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).matches("\\Q" + table + "\\E:\\d+:3: kind, opener: .*\n");
    assertThat(out).doesNotExist();
  }

  @Test
  void nothing_is_overwritten_unless_one_says_so() throws IOException {
    Path table = table(text -> text);
    Path mine = out.resolve("exercises/ours/weather-report.yaml");
    Files.createDirectories(mine.getParent());
    Files.writeString(mine, "id: weather-report\n");

    Run refused = Run.of("catalog", "import", table, "--out", out);

    assertThat(refused.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(refused.err())
        .isEqualTo(
            mine
                + ": it is there already; say --replace to write over,"
                + " or name another folder\n");
    assertThat(mine).hasContent("id: weather-report");
    assertThat(files()).hasSize(1);

    Run replaced = Run.of("catalog", "import", table, "--out", out, "--replace");

    assertThat(replaced.code()).as(replaced.err()).isEqualTo(Exit.DONE);
    assertThat(CatalogFormat.readExercise(mine))
        .isEqualTo(SHELF.exercise("weather-report").orElseThrow());
    assertThat(files()).hasSize(SHELF.exercises().size());
  }

  @Test
  void words_of_the_folders_own_may_be_used() throws IOException {
    Path table = table(text -> text.replaceFirst(",call,", ",talking-stick,"));
    assertThat(Run.of("catalog", "import", table, "--out", out).err())
        .contains("unknown tool, talking-stick");
    Files.createDirectories(out);
    Files.writeString(
        out.resolve("tools.yaml"),
        "- {id: talking-stick, title: talking stick, meaning: Who holds it speaks., modes: [remote]}\n");

    assertThat(Run.of("catalog", "import", table, "--out", out).code()).isEqualTo(Exit.DONE);
  }

  @Test
  void a_folder_that_cannot_be_is_refused() throws IOException {
    Path table = table(text -> text);
    Path file = Files.writeString(folder.resolve("file"), "");

    assertThat(Run.of("catalog", "import", table, "--out", file).err())
        .isEqualTo(file + ": it is a file; name a folder\n");
    assertThat(Run.of("catalog", "import", table, "--out", file.resolve("in")).code())
        .isEqualTo(Exit.WRONG_INPUT);
  }

  @Test
  void a_file_that_is_no_table() throws IOException {
    Path table = folder.resolve("t.csv");
    assertThat(imported(table)).isEqualTo(table + ": no such file: check its name and folder\n");
    Files.write(table, "id,title\na,fr\u00FCh\n".getBytes(ISO_8859_1));
    assertThat(imported(table))
        .isEqualTo(table + ": text that is not UTF-8: save the file as CSV in UTF-8\n");
    Files.writeString(table, "");
    assertThat(imported(table))
        .isEqualTo(table + ":1:1: empty table: its first row names the columns\n");
    Path other = Files.writeString(folder.resolve("t.ods"), "");
    assertThat(imported(other))
        .isEqualTo(other + ": its name ends in neither .csv nor .json; rename it\n");
    assertThat(imported(folder)).contains("rename it");
    assertThat(out).doesNotExist();
  }

  private String imported(Path table) {
    return Run.of("catalog", "import", table, "--out", out).err();
  }

  private Path table(UnaryOperator<String> change) throws IOException {
    String text = Run.of("catalog", "export").out();
    return Files.writeString(folder.resolve("t.csv"), change.apply(text));
  }

  private List<String> files() throws IOException {
    try (Stream<Path> files = Files.walk(out)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> out.relativize(file).toString())
          .sorted()
          .toList();
    }
  }
}
