package org.arcwright.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.cli.document.Answer;
import org.arcwright.cli.document.MarkdownDocument;
import org.arcwright.cli.document.Marks;
import org.arcwright.cli.document.NoAgenda;
import org.arcwright.cli.document.OptionsDocument;
import org.arcwright.cli.document.Style;
import org.arcwright.cli.document.Sureness;
import org.arcwright.cli.document.TextDocument;
import org.arcwright.cli.document.Why;
import org.arcwright.cli.document.Withstood;
import org.arcwright.cli.handout.AgendaSheet;
import org.arcwright.cli.handout.OptionsSheet;
import org.arcwright.cli.handout.Workshop;
import org.arcwright.cli.words.Language;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.LeastBuffer;
import org.arcwright.compose.Options;
import org.arcwright.compose.WhatIf;
import org.arcwright.compose.explain.Clash;
import org.arcwright.compose.explain.Explainer;
import org.arcwright.compose.explain.WhyThis;
import org.arcwright.compose.search.OptionRule;
import org.arcwright.forecast.Forecaster;
import org.arcwright.format.AgendaFormat;
import org.arcwright.format.BriefFormat;
import org.arcwright.format.CompositionFormat;
import org.arcwright.format.InstanceFormat;
import org.arcwright.format.OptionsFormat;
import org.arcwright.format.WhyThisFormat;
import org.arcwright.standin.ToolVerdict;
import org.arcwright.standin.Withstanding;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** From a brief to an agenda. */
@Command(
    name = "compose",
    description = {
      "Composes the best agenda for a brief: drawn, laid out in rows, and with why it is built so.",
      ""
    },
    sortOptions = false)
final class ComposeCommand implements Callable<Integer> {
  private static final InstantSource CLOCK = InstantSource.system();

  @Parameters(index = "0", paramLabel = "BRIEF", description = "the brief, in YAML or JSON")
  private Path briefFile = Path.of("");

