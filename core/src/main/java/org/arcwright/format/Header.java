package org.arcwright.format;

import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;

/**
 * The first two keys of a JSON document: {@code format} says what it is, {@code version} which
 * readers understand it. A document within another has its own, so that it can be taken out and
 * used by itself.
 *
 * @param schema that describes it
 * @param version a change that older programs cannot read raises it
 */
record Header(Schema schema, int version) {
  static final Header BRIEF = new Header(Schema.BRIEF, 1);
  static final Header AGENDA = new Header(Schema.AGENDA, 1);
  static final Header COMPOSITION = new Header(Schema.COMPOSITION, 1);
  static final Header REPLAN = new Header(Schema.REPLAN, 1);
  static final Header OPTIONS = new Header(Schema.OPTIONS, 1);
  static final Header WHAT_IF = new Header(Schema.WHAT_IF, 1);
  static final Header CLASH = new Header(Schema.CLASH, 1);
  static final Header WHY_NOT = new Header(Schema.WHY_NOT, 1);
  static final Header WHY_THIS = new Header(Schema.WHY_THIS, 1);
  static final Header REVIEW = new Header(Schema.REVIEW, 1);
  static final Header PROBLEMS = new Header(Schema.PROBLEMS, 1);
  static final Header FORECAST = new Header(Schema.FORECAST, 1);
  static final Header RECORD = new Header(Schema.RECORD, 1);
  static final Header STAND_INS = new Header(Schema.STAND_INS, 1);
  static final Header LESSONS = new Header(Schema.LESSONS, 1);
  static final Header LOG = new Header(Schema.LOG, 1);
  static final Header INSTANCE = new Header(Schema.INSTANCE, 1);
  static final Header SOLUTION = new Header(Schema.SOLUTION, 1);
  static final Header VERDICT = new Header(Schema.VERDICT, 1);

  /** What {@code format} says. */
  String name() {
    return "arcwright-" + schema.word();
  }

  /** A document that begins with it. */
  Branch begin() {
    return new Branch().put("format", name()).put("version", version);
  }

  /** Another header, or none, is a fault. */
  void demand(Fields fields, Faults faults) {
    fields.required("format");
    fields.required("version");
    allow(fields, faults);
  }

  /** Another header is a fault; files written by hand may leave it out. */
  void allow(Fields fields, Faults faults) {
    fields
        .optional("format")
        .filter(n -> !n.shown().equals(name()))
        .ifPresent(
            n ->
                faults.add(
                    n, "format", "this is no " + schema.word() + "; " + name() + " is right"));
    fields
        .optional("version")
        .filter(n -> !n.shown().equals(String.valueOf(version)))
        .ifPresent(n -> faults.add(n, "version", version + " is read by this program"));
  }
}
