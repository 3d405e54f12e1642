package org.arcwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.arcwright.cli.page.Foreign;
import org.arcwright.cli.page.Look;
import org.arcwright.cli.page.Pages;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.page.TemplateFault;
import org.arcwright.cli.words.Language;
import org.arcwright.library.BuiltIn;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** In which language pages are written, and how they look. */
final class PageOptions {
  /** Over this a style sheet or a template is no longer one. */
  private static final long LARGEST = 2_000_000;

  @Option(
      names = "--language",
      paramLabel = "TAG",
      converter = Tag.class,
      description =
          "of pages: en or de, or with a region for dates and numbers, such as en-US; en if not given;"
              + " texts of the catalog stay as they are")
  private Optional<Language> language = Optional.empty();

  @Option(
      names = "--templates",
      paramLabel = "DIR",
      description = "a folder with templates of your own for pages, in place of ours")
  private Optional<Path> templates = Optional.empty();

  @Option(
      names = "--css",
      paramLabel = "FILE",
      description = "rules of your own for the look of pages, over ours")
  private Optional<Path> css = Optional.empty();

  /** The language to write in. */
  Language language() {
    return language.orElse(Language.ENGLISH);
  }

  /** The sheet as a page. */
  String html(Sheet sheet) {
    return writing(pages -> pages.html(sheet));
  }

  /** What is done with pages. */
  interface Work<T> {
    T with(Pages pages);
  }

  /** Writes pages; a fault in a template of one's own is told with its place. */
  <T> T writing(Work<T> work) {
    try {
      return work.with(new Pages(language(), look(), foreign()));
    } catch (TemplateFault e) {
      String folder = templates.map(dir -> dir + "/").orElse("");
      throw new Refusal(folder + e.getMessage(), e);
    }
  }

  /** The built-in catalog is in English, whatever the page is in. */
  private Foreign foreign() {
    return language().isEnglish()
        ? Foreign.NONE
        : new Foreign(Language.ENGLISH.tag(), CatalogTexts.of(BuiltIn.catalog()));
  }

  private Look look() {
    Map<String, String> own = new HashMap<>();
    if (templates.isPresent()) {
      for (String name : Pages.TEMPLATES) {
        Path file = templates.get().resolve(name);
        if (Files.exists(file)) {
          own.put(name, read(file));
        }
      }
      if (own.isEmpty()) {
        throw new Refusal(
            templates.get()
                + ": there is none of "
                + String.join(", ", Pages.TEMPLATES)
                + " in it; a template of your own has the name of the one it replaces");
      }
    }
    return new Look(own, css.map(PageOptions::read).orElse(""));
  }

  private static String read(Path file) {
    try {
      if (Files.size(file) > LARGEST) {
        throw new Refusal(file + ": it is larger than 2 MB; a smaller file is right");
      }
      return Files.readString(file, UTF_8);
    } catch (CharacterCodingException e) {
      throw new Refusal(file + ": it is not in UTF-8; save it so", e);
    } catch (IOException e) {
      throw new Refusal(file + ": it cannot be read; check its name and its permissions", e);
    }
  }

  /** Reads the tag of a language. */
  static final class Tag implements ITypeConverter<Language> {
    @Override
    public Language convert(String tag) {
      return Language.of(tag)
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      "\""
                          + tag
                          + "\" is none that documents can be written in; "
                          + String.join(" or ", Language.ALL)
                          + " is right"));
    }
  }
}
