package org.arcwright.format;

import java.nio.file.Path;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.compose.Proof;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.standin.ToolVerdict;

/**
 * Agendas in JSON, at most 1 MB, for other programs and for those who write one by hand:
 *
 * <pre>{@code
 * {
 *   "format": "arcwright-agenda", "version": 1,
 *   "title": "Winter planning", "goal": "choose-a-direction", "mode": "remote", "people": 12,
 *   "cap": 90, "start": "2026-12-03 09:30", "zone": "Europe/Vienna",
 *   "phases": [{"name": "open", "title": "Arrive"}],
 *   "items": [
 *     {"exercise": "weather-report", "title": "Weather report", "kind": "icebreaker", "phase": "open",
 *      "start": 0, "length": 10, "format": "plenary", "energy": 2.5},
 *     {"break": "ordinary", "start": 10, "length": 10}],
 *   "buffer": 15,
 *   "curve": [3, 3.2],
 *   "figures": {...},
 *   "brief": {"format": "arcwright-brief", "version": 1, ...},
 *   "proof": {"best": true, "cost": 695, "bound": 695, "labels": 100626, "milliseconds": 420},
 *   "withstands": {"reached": true, "tools": ["board"], "stops": 4, "bare": [], "leftOut": 2, "dearer": 160,
 *                  "reasons": [], "complete": true}
 * }
 * }</pre>
 *
 * <p>Times are minutes from the start, as numbers, or durations such as {@code "1h30m"} or {@code
 * "PT90M"}; energy runs from 1 (calm) to 5 (lively) with one decimal. A break is {@code "ordinary"}
 * or a {@code "meal"}.
 *
 * <p>Whoever writes by hand may leave out much: an item's {@code start} is where the one before
 * ends; its {@code kind} is none, as for a sponsor's own item; its {@code format} is plenary and
 * its {@code energy} 2. The {@code phases} are those that the items name; the {@code buffer} is
 * none; the {@code cap} is the last end with the buffer; the {@code curve} is empty. The {@code
 * figures} are counted, without a cost. The {@code brief} is what a composed agenda answers, and
 * {@code withstands} whether it goes on when a tool fails; only readers that are given a catalog
 * look at them.
 */
public final class AgendaFormat {
  private AgendaFormat() {}

  /**
   * Reads a file.
   *
   * @throws FormatException with all that is wrong
   */
  public static Agenda read(Path file) {
    return Document.json(file, Document.BY_HAND).read(AgendaReader::read);
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static Agenda read(String name, String text) {
    return Document.json(name, text).read(AgendaReader::read);
  }

  /**
   * Reads a file with all it carries; what its brief names must be the catalog's.
   *
   * @throws FormatException with all that is wrong
   */
  public static AgendaFile read(Path file, Catalog catalog) {
    return readFile(Document.json(file, Document.BY_HAND), catalog);
  }

  /** Reads a text with all it carries, as {@link #read(Path, Catalog)} does. */
  public static AgendaFile read(String name, String text, Catalog catalog) {
    return readFile(Document.json(name, text), catalog);
  }

  private static AgendaFile readFile(Document document, Catalog catalog) {
    return document.read((node, faults) -> AgendaReader.readFile(node, catalog, faults));
  }

  /** The agenda in JSON, with all that is in it. */
  public static String write(Agenda agenda) {
    return JsonWriter.write(AgendaWriter.tree(agenda).end());
  }

  /** The agenda in JSON, the brief it answers under {@code brief}. */
  public static String write(Agenda agenda, Brief brief) {
    return JsonWriter.write(
        AgendaWriter.tree(agenda).put("brief", BriefWriter.document(brief)).end());
  }

  /**
   * The agenda in JSON, the brief it was composed for under {@code brief}, and how sure it is under
   * {@code proof}, which readers pass over.
   */
  public static String write(Agenda agenda, Brief brief, Proof proof) {
    return JsonWriter.write(tree(agenda, brief, proof).end());
  }

  /** The same, and under {@code withstands} whether it goes on when a tool fails. */
  public static String write(Agenda agenda, Brief brief, Proof proof, ToolVerdict verdict) {
    return JsonWriter.write(
        tree(agenda, brief, proof).put("withstands", ToolVerdictForm.tree(verdict)).end());
  }

  private static Branch tree(Agenda agenda, Brief brief, Proof proof) {
    return AgendaWriter.tree(agenda)
        .put("brief", BriefWriter.document(brief))
        .put("proof", ProofForm.tree(proof));
  }
}
