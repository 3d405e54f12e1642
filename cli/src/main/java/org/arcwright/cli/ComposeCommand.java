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
import org.arcwright.cli.document.NoAgenda;
import org.arcwright.cli.document.Sureness;
import org.arcwright.cli.document.Withstood;
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
import org.arcwright.format.BriefFormat;
import org.arcwright.format.CompositionFormat;
import org.arcwright.format.InstanceFormat;
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
    Asked asked = new Asked(brief, catalog, CLOCK.instant(), outFile, instanceFile);
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
      return choose(asked, rule.get());
    }
    if (!withstand.isEmpty()) {
      return withstand(asked);
    }
    return compose(asked);
  }

  private int compose(Asked asked) {
    LeastBuffer.Found found = searching(() -> search(asked.brief, asked.catalog));
    Asked kept = asked.with(found.brief());
    if (!(found.composition() instanceof Composed composed)) {
      return none(kept, found.composition());
    }
    kept.keepInstance(composed);
    Optional<Sureness> sureness =
        confidence.map(wanted -> sureness(wanted, found, composed.agenda()));
    write(kept, composed, sureness, Optional.empty());
    return found.reached() ? Exit.DONE : Exit.NEGATIVE;
  }

  private int withstand(Asked asked) {
    Set<String> tools = new LinkedHashSet<>(withstand);
    Withstanding.Found found =
        searching(() -> Withstanding.compose(asked.catalog, asked.brief, tools, allowed(), CLOCK));
    if (!(found.composition() instanceof Composed composed)) {
      return none(asked, found.composition());
    }
    ToolVerdict verdict = found.verdict();
    asked.keepInstance(composed);
    write(asked, composed, Optional.empty(), Optional.of(verdict));
    terminal.err().println(Withstood.write(verdict, composed, asked.catalog, terminal.width()));
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

  private int choose(Asked asked, OptionRule rule) {
    Options answer =
        searching(() -> Composer.of(asked.catalog).options(asked.brief, rule, allowed()));
    if (answer instanceof Options.NotOne none) {
      return none(asked, none.why());
    }
    Options.Found found = (Options.Found) answer;
    asked.keepInstance(found.best());
    Delivery.of(
        terminal,
        asked.out,
        (marks, style, width) ->
            forms().options(asked.brief, asked.catalog, found, marks, style, width));
    return Exit.DONE;
  }

  private int none(Asked asked, Composition composition) {
    asked.keepInstance(composition);
    Optional<Clash> clash = clash(asked, composition);
    String text;
    if (format.filter(form -> form == Output.JSON).isPresent()) {
      text =
          clash
              .map(found -> CompositionFormat.write(composition, found))
              .orElseGet(() -> CompositionFormat.write(composition));
    } else {
      text = NoAgenda.write(composition, clash, asked.catalog, terminal.width(), leftOut);
    }
    terminal.out().print(text);
    asked.out.ifPresent(file -> terminal.err().println("Nothing written to " + file.path() + "."));
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

  private void write(
      Asked asked, Composed composed, Optional<Sureness> sureness, Optional<ToolVerdict> verdict) {
    Answer answer =
        new Answer(asked.brief, asked.catalog, composed, sureness, why(asked, composed));
    sureness
        .filter(sure -> form() == Output.JSON)
        .ifPresent(sure -> terminal.err().println(sure.sentence(Language.ENGLISH)));
    Delivery.of(
        terminal,
        asked.out,
        (marks, style, width) -> forms().agenda(answer, verdict, marks, style, width));
  }

  private Output form() {
    return format.or(() -> out.flatMap(file -> Output.ofFile(file.toString()))).orElse(Output.TEXT);
  }

  private AgendaForms forms() {
    return new AgendaForms(form(), pages, leftOut);
  }

  /** Why each exercise is in its place, looked for with what is left of the budget. */
  private Optional<WhyThis> why(Asked asked, Composed composed) {
    if (!why) {
      return Optional.empty();
    }
    Duration left = left(asked);
    Budget rest = Budget.of(left.isZero() ? Duration.ofNanos(1) : left);
    Explainer explainer = Explainer.of(asked.catalog);
    return Optional.of(
        Progress.during(terminal, left, () -> explainer.whyThis(asked.brief, composed, rest)));
  }

  private Duration left(Asked asked) {
    Duration left = budget.time().minus(Duration.between(asked.begin, CLOCK.instant()));
    return left.isNegative() ? Duration.ZERO : left;
  }

  /** What clashes where nothing fits, looked for with what is left of the budget. */
  private Optional<Clash> clash(Asked asked, Composition composition) {
    Duration left = left(asked);
    if (!(composition instanceof NothingFits nothing) || left.isZero()) {
      return Optional.empty();
    }
    Explainer explainer = Explainer.of(asked.catalog);
    return Optional.of(
        Progress.during(
            terminal, left, () -> explainer.whyNothingFits(asked.brief, nothing, Budget.of(left))));
  }

  /**
   * What is asked for, since when, and where answers go.
   *
   * @param begin when its budget began
   * @param instance where to write what the brief was reduced to, if anywhere
   */
  private record Asked(
      Brief brief,
      Catalog catalog,
      Instant begin,
      Optional<WholeFile> out,
      Optional<WholeFile> instance) {
    /** The same for another brief. */
    Asked with(Brief other) {
      return new Asked(other, catalog, begin, out, instance);
    }

    void keepInstance(Composition composition) {
      instance.ifPresent(file -> file.write(InstanceFormat.write(composition.instance())));
    }
  }
}