  @Option(
      names = "--format",
      paramLabel = "FORM",
      converter = Output.Converter.class,
      description =
          "text, json, markdown or html; without it, as the name given to --out ends, else text")
  private Optional<Output> format = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "write the agenda to this file instead of standard output")
  private Optional<Path> out = Optional.empty();

  @Option(
      names = "--instance",
      paramLabel = "FILE",
      description = "also write what the brief was reduced to, for solve and for other solvers")
  private Optional<Path> instance = Optional.empty();

  @Option(
      names = "--confidence",
      paramLabel = "PERCENT",
      converter = Percents.class,
      description =
          "keep as little buffer as ends on time this surely, such as 90%%, whatever the brief"
              + " says; exit code 1 if no agenda does")
  private Optional<Integer> confidence = Optional.empty();

  @Option(
      names = "--withstand",
      paramLabel = "TOOL",
      split = ",",
      description =
          "every exercise gets a stand-in for when this tool fails, such as board; several with"
              + " commas, for one failing at a time; exit code 1 if no agenda is like that")
  private List<String> withstand = new ArrayList<>();

  @Option(
      names = "--why",
      description =
          "say of each exercise what it takes over and hands on, why it is where it is, and the"
              + " next best in its place")
  private boolean why;

  @Option(names = "--left-out", description = "list every exercise that was left out, and why")
  private boolean leftOut;

  @Parameters(index = "1..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  @Mixin private OptionsOption options = new OptionsOption();

  @Mixin private VaryOption vary = new VaryOption();

  @Mixin private PageOptions pages = new PageOptions();

  @Mixin private BudgetOption budget = new BudgetOption();

  private final Terminal terminal;

  ComposeCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Optional<WholeFile> outFile = out.map(WholeFile::to);
    Optional<WholeFile> instanceFile = instance.map(WholeFile::to);
    refuseOverwriting(outFile, instanceFile);
    Catalog catalog = catalogs.read(more, terminal).catalog();
    Brief brief = BriefFormat.read(briefFile, catalog);
    Instant begin = CLOCK.instant();
    Optional<OptionRule> rule = options.rule();
    refuseTogether(rule.isPresent() && confidence.isPresent(), "--options", "--confidence");
    refuseTogether(rule.isPresent() && why, "--options", "--why");
    refuseTogether(rule.isPresent() && !withstand.isEmpty(), "--options", "--withstand");
    refuseTogether(confidence.isPresent() && !withstand.isEmpty(), "--confidence", "--withstand");
    withstand.forEach(id -> Wanted.word("tool", id, catalog.tools().keySet()));
    if (vary.wanted()) {
      refuseBesideVary();
      WhatIf.Answer answer = refusable(() -> vary.ask(brief, catalog, budget.time(), terminal));
      return VaryOption.deliver(answer, brief, form(), terminal, outFile);
    }
    if (rule.isPresent()) {
      return choose(brief, catalog, rule.get(), begin, outFile, instanceFile);
    }
    if (!withstand.isEmpty()) {
      return withstand(brief, catalog, begin, outFile, instanceFile);
    }
    LeastBuffer.Found found = searching(() -> search(brief, catalog));
    Composition composition = found.composition();
    if (composition instanceof Composed composed) {
      instanceFile.ifPresent(file -> file.write(InstanceFormat.write(composition.instance())));
      Optional<Sureness> sureness =
          confidence.map(wanted -> sureness(wanted, found, composed.agenda()));
      Optional<WhyThis> each = why(found.brief(), composed, catalog, begin);
      write(
          new Answer(found.brief(), catalog, composed, sureness, each), Optional.empty(), outFile);
      return found.reached() ? Exit.DONE : Exit.NEGATIVE;
    }
    return none(found.brief(), composition, catalog, begin, outFile, instanceFile);
  }

  private int withstand(
      Brief brief,
      Catalog catalog,
      Instant begin,
      Optional<WholeFile> outFile,
      Optional<WholeFile> instanceFile) {
    Set<String> tools = new LinkedHashSet<>(withstand);
    Withstanding.Found found =
        searching(() -> Withstanding.compose(catalog, brief, tools, allowed(), CLOCK));
    if (!(found.composition() instanceof Composed composed)) {
      return none(brief, found.composition(), catalog, begin, outFile, instanceFile);
    }
    ToolVerdict verdict = found.verdict();
    instanceFile.ifPresent(file -> file.write(InstanceFormat.write(composed.instance())));
    Optional<WhyThis> each = why(brief, composed, catalog, begin);
    write(
        new Answer(brief, catalog, composed, Optional.empty(), each),
        Optional.of(verdict),
        outFile);
    terminal.err().println(Withstood.write(verdict, composed, catalog, terminal.width()));
    return found.reached() ? Exit.DONE : Exit.NEGATIVE;
  }

  private static void refuseTogether(boolean both, String one, String other) {
    if (both) {
      throw new Refusal("arcwright: " + one + " and " + other + " do not go together; give one");
    }
  }

  private void refuseBesideVary() {
    refuseTogether(options.rule().isPresent(), "--vary", "--options");
    refuseTogether(confidence.isPresent(), "--vary", "--confidence");
    refuseTogether(!withstand.isEmpty(), "--vary", "--withstand");
    refuseTogether(why, "--vary", "--why");
    refuseTogether(leftOut, "--vary", "--left-out");
    refuseTogether(instance.isPresent(), "--vary", "--instance");
    if (form() == Output.MARKDOWN || form() == Output.HTML) {
      throw new Refusal("arcwright: --vary comes as text or json; name another --format or --out");
    }
  }

  private Budget allowed() {
    return Budget.of(budget.time());
  }

  private <T> T searching(Supplier<T> work) {
    return refusable(() -> Progress.during(terminal, budget.time(), work));
  }

  private <T> T refusable(Supplier<T> work) {
    try {
      return work.get();
    } catch (InvalidValueException e) {
      throw new Refusal(briefFile + ": " + e.getMessage(), e);
    }
  }

  private int choose(
      Brief brief,
      Catalog catalog,
      OptionRule rule,
      Instant begin,
      Optional<WholeFile> outFile,
      Optional<WholeFile> instanceFile) {
    Options answer = searching(() -> Composer.of(catalog).options(brief, rule, allowed()));
    if (answer instanceof Options.NotOne none) {
      return none(brief, none.why(), catalog, begin, outFile, instanceFile);
    }
    Options.Found found = (Options.Found) answer;
    instanceFile.ifPresent(file -> file.write(InstanceFormat.write(found.best().instance())));
    Delivery.of(
        terminal,
        outFile,
        (marks, style, width) -> options(brief, catalog, found, marks, style, width));
    return Exit.DONE;
  }

  private String options(
      Brief brief, Catalog catalog, Options.Found found, Marks marks, Style style, int width) {
    return switch (form()) {
      case TEXT -> OptionsDocument.text(brief, catalog, found, marks, style, width);
      case JSON -> OptionsFormat.write(found);
      case MARKDOWN -> OptionsDocument.markdown(brief, catalog, found);
      case HTML -> pages.html(OptionsSheet.of(brief, catalog, found, pages.language()));
    };
  }

  private int none(
      Brief brief,
      Composition composition,
      Catalog catalog,
      Instant begin,
      Optional<WholeFile> outFile,
      Optional<WholeFile> instanceFile) {
    instanceFile.ifPresent(file -> file.write(InstanceFormat.write(composition.instance())));
    Optional<Clash> clash = clash(brief, composition, catalog, begin);
    if (format.filter(form -> form == Output.JSON).isPresent()) {
      terminal
          .out()
          .print(
              clash
                  .map(found -> CompositionFormat.write(composition, found))
                  .orElseGet(() -> CompositionFormat.write(composition)));
    } else {
      terminal.out().print(NoAgenda.write(composition, clash, catalog, terminal.width(), leftOut));
    }
    outFile.ifPresent(file -> terminal.err().println("Nothing written to " + file.path() + "."));
    return Exit.NEGATIVE;
  }

  private LeastBuffer.Found search(Brief brief, Catalog catalog) {
    Composer composer = Composer.of(catalog);
    if (confidence.isEmpty()) {
      return new LeastBuffer.Found(brief, composer.compose(brief, allowed()), 1, true, true);
    }
    Forecaster forecaster = Forecaster.of(catalog);
    return LeastBuffer.find(
        composer,
        brief,
        confidence.get() / 100.0,
        agenda -> forecaster.forecast(agenda, brief).onTime(),
        allowed());
  }

  private static Sureness sureness(int wanted, LeastBuffer.Found found, Agenda agenda) {
    return new Sureness(
        wanted,
        found.onTime(),
        found.brief().bufferPercent(),
        (int) agenda.cap().minus(agenda.end()).toMinutes(),
        found.reached(),
        found.complete());
  }

  private void refuseOverwriting(Optional<WholeFile> outFile, Optional<WholeFile> instanceFile) {
    for (WholeFile file :
        List.of(outFile, instanceFile).stream().flatMap(Optional::stream).toList()) {
      if (file.is(briefFile)) {
        throw new Refusal(file.path() + ": that is the brief itself; name another file");
      }
    }
    if (outFile.isPresent()
        && instanceFile.isPresent()
        && outFile.get().is(instanceFile.get().path())) {
      throw new Refusal(
          outFile.get().path() + ": --out and --instance name the same file; name two");
    }
  }

  private void write(Answer answer, Optional<ToolVerdict> verdict, Optional<WholeFile> outFile) {
    answer
        .sureness()
        .filter(sureness -> form() == Output.JSON)
        .ifPresent(sureness -> terminal.err().println(sureness.sentence(Language.ENGLISH)));
    Delivery.of(
        terminal, outFile, (marks, style, width) -> document(answer, verdict, marks, style, width));
  }

  private String document(
      Answer answer, Optional<ToolVerdict> verdict, Marks marks, Style style, int width) {
    return switch (form()) {
      case TEXT -> TextDocument.write(answer, marks, style, width, leftOut);
      case JSON ->
          answer
              .why()
              .map(each -> json(each, answer.brief(), verdict))
              .orElseGet(() -> json(answer, verdict));
      case MARKDOWN -> MarkdownDocument.write(answer);
      case HTML ->
          pages.html(AgendaSheet.of(workshop(answer), Why.sentences(answer, pages.language())));
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

  private Workshop workshop(Answer answer) {
    return new Workshop(
        answer.composed().agenda(), answer.brief(), answer.catalog(), pages.language());
  }

  private Output form() {
    return format.or(() -> out.flatMap(file -> Output.ofFile(file.toString()))).orElse(Output.TEXT);
  }

  /** Why each exercise is in its place, looked for with what is left of the budget. */
  private Optional<WhyThis> why(Brief brief, Composed composed, Catalog catalog, Instant begin) {
    Duration left = left(begin);
    Budget rest = Budget.of(left.isZero() ? Duration.ofNanos(1) : left);
    return why
        ? Optional.of(
            Progress.during(
                terminal, left, () -> Explainer.of(catalog).whyThis(brief, composed, rest)))
        : Optional.empty();
  }

  private Duration left(Instant begin) {
    Duration left = budget.time().minus(Duration.between(begin, CLOCK.instant()));
    return left.isNegative() ? Duration.ZERO : left;
  }

  /** What clashes where nothing fits, looked for with what is left of the budget. */
  private Optional<Clash> clash(
      Brief brief, Composition composition, Catalog catalog, Instant begin) {
    Duration left = left(begin);
    if (!(composition instanceof NothingFits nothing) || left.isZero()) {
      return Optional.empty();
    }
    return Optional.of(
        Progress.during(
            terminal,
            left,
            () -> Explainer.of(catalog).whyNothingFits(brief, nothing, Budget.of(left))));
  }
}
