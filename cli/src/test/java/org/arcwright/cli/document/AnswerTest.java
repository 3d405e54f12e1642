package org.arcwright.cli.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Mode;
import org.arcwright.cli.words.Language;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Proof;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What documents say of an agenda is true of it. */
class AnswerTest {
  private static final Catalog CATALOG = BuiltIn.catalog();
  private static final Answer MORNING =
      answer(
          brief("choose-a-direction", Mode.REMOTE, 9, 210)
              .start(ZonedDateTime.of(2027, 3, 2, 9, 0, 0, 0, ZoneId.of("Europe/Vienna"))));
  private static final Answer DAY =
      answer(
          brief("plan-the-work", Mode.IN_PERSON, 20, 480)
              .meal(
                  new Meal(
                      Duration.ofMinutes(180), Duration.ofMinutes(240), Duration.ofMinutes(60))));
  private static final Answer WISHED =
      answer(
          brief("find-the-risks", Mode.HYBRID, 10, 150)
              .ownItem(
                  new OwnItem(
                      "talk",
                      "A talk | with *signs*",
                      Duration.ofMinutes(20),
                      Optional.empty(),
                      Optional.of(new Moment.After(Duration.ofMinutes(30))),
                      2,
                      Format.PLENARY))
              .wishes(
                  new Wishes(Set.of("premortem"), Set.of(), List.of(), Set.of("takeaway-round"))));

  private static BriefBuilder brief(String goal, Mode mode, int people, int minutes) {
    return Brief.builder("A workshop", goal, mode, people, Duration.ofMinutes(minutes));
  }

  private static Answer answer(BriefBuilder builder) {
    Brief brief = builder.build();
    Composed composed = (Composed) Composer.of(CATALOG).compose(brief, Budget.USUAL);
    return new Answer(brief, CATALOG, composed);
  }

  private static Stream<Answer> answers() {
    return Stream.of(MORNING, DAY, WISHED);
  }

  private static String text(Answer answer, int width) {
    return TextDocument.write(answer, Marks.UNICODE, Style.PLAIN, width, false);
  }

  @ParameterizedTest
  @MethodSource("answers")
  void what_was_given_up_adds_up_to_the_cost(Answer answer) {
    List<GivenUp.Loss> losses = GivenUp.losses(answer);

    assertThat(losses.stream().mapToLong(GivenUp.Loss::points).sum())
        .isEqualTo(answer.composed().proof().cost());
    assertThat(losses)
        .extracting(GivenUp.Loss::points)
        .isSortedAccordingTo((a, b) -> Long.compare(b, a));
    assertThat(losses).noneMatch(loss -> loss.text().isBlank() || loss.text().endsWith(": "));
  }

  @ParameterizedTest
  @MethodSource("answers")
  void the_times_add_up_to_the_cap(Answer answer) {
    assertThat(
            answer.exerciseMinutes()
                + answer.pauseMinutes()
                + answer.agenda().buffer().toMinutes()
                + answer.idleMinutes())
        .isEqualTo(answer.agenda().cap().toMinutes());
  }

  @ParameterizedTest
  @MethodSource("answers")
  void every_exercise_and_break_stands_in_the_text(Answer answer) {
    String text = text(answer, 100);

    assertThat(text.lines()).allMatch(line -> line.length() <= 100);
    answer.agenda().activities().forEach(a -> assertThat(text).contains(a.title()));
    long breaks = text.lines().filter(line -> line.matches(" .* (break|meal)")).count();
    assertThat(breaks).isEqualTo(answer.pauses().size());
    assertThat(answer.pauses()).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("answers")
  void narrow_terminals_get_narrow_text(Answer answer) {
    assertThat(text(answer, 60).lines()).allMatch(line -> line.length() <= 60);
  }

  @Test
  void breaks_are_explained() {
    assertThat(BreakReasons.sentences(DAY, Language.ENGLISH))
        .hasSameSizeAs(DAY.pauses())
        .anyMatch(sentence -> sentence.startsWith("The meal at ") && sentence.contains("time you"));
    assertThat(BreakReasons.sentences(MORNING, Language.ENGLISH))
        .allMatch(s -> s.startsWith("The break at "));
  }

  @Test
  void wishes_are_named() {
    assertThat(Why.sentences(WISHED, Language.ENGLISH))
        .anyMatch(
            s ->
                s.startsWith("Your wishes: ")
                    && s.contains("\"Premortem\" is in")
                    && s.contains("\"A talk | with *signs*\" starts at 0:30 from the start"));
  }

  @ParameterizedTest
  @MethodSource("answers")
  void another_language_tells_the_same_figures(Answer answer) {
    List<String> german = Why.sentences(answer, Language.of("de").orElseThrow());
    List<String> english = Why.sentences(answer, Language.ENGLISH);

    assertThat(german).hasSameSizeAs(english).doesNotContainAnyElementsOf(english);
    for (int i = 0; i < german.size(); i++) {
      assertThat(figures(german.get(i)))
          .as(german.get(i))
          .containsExactlyInAnyOrderElementsOf(figures(english.get(i)));
    }
  }

  private static List<String> figures(String sentence) {
    return Pattern.compile("\\d+(?:[.,:]\\d+)?")
        .matcher(sentence)
        .results()
        .map(found -> found.group().replace(',', '.'))
        .toList();
  }

  @Test
  void markdown_takes_signs_literally() {
    String markdown = MarkdownDocument.write(WISHED);

    assertThat(markdown).contains("A talk \\| with \\*signs\\*").contains("| own item | plenary |");
    List<String> rows = markdown.lines().filter(line -> line.startsWith("|")).toList();
    assertThat(rows)
        .allMatch(row -> row.replace("\\|", "").chars().filter(c -> c == '|').count() == 7);
  }

  @Test
  void cautions_come_with_a_way_out() {
    answers()
        .forEach(
            answer ->
                assertThat(Care.cautions(answer))
                    .filteredOn(line -> line.startsWith("\""))
                    .allMatch(line -> line.contains("To opt out: ")));
    assertThat(answers().map(Care::cautions)).anyMatch(lines -> !lines.isEmpty());
  }

  @Test
  void headings_may_be_bold() {
    String styled = TextDocument.write(MORNING, Marks.UNICODE, Style.ANSI, 80, false);

    assertThat(styled).startsWith("\u001b[1mA workshop\u001b[0m\n");
    assertThat(styled.replaceAll("\u001b\\[\\d*m", "")).isEqualTo(text(MORNING, 80));
  }

  @Test
  void the_proof_says_how_sure_it_is() {
    assertThat(ProofLine.full(MORNING)).startsWith("Proven best: no agenda from the ");
    assertThat(
            ProofLine.full(withProof(new Proof(false, 1000, 875, 1234, Duration.ofMillis(2500)))))
        .startsWith("Best so far, not proven:")
        .contains("up to 125 of these 1,000 points less, 13 %", "(1,234 search steps, 2.50 s)");
  }

  private static Answer withProof(Proof proof) {
    Composed composed = MORNING.composed();
    return new Answer(
        MORNING.brief(),
        CATALOG,
        new Composed(
            composed.agenda(), proof, composed.prices(), composed.leftOut(), composed.instance()));
  }
}
