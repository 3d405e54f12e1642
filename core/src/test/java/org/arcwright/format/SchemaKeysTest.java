package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.arcwright.brief.EnergyCurve;
import org.arcwright.brief.Group.Acquaintance;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Per;
import org.arcwright.catalog.Speaker;
import org.arcwright.catalog.Word;
import org.arcwright.compose.Parameter;
import org.arcwright.forecast.Basis;
import org.arcwright.format.tree.Keys;
import org.arcwright.live.Way;
import org.arcwright.record.Method;
import org.arcwright.record.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/** Readers and schemas know the same keys and words. */
class SchemaKeysTest {
  /** Each list of keys that a reader holds, and the place in a schema that describes them. */
  private static final Map<String, String> DESCRIBED =
      Map.ofEntries(
          Map.entry("ExerciseReader.KEYS", "exercise"),
          Map.entry("ExerciseReader.STEP", "exercise/$defs/step"),
          Map.entry("ExerciseReader.SIZE", "exercise/$defs/sizes"),
          Map.entry("ExerciseReader.MODES", "exercise/properties/modes"),
          Map.entry("ExerciseReader.MODE", "exercise/$defs/mode"),
          Map.entry("ExerciseReader.SOURCE", "exercise/properties/source"),
          Map.entry("GoalForm.KEYS", "goal"),
          Map.entry("GoalForm.PHASE", "goal/$defs/phase"),
          Map.entry("BriefReader.KEYS", "brief"),
          Map.entry("BriefReader.PEOPLE", "brief/properties/people/anyOf/1"),
          Map.entry("BriefTimes.RHYTHM", "brief/properties/rhythm"),
          Map.entry("BriefTimes.MEAL", "brief/$defs/meal"),
          Map.entry("WishesReader.WISHES", "brief/properties/wishes"),
          Map.entry("WishesReader.PIN", "brief/properties/wishes/properties/pin/items"),
          Map.entry("WishesReader.OWN_ITEM", "brief/properties/own-items/items"),
          Map.entry("AgendaReader.KEYS", "agenda"),
          Map.entry("AgendaReader.PHASE", "agenda/properties/phases/items"),
          Map.entry("AgendaReader.ACTIVITY", "agenda/$defs/activity"),
          Map.entry("AgendaReader.PAUSE", "agenda/$defs/pause"),
          Map.entry("FiguresForm.KEYS", "agenda/properties/figures"),
          Map.entry("FiguresForm.KINDS", "agenda/properties/figures/properties/minutesByKind"),
          Map.entry("FiguresForm.COST", "agenda/properties/figures/properties/cost"),
          Map.entry("ProofForm.KEYS", "agenda/properties/proof"),
          Map.entry("ToolVerdictForm.KEYS", "agenda/properties/withstands"),
          Map.entry("CompositionReader.KEYS", "composition"),
          Map.entry("CompositionReader.PRICE", "composition/properties/prices/items"),
          Map.entry("CompositionReader.LEFT_OUT", "composition/properties/leftOut/items"),
          Map.entry("ReplanFormat.KEYS", "replan"),
          Map.entry("ReplanFormat.UNCHANGED", "replan/properties/unchanged"),
          Map.entry("ReplanFormat.WAY", "replan/$defs/way"),
          Map.entry("ReplanFormat.FOLLOW_UP", "replan/properties/followUp"),
          Map.entry("ChangeForm.KEYS", "replan/$defs/change"),
          Map.entry("OptionsReader.KEYS", "options"),
          Map.entry("OptionsReader.RULE", "options/properties/rule"),
          Map.entry("OptionsReader.OPTION", "options/properties/options/items"),
          Map.entry("OptionsReader.PROFILE", "options/properties/options/items/properties/profile"),
          Map.entry(
              "OptionsReader.FORMATS",
              "options/properties/options/items/properties/profile/properties/formats"),
          Map.entry("WhatIfFormat.KEYS", "what-if"),
          Map.entry("WhatIfFormat.ROW", "what-if/properties/rows/items"),
          Map.entry("ClashFormat.KEYS", "clash"),
          Map.entry("ClashFormat.CONFLICT", "clash/properties/conflicts/items"),
          Map.entry(
              "ClashFormat.ASKED", "clash/properties/conflicts/items/properties/wishes/items"),
          Map.entry("ClashFormat.WAY_OUT", "clash/properties/waysOut/items"),
          Map.entry(
              "ClashFormat.LOOSENING",
              "clash/properties/waysOut/items/properties/loosenings/items"),
          Map.entry("WishForm.KEYS", "clash/$defs/wish"),
          Map.entry("WhyNotFormat.KEYS", "why-not"),
          Map.entry("WhyThisFormat.KEYS", "why-this"),
          Map.entry("WhyThisFormat.REASON", "why-this/properties/reasons/items"),
          Map.entry(
              "WhyThisFormat.TAKEN",
              "why-this/properties/reasons/items/properties/takesOver/items"),
          Map.entry(
              "WhyThisFormat.HANDED", "why-this/properties/reasons/items/properties/handsOn/items"),
          Map.entry("WhyThisFormat.PLACE", "why-this/properties/reasons/items/properties/place"),
          Map.entry("InsteadForm.KEYS", "why-this/$defs/instead"),
          Map.entry("ReviewFormat.KEYS", "review"),
          Map.entry("ReviewFormat.REMARK", "review/properties/remarks/items"),
          Map.entry("SolutionFormat.KEYS", "solution"),
          Map.entry("SolutionFormat.ACTIVITY", "solution/$defs/activity"),
          Map.entry("SolutionFormat.PAUSE", "solution/$defs/pause"),
          Map.entry("ForecastFormat.KEYS", "forecast"),
          Map.entry("ForecastFormat.WORK", "forecast/$defs/work"),
          Map.entry("ForecastFormat.KEPT", "forecast/$defs/work/properties/kept"),
          Map.entry("ForecastFormat.REST", "forecast/$defs/rest"),
          Map.entry("StandInsFormat.KEYS", "stand-ins"),
          Map.entry("StandInsFormat.LOSS", "stand-ins/properties/tools/items"),
          Map.entry("StandInsFormat.SWAP", "stand-ins/$defs/swap"),
          Map.entry("StandInsFormat.STAND_IN", "stand-ins/$defs/standIn"),
          Map.entry("StandInsFormat.TURNOUT", "stand-ins/properties/fewer/items"),
          Map.entry("LessonsFormat.KEYS", "lessons"),
          Map.entry("LessonsFormat.SCORE", "lessons/properties/score"),
          Map.entry("LessonsFormat.LESSON", "lessons/properties/lessons/items"),
          Map.entry("LogReader.WORKSHOP", "log/$defs/workshop"),
          Map.entry("LogEntryForm.STARTED", "log/$defs/started"),
          Map.entry("LogEntryForm.ENDED", "log/$defs/ended"),
          Map.entry("LogEntryForm.NOTE", "log/$defs/note"),
          Map.entry("LogEntryForm.DECISION", "log/$defs/decision"),
          Map.entry("LogEntryForm.AGREED", "log/$defs/agreed"),
          Map.entry("LogEntryForm.ENERGY", "log/$defs/energy"),
          Map.entry("LogEntryForm.UNDO", "log/$defs/undo"),
          Map.entry("RecordReader.KEYS", "record"),
          Map.entry("RecordReader.HAPPENED", "record/$defs/happening"),
          Map.entry("RecordReader.DECISION", "record/$defs/decision"),
          Map.entry("RecordReader.POINT", "record/$defs/point/anyOf/1"),
          Map.entry("RecordReader.TAKEAWAY", "record/$defs/takeaway/anyOf/1"),
          Map.entry("RecordReader.ACTION", "record/$defs/action"),
          Map.entry("RecordReader.NOTE", "record/$defs/note"),
          Map.entry("RecordReader.FOLLOW_UPS", "record/properties/follow-ups"),
          Map.entry("VoteReader.MULTIVOTING", "record/$defs/multivoting"),
          Map.entry("VoteReader.RANKED_POINTS", "record/$defs/ranked-points"),
          Map.entry("VoteReader.BORDA", "record/$defs/borda"),
          Map.entry("VoteReader.CONDORCET", "record/$defs/condorcet"),
          Map.entry("VoteReader.APPROVAL", "record/$defs/approval"),
          Map.entry("VoteReader.MAJORITY", "record/$defs/majority"),
          Map.entry("VoteReader.WEIGHTED_MATRIX", "record/$defs/weighted-matrix"),
          Map.entry("VoteReader.DATUM_MATRIX", "record/$defs/datum-matrix"),
          Map.entry("VoteReader.SHOW_OF_HANDS", "record/$defs/show-of-hands"),
          Map.entry("VoteReader.FIST_TO_FIVE", "record/$defs/fist-to-five"),
          Map.entry("VoteReader.CONSENT", "record/$defs/consent"),
          Map.entry("ProblemsFormat.KEYS", "problems"),
          Map.entry("ProblemsFormat.PROBLEM", "problems/$defs/problem"),
          Map.entry("VerdictFormat.KEYS", "verdict"),
          Map.entry("FindingForm.KEYS", "verdict/properties/findings/items"),
          Map.entry("InstanceReader.KEYS", "instance"),
          Map.entry("InstanceReader.STRETCH", "instance/properties/stretch"),
          Map.entry("InstanceReader.MEAL", "instance/properties/meals/items"),
          Map.entry("InstanceReader.PHASE", "instance/properties/phases/items"),
          Map.entry("InstanceReader.CANDIDATE", "instance/properties/candidates/items"),
          Map.entry("InstanceReader.PIN", "instance/properties/pins/items"),
          Map.entry("InstanceReader.RULES", "instance/properties/rules"),
          Map.entry("InstanceReader.APART", "instance/properties/rules/properties/apart/items"),
          Map.entry("InstanceReader.AT_MOST", "instance/properties/rules/properties/atMost/items"),
          Map.entry("InstanceReader.WEIGHTS", "instance/properties/weights"));

