package org.arcwright.cli;

import java.util.Optional;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.cli.document.Answer;
import org.arcwright.cli.document.MarkdownDocument;
import org.arcwright.cli.document.Marks;
import org.arcwright.cli.document.OptionsDocument;
import org.arcwright.cli.document.Style;
import org.arcwright.cli.document.TextDocument;
import org.arcwright.cli.document.Why;
import org.arcwright.cli.handout.AgendaSheet;
import org.arcwright.cli.handout.OptionsSheet;
import org.arcwright.cli.handout.Workshop;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Options;
import org.arcwright.compose.explain.WhyThis;
import org.arcwright.format.AgendaFormat;
import org.arcwright.format.OptionsFormat;
import org.arcwright.format.WhyThisFormat;
import org.arcwright.standin.ToolVerdict;

/**
 * An agenda, or several to choose from, in the form that is wanted.
 *
 * @param pages how pages look
 * @param leftOut whether a text also lists every exercise that was left out
 */
record AgendaForms(Output form, PageOptions pages, boolean leftOut) {
  String options(
      Brief brief, Catalog catalog, Options.Found found, Marks marks, Style style, int width) {
    return switch (form) {
      case TEXT -> OptionsDocument.text(brief, catalog, found, marks, style, width);
      case JSON -> OptionsFormat.write(found);
      case MARKDOWN -> OptionsDocument.markdown(brief, catalog, found);
      case HTML -> pages.html(OptionsSheet.of(brief, catalog, found, pages.language()));
    };
  }

  /**
   * An agenda.
   *
   * @param verdict whether it withstands what it was to withstand
   */
  String agenda(Answer answer, Optional<ToolVerdict> verdict, Marks marks, Style style, int width) {
    return switch (form) {
      case TEXT -> TextDocument.write(answer, marks, style, width, leftOut);
      case JSON ->
          answer
              .why()
              .map(each -> json(each, answer.brief(), verdict))
              .orElseGet(() -> json(answer, verdict));
      case MARKDOWN -> MarkdownDocument.write(answer);
      case HTML -> {
        Workshop workshop =
            new Workshop(
                answer.composed().agenda(), answer.brief(), answer.catalog(), pages.language());
        yield pages.html(AgendaSheet.of(workshop, Why.sentences(answer, pages.language())));
      }
    };
  }

  private static String json(WhyThis each, Brief brief, Optional<ToolVerdict> verdict) {
    return verdict
        .map(found -> WhyThisFormat.write(each, brief, found))
        .orElseGet(() -> WhyThisFormat.write(each, brief));
  }

  private static String json(Answer answer, Optional<ToolVerdict> verdict) {
    Composed composed = answer.composed();
    return verdict.isPresent()
        ? AgendaFormat.write(composed.agenda(), answer.brief(), composed.proof(), verdict.get())
        : AgendaFormat.write(composed.agenda(), answer.brief(), composed.proof());
  }
}
