package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.Tool;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Options;
import org.arcwright.compose.Review;
import org.arcwright.compose.WhatIf;
import org.arcwright.compose.check.Verdict;
import org.arcwright.compose.explain.Clash;
import org.arcwright.compose.explain.WhyNot;
import org.arcwright.compose.explain.WhyThis;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.search.Solution;
import org.junit.jupiter.api.Test;

/**
 * Whatever is written is read as the same value and keeps to its schema, and nothing at all
 * confuses a reader.
 */
class RoundTripTest {
  private static final Catalog WORDS =
      Catalog.of(
          Samples.IDS.stream().map(id -> new Product(id, id, id)).toList(),
          Samples.IDS.stream().map(id -> new Tool(id, id, id, Set.of())).toList(),
          List.of(),
          List.of());

  @Property(tries = 300, seed = "635")
  void an_exercise(@ForAll("exercises") Exercise exercise) {
    String text = CatalogFormat.write(exercise);

    assertThat(CatalogFormat.readExercise("e.yaml", text)).isEqualTo(exercise);
    assertThat(SchemaFile.complaints(Schema.EXERCISE, text)).isEmpty();
  }

  @Property(tries = 300, seed = "635")
  void an_exercise_in_a_table(@ForAll("exercises") Exercise exercise) {
    List<List<String>> rows = List.of(TableFormat.header(), TableFormat.row(exercise));

    assertThat(TableFormat.read("t.csv", rows, WORDS)).containsExactly(exercise);
  }

  @Test
  void characters_of_two_halves_may_stand_anywhere() {
    for (int before = 1000; before < 1060; before++) {
      String text = "# " + "x".repeat(before) + "\uD83D\uDE00".repeat(700) + "\n[]";
      assertThatThrownBy(() -> CatalogFormat.readExercise("e.yaml", text))
          .isInstanceOf(FormatException.class);
    }
  }

  @Property(tries = 300, seed = "635")
  void a_goal(@ForAll("goals") Goal goal) {
    String text = CatalogFormat.write(goal);

    assertThat(CatalogFormat.readGoal("g.yaml", text)).isEqualTo(goal);
    assertThat(SchemaFile.complaints(Schema.GOAL, text)).isEmpty();
  }

  @Property(tries = 300, seed = "635")
  void a_brief(@ForAll("briefs") Brief brief) {
    String text = BriefFormat.write(brief);

    assertThat(BriefFormat.read("b.yaml", text)).isEqualTo(brief);
    assertThat(SchemaFile.complaints(Schema.BRIEF, text)).isEmpty();
  }

  @Property(tries = 300, seed = "635")
  void an_instance(@ForAll("instances") Instance instance) {
    String text = InstanceFormat.write(instance);

    assertThat(InstanceFormat.read("i.json", text)).isEqualTo(instance);
    assertThat(SchemaFile.complaints(Schema.INSTANCE, text)).isEmpty();
  }

  @Property(tries = 300, seed = "635")
  void an_agenda(@ForAll("agendas") Agenda agenda) {
    String text = AgendaFormat.write(agenda);

    assertThat(AgendaFormat.read("a.json", text)).isEqualTo(agenda);
    assertThat(SchemaFile.complaints(Schema.AGENDA, text)).isEmpty();
  }

  @Property(tries = 300, seed = "635")
  void a_brief_in_json(@ForAll("briefs") Brief brief) {
    String text = BriefFormat.writeJson(brief);

    assertThat(BriefFormat.read("b.json", text)).isEqualTo(brief);
    assertThat(SchemaFile.complaints(Schema.BRIEF, text)).isEmpty();
  }

  @Property(tries = 300, seed = "635")
  void an_answer(@ForAll("compositions") Composition answer) {
    String text = CompositionFormat.write(answer);

    assertThat(CompositionFormat.read("c.json", text)).isEqualTo(answer);
    assertThat(SchemaFile.complaints(Schema.COMPOSITION, text)).isEmpty();
  }

  @Property(tries = 100, seed = "635")
  void options(@ForAll("manyOptions") Options options) {
    String text = OptionsFormat.write(options);

    assertThat(OptionsFormat.read("o.json", text)).isEqualTo(options);
    assertThat(SchemaFile.complaints(Schema.OPTIONS, text)).isEmpty();
  }

  @Property(tries = 100, seed = "635")
  void what_if(@ForAll("whatIfs") WhatIf.Answer answer) {
    String text = WhatIfFormat.write(answer);

    assertThat(WhatIfFormat.read("w.json", text)).isEqualTo(answer);
    assertThat(SchemaFile.complaints(Schema.WHAT_IF, text)).isEmpty();
  }

  @Property(tries = 100, seed = "635")
  void a_clash(@ForAll("clashes") Clash clash) {
    String text = ClashFormat.write(clash);

    assertThat(ClashFormat.read("c.json", text)).isEqualTo(clash);
    assertThat(SchemaFile.complaints(Schema.CLASH, text)).isEmpty();
  }

  @Property(tries = 100, seed = "635")
  void why_an_exercise_is_not_in(@ForAll("whyNots") WhyNot answer) {
    String text = WhyNotFormat.write(answer);

    assertThat(WhyNotFormat.read("w.json", text)).isEqualTo(answer);
    assertThat(SchemaFile.complaints(Schema.WHY_NOT, text)).isEmpty();
  }