  /** Files that hold a whole catalog or its words have no schema. */
  private static final List<String> WITHOUT = List.of("CatalogForm", "WordsForm");

  @Test
  void each_key_of_a_reader_stands_in_a_schema_and_the_other_way_round() {
    Map<String, Keys> readers = keysOfReaders();

    assertThat(readers.keySet()).containsExactlyInAnyOrderElementsOf(DESCRIBED.keySet());
    readers.forEach(
        (name, keys) ->
            assertThat(at(DESCRIBED.get(name)).path("properties").propertyNames())
                .as(name)
                .containsExactlyInAnyOrderElementsOf(keys.names()));
  }

  @Test
  void each_place_of_a_schema_that_lists_keys_belongs_to_a_reader() {
    assertThat(placesWithKeys()).isEqualTo(Set.copyOf(DESCRIBED.values()));
  }

  @Test
  void each_place_that_lists_keys_refuses_others() {
    for (String place : placesWithKeys()) {
      assertThat(at(place).path("additionalProperties").toString()).as(place).isEqualTo("false");
    }
  }

  @Test
  void each_key_is_explained() {
    for (String place : placesWithKeys()) {
      at(place)
          .path("properties")
          .forEachEntry(
              (key, schema) ->
                  assertThat(schema.has("title") || schema.has("description"))
                      .as(place + " " + key)
                      .isTrue());
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("words")
  void a_schema_lists_the_words_of_the_model(String place, Class<? extends Word> type) {
    assertThat(at(place).path("enum").valueStream().map(JsonNode::stringValue))
        .containsExactlyElementsOf(
            Stream.of(type.getEnumConstants()).map(Word::word).collect(Collectors.toList()));
  }

  @Test
  void the_schema_of_records_knows_each_method_of_voting() {
    assertThat(
            at("record/$defs/vote")
                .path("oneOf")
                .valueStream()
                .map(way -> way.path("$ref").stringValue().replace("#/$defs/", "")))
        .containsExactlyElementsOf(Stream.of(Method.values()).map(Word::word).toList());
  }

  @Test
  void the_schema_of_verdicts_lists_each_kind_of_finding() {
    assertThat(
            at("verdict/properties/findings/items/properties/kind")
                .path("enum")
                .valueStream()
                .map(JsonNode::stringValue))
        .containsExactlyElementsOf(FindingForm.kinds());
  }

  private static Stream<Arguments> words() {
    return Stream.of(
        Arguments.of("exercise/properties/kind", Kind.class),
        Arguments.of("exercise/$defs/step/properties/who", Speaker.class),
        Arguments.of("exercise/$defs/step/properties/format", Format.class),
        Arguments.of("exercise/$defs/step/properties/per", Per.class),
        Arguments.of("exercise/properties/source/properties/mark", ExerciseReader.Mark.class),
        Arguments.of("goal/$defs/phase/properties/kinds/items", Kind.class),
        Arguments.of("brief/properties/mode", Mode.class),
        Arguments.of("brief/properties/people/anyOf/1/properties/acquainted", Acquaintance.class),
        Arguments.of("brief/properties/curve/anyOf/0", EnergyCurve.Shape.class),
        Arguments.of("brief/properties/own-items/items/properties/format", Format.class),
        Arguments.of("agenda/properties/mode", Mode.class),
        Arguments.of("agenda/$defs/activity/properties/kind", Kind.class),
        Arguments.of("agenda/$defs/activity/properties/format", Format.class),
        Arguments.of("agenda/$defs/pause/properties/break", AgendaReader.BreakKind.class),
        Arguments.of("composition/properties/answer", CompositionReader.Kind.class),
        Arguments.of("replan/$defs/way/properties/kind", Way.Kind.class),
        Arguments.of("replan/$defs/change/properties/change", ChangeForm.Kind.class),
        Arguments.of("options/properties/end", OptionsReader.EndWord.class),
        Arguments.of("what-if/properties/vary", Parameter.class),
        Arguments.of("what-if/properties/rows/items/properties/answer", WhatIfFormat.Kind.class),
        Arguments.of("clash/$defs/wish/properties/wish", WishForm.Kind.class),
        Arguments.of("why-not/properties/answer", WhyNotFormat.Kind.class),
        Arguments.of("why-this/$defs/instead/properties/kind", InsteadForm.Kind.class),
        Arguments.of("solution/properties/status", SolutionFormat.StatusWord.class),
        Arguments.of("forecast/$defs/work/properties/basis", Basis.class),
        Arguments.of("record/properties/mode", Mode.class),
        Arguments.of("record/$defs/verdict", Verdict.class),
        Arguments.of("record/$defs/base", VoteReader.Base.class),
        Arguments.of("log/$defs/workshop/properties/mode", Mode.class));
  }

  private static JsonNode at(String place) {
    int slash = place.indexOf('/');
    String word = slash < 0 ? place : place.substring(0, slash);
    JsonNode root = SchemaFile.tree(Word.find(Schema.class, word).orElseThrow());
    return slash < 0 ? root : root.at(place.substring(slash));
  }

  private static Set<String> placesWithKeys() {
    Set<String> places = new TreeSet<>();
    for (Schema schema : Schema.values()) {
      collect(schema.word(), SchemaFile.tree(schema), places);
    }
    return places;
  }

  /** Places that demand an object; conditions name keys, too, but demand none. */
  private static void collect(String place, JsonNode node, Set<String> places) {
    if (node.path("type").stringValue("").equals("object") && node.has("properties")) {
      places.add(place);
    }
    if (node.isObject()) {
      node.forEachEntry((key, child) -> collect(place + "/" + key, child, places));
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      collect(place + "/" + i, node.get(i), places);
    }
  }

  private static Map<String, Keys> keysOfReaders() {
    Map<String, Keys> found = new TreeMap<>();
    List<JavaClass> readers = new ArrayList<>();
    new ClassFileImporter()
        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
        .importPackages("org.arcwright.format")
        .forEach(readers::add);
    for (JavaClass reader : readers) {
      for (JavaField field : reader.getFields()) {
        if (field.getRawType().isEquivalentTo(Keys.class)
            && field.getModifiers().toString().contains("STATIC")
            && !WITHOUT.contains(reader.getSimpleName())) {
          found.put(reader.getSimpleName() + "." + field.getName(), value(field.reflect()));
        }
      }
    }
    return found;
  }

  private static Keys value(Field field) {
    try {
      field.setAccessible(true);
      return (Keys) field.get(null);
    } catch (IllegalAccessException e) {
      throw new AssertionError(e);
    }
  }
}
