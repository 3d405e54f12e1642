package org.arcwright.cli.page;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.StringTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.cli.page.Block.Part;
import org.arcwright.cli.words.Language;

/**
 * Writes sheets as pages in HTML, each complete in itself: whatever a page needs stands in it, and
 * its policy lets the browser load and run nothing else. Templates escape every text.
 */
public final class Pages {
  /** The templates whose place others may take. */
  public static final List<String> TEMPLATES =
      List.of("page.ftlh", "blocks.ftlh", "sheet.ftlh", "run-sheet.ftlh");

  private static final String SHEET = "sheet.ftlh";

  private final Language language;
  private final Configuration configuration;
  private final List<String> styles = new ArrayList<>();
  private final Foreign foreign;

  /**
   * @param look what a firm puts over our own
   */
  public Pages(Language language, Look look) {
    this(language, look, Foreign.NONE);
  }

  /**
   * @param look what a firm puts over our own
   * @param foreign texts that are in another language
   */
  public Pages(Language language, Look look, Foreign foreign) {
    this.language = language;
    this.foreign = foreign;
    this.configuration = configuration(look);
    styles.add(Resource.text("page.css"));
    if (!look.css().isBlank()) {
      styles.add(harmless(look.css()));
    }
  }

  private static Configuration configuration(Look look) {
    Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
    StringTemplateLoader own = new StringTemplateLoader();
    look.templates().forEach(own::putTemplate);
    configuration.setTemplateLoader(
        new MultiTemplateLoader(
            new TemplateLoader[] {own, new ClassTemplateLoader(Pages.class, "")}));
    configuration.setDefaultEncoding("UTF-8");
    configuration.setLocalizedLookup(false);
    configuration.setLogTemplateExceptions(false);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setNumberFormat("computer");
    return configuration;
  }

  /**
   * A sheet as a page.
   *
   * @throws TemplateFault if a firm's own template is wrong
   */
  public String html(Sheet sheet) {
    boolean folded =
        sheet.blocks().stream().anyMatch(block -> block instanceof Part part && part.folded());
    return html(SHEET, sheet, folded ? Resource.text("folded.js") : "", Map.of());
  }

  /**
   * A sheet as a page by a template of its own.
   *
   * @param template its name
   * @param script what runs in the page; empty if nothing does
   * @param more what the template reads beside {@code sheet}
   * @throws TemplateFault if a firm's own template is wrong
   */
  public String html(String template, Sheet sheet, String script, Map<String, ?> more) {
    Map<String, Object> data = new HashMap<>(more);
    data.put("sheet", sheet);
    data.put("language", language);
    data.put("foreign", foreign);
    data.put("styles", styles);
    data.put("script", script);
    data.put("policy", Policy.of(styles, script));
    try {
      Template found = configuration.getTemplate(template);
      StringWriter page = new StringWriter();
      found.process(data, page);
      return page.toString();
    } catch (ParseException e) {
      throw fault(e);
    } catch (TemplateException e) {
      if (e.getCause() instanceof ParseException imported) {
        throw fault(imported);
      }
      throw new TemplateFault(
          place(e.getTemplateSourceName(), e.getLineNumber(), e.getColumnNumber())
              + first(e.getMessageWithoutStackTop())
              + Optional.ofNullable(e.getBlamedExpressionString()).map(x -> " " + x).orElse(""),
          e);
    } catch (IOException e) {
      throw new TemplateFault(template + ": " + e.getMessage(), e);
    }
  }

  private static TemplateFault fault(ParseException e) {
    return new TemplateFault(
        place(e.getTemplateName(), e.getLineNumber(), e.getColumnNumber())
            + first(e.getEditorMessage()),
        e);
  }

  private static String first(String message) {
    return message.lines().findFirst().orElse("it fails");
  }

  private static String place(String template, Integer line, Integer column) {
    return template + ":" + line + ":" + column + ": ";
  }

  /** No rule may end the element it stands in; in CSS the backslash changes nothing. */
  private static String harmless(String css) {
    return css.replace("\r\n", "\n").replace('\r', '\n').replace("</", "<\\/");
  }
}