  @Property(tries = 100, seed = "635")
  void why_exercises_are_in(@ForAll("whyThese") WhyThis answer) {
    String text = WhyThisFormat.write(answer);

    assertThat(WhyThisFormat.read("w.json", text)).isEqualTo(answer);
    assertThat(SchemaFile.complaints(Schema.WHY_THIS, text)).isEmpty();
  }

  @Property(tries = 300, seed = "635")
  void a_review(@ForAll("reviews") Review review) {
    String text = ReviewFormat.write(review);

    assertThat(ReviewFormat.read("r.json", text)).isEqualTo(review);
    assertThat(SchemaFile.complaints(Schema.REVIEW, text)).isEmpty();
  }

  @Property(tries = 300, seed = "635")
  void a_solution(@ForAll("solutions") Solution solution) {
    String text = SolutionFormat.write(solution);

    assertThat(SolutionFormat.read("s.json", text)).isEqualTo(solution);
    assertThat(SchemaFile.complaints(Schema.SOLUTION, text)).isEmpty();
  }

  @Property(tries = 300, seed = "635")
  void a_verdict(@ForAll("verdicts") Verdict verdict) {
    String text = VerdictFormat.write(verdict);

    assertThat(VerdictFormat.read("v.json", text)).isEqualTo(verdict);
    assertThat(SchemaFile.complaints(Schema.VERDICT, text)).isEmpty();
  }

  @Test
  void each_kind_of_finding_comes_up_in_verdicts() {
    Set<String> kinds = new TreeSet<>();
    Verdicts.findings().forEach(finding -> kinds.add(FindingForm.kind(finding.getClass())));

    assertThat(kinds).isEqualTo(FindingForm.kinds());
  }

  @Property(tries = 300, seed = "635")
  void problems(@ForAll("problemLists") List<Problem> problems) {
    String text = ProblemsFormat.write(problems);

    assertThat(ProblemsFormat.read("p.json", text)).isEqualTo(problems);
    assertThat(SchemaFile.complaints(Schema.PROBLEMS, text)).isEmpty();
  }

  @Property(tries = 2000, seed = "635")
  void a_text_of_signs_is_refused_with_places(@ForAll("signs") String text) {
    assertThat(Complaints.of(() -> BriefFormat.read("b.yaml", text)))
        .isNotEmpty()
        .allMatch(problem -> problem.matches("b\\.yaml:\\d+:\\d+: .+"));
    assertThat(Complaints.of(() -> BriefFormat.read("b.json", text)))
        .isNotEmpty()
        .allMatch(problem -> problem.matches("b\\.json:\\d+:\\d+: .+"));
  }

  /** A slip of the finger in a good file: either it is still good, or its place is told. */
  @Property(tries = 2000, seed = "635")
  void a_slip_in_an_exercise_is_told_with_its_place_or_does_no_harm(@ForAll("slips") Slip slip) {
    assertThat(Complaints.of(() -> CatalogFormat.readExercise("e.yaml", slip.text())))
        .allMatch(problem -> problem.matches("e\\.yaml:\\d+:\\d+: .+"));
  }

  /** A file in which some signs were taken out and others put in. */
  record Slip(String text) {}

  @Provide
  Arbitrary<Slip> slips() {
    String file = SmallCatalog.TWO_OBJECTS;
    return Combinators.combine(
            Arbitraries.integers().between(0, file.length()),
            Arbitraries.integers().between(0, 6),
            signs().filter(signs -> signs.length() < 4))
        .as(
            (at, length, signs) ->
                new Slip(
                    file.substring(0, at)
                        + signs
                        + file.substring(Math.min(file.length(), at + length))));
  }

  @Provide
  Arbitrary<String> signs() {
    return Arbitraries.strings()
        .withChars(" \n\t:#'\"-{}[],&*!|>%@`\\~=?<.aä1\r\uFEFF\u2028")
        .ofMaxLength(40);
  }

  @Provide
  Arbitrary<Exercise> exercises() {
    return Samples.exercises();
  }

  @Provide
  Arbitrary<Goal> goals() {
    return Samples.goals();
  }

  @Provide
  Arbitrary<Brief> briefs() {
    return Samples.briefs();
  }

  @Provide
  Arbitrary<Instance> instances() {
    return Samples.instances();
  }

  @Provide
  Arbitrary<Agenda> agendas() {
    return Samples.agendas();
  }

  @Provide
  Arbitrary<Composition> compositions() {
    return Verdicts.compositions();
  }

  @Provide
  Arbitrary<Options> manyOptions() {
    return Verdicts.options();
  }

  @Provide
  Arbitrary<WhatIf.Answer> whatIfs() {
    return Verdicts.whatIfs();
  }

  @Provide
  Arbitrary<Clash> clashes() {
    return Explanations.clashes();
  }

  @Provide
  Arbitrary<WhyNot> whyNots() {
    return Explanations.whyNots();
  }

  @Provide
  Arbitrary<WhyThis> whyThese() {
    return Explanations.whyThese();
  }

  @Provide
  Arbitrary<Review> reviews() {
    return Verdicts.reviews();
  }

  @Provide
  Arbitrary<Solution> solutions() {
    return Verdicts.solutions();
  }

  @Provide
  Arbitrary<Verdict> verdicts() {
    return Verdicts.verdicts();
  }

  @Provide
  Arbitrary<List<Problem>> problemLists() {
    return Verdicts.problems();
  }
}
