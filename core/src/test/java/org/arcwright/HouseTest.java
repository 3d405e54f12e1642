package org.arcwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.arcwright.agenda.Figures;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** The plan of the house, as a test: which room may know which. */
class HouseTest {
  /** Each room of ours, and the rooms it may know beside itself. */
  private static final Map<String, Set<String>> MAY_KNOW =
      Map.ofEntries(
          room("catalog"),
          room("brief", "catalog"),
          room("agenda", "catalog", "brief"),
          room("vote", "catalog"),
          room("compose.instance", "catalog"),
          room("compose.search", "catalog", "compose.instance"),
          room("compose.check", "catalog", "agenda", "compose.instance"),
          room("compose.reduce", "catalog", "brief", "agenda", "compose.instance", "compose.check"),
          room(
              "compose",
              "catalog",
              "brief",
              "agenda",
              "compose.instance",
              "compose.search",
              "compose.check",
              "compose.reduce"),
          room(
              "compose.explain",
              "catalog",
              "brief",
              "agenda",
              "compose",
              "compose.instance",
              "compose.search",
              "compose.check",
              "compose.reduce"),
          room("forecast", "catalog", "brief", "agenda"),
          room(
              "live",
              "catalog",
              "brief",
              "agenda",
              "compose.instance",
              "compose.search",
              "compose.check",
              "compose.reduce",
              "compose",
              "forecast"),
          room("learn", "catalog", "forecast", "live"),
          room(
              "standin",
              "catalog",
              "brief",
              "agenda",
              "compose",
              "compose.instance",
              "compose.check",
              "compose.reduce"),
          room("record", "catalog", "agenda", "vote", "live"),
          room("format.tree", "catalog"),
          room(
              "format",
              "catalog",
              "brief",
              "agenda",
              "compose",
              "compose.explain",
              "compose.instance",
              "compose.search",
              "forecast",
              "live",
              "compose.check",
              "format.tree",
              "gaps",
              "standin",
              "learn",
              "record",
              "vote"),
          room("gaps", "catalog", "brief", "compose"),
          room("shelf", "catalog", "format"));

  private static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.arcwright");

  @Test
  void there_is_a_house_to_look_at() {
    assertThat(HOUSE.size()).isGreaterThan(120);
    assertThat(rooms()).contains("catalog", "compose.search").isSubsetOf(MAY_KNOW.keySet());
  }

  @Test
  void arrows_run_one_way() {
    for (Map.Entry<String, Set<String>> room : MAY_KNOW.entrySet()) {
      String[] allowed =
          Stream.concat(Stream.of(room.getKey()), room.getValue().stream())
              .map(HouseTest::name)
              .toArray(String[]::new);
      classes()
          .that()
          .resideInAPackage(name(room.getKey()))
          .should()
          .onlyDependOnClassesThat(
              DescribedPredicate.or(
                  JavaClass.Predicates.resideOutsideOfPackage("org.arcwright.."),
                  JavaClass.Predicates.resideInAnyPackage(allowed)))
          .allowEmptyShould(true)
          .check(HOUSE);
    }
  }

  @Test
  void no_room_leads_back_to_itself() {
    slices().matching("org.arcwright.(**)").should().beFreeOfCycles().check(HOUSE);
  }

  @Test
  void instance_search_and_checker_know_of_the_catalog_only_how_a_value_is_refused() {
    knowsOnly("compose.instance", "catalog", InvalidValueException.class);
    knowsOnly("compose.search", "catalog", InvalidValueException.class);
    knowsOnly("compose.check", "catalog", InvalidValueException.class);
  }

  @Test
  void the_checker_knows_of_the_agenda_only_the_figures() {
    knowsOnly("compose.check", "agenda", Figures.class, Figures.Cost.class);
  }

  @Test
  void the_votes_know_of_the_catalog_only_how_a_value_is_checked() {
    knowsOnly("vote", "catalog", Checks.class, InvalidValueException.class);
  }

  @Test
  void the_search_has_no_clock_no_chance_and_reads_no_files() {
    noClasses()
        .that()
        .resideInAPackage(name("compose.search"))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.time..", "java.io..", "java.nio.file..", "java.net..")
        .orShould()
        .dependOnClassesThat()
        .haveNameMatching("java\\.util\\.(Random.*|SplittableRandom|random\\..*|concurrent\\..*)")
        .orShould()
        .callMethod(Math.class, "random")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .check(HOUSE);
  }

  @Test
  void nobody_in_the_core_prints_or_ends_the_program() {
    noClasses()
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethod(System.class, "exit", int.class)
        .orShould()
        .callMethod(Throwable.class, "printStackTrace")
        .check(HOUSE);
  }

  @Test
  void nobody_in_the_core_logs() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "java.util.logging..",
            "org.slf4j..",
            "org.apache.logging..",
            "org.apache.log4j..",
            "org.apache.commons.logging..")
        .orShould()
        .dependOnClassesThat()
        .areAssignableTo(System.Logger.class)
        .check(HOUSE);
  }

  @Test
  void what_others_can_call_speaks_of_java_and_of_the_house_alone() {
    Set<String> foreign = new TreeSet<>();
    int looked = 0;
    for (JavaClass type : HOUSE) {
      if (type.getModifiers().contains(JavaModifier.PUBLIC)) {
        for (JavaClass seen : seenFromOutside(type)) {
          looked++;
          JavaClass bare = seen.getBaseComponentType();
          if (!bare.isPrimitive()
              && !bare.getPackageName().matches("(java|org\\.arcwright)\\..*")) {
            foreign.add(type.getName() + " shows " + bare.getName());
          }
        }
      }
    }

    assertThat(looked).isGreaterThan(1_000);
    assertThat(foreign).isEmpty();
  }

  /** All types in what a public class inherits, and in its members that others can reach. */
  private static Set<JavaClass> seenFromOutside(JavaClass type) {
    Set<JavaClass> seen = new HashSet<>(type.getRawInterfaces());
    type.getRawSuperclass().ifPresent(seen::add);
    for (JavaField field : type.getFields()) {
      if (isReachable(field)) {
        seen.addAll(field.getType().getAllInvolvedRawTypes());
      }
    }
    for (JavaCodeUnit unit : type.getCodeUnits()) {
      if (isReachable(unit)) {
        seen.addAll(unit.getReturnType().getAllInvolvedRawTypes());
        seen.addAll(unit.getExceptionTypes());
        unit.getParameterTypes()
            .forEach(parameter -> seen.addAll(parameter.getAllInvolvedRawTypes()));
      }
    }
    return seen;
  }

  private static boolean isReachable(JavaMember member) {
    return member.getModifiers().contains(JavaModifier.PUBLIC)
        || member.getModifiers().contains(JavaModifier.PROTECTED);
  }

  @Test
  void only_the_file_formats_know_how_files_are_parsed() {
    noClasses()
        .that()
        .resideOutsideOfPackage(name("format.."))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("tools.jackson..", "com.fasterxml..")
        .check(HOUSE);
  }

  @Test
  void every_package_is_null_marked() {
    List<JavaPackage> packages =
        HOUSE.getPackage("org.arcwright").getSubpackagesInTree().stream()
            .filter(room -> !room.getClasses().isEmpty())
            .toList();

    assertThat(packages)
        .isNotEmpty()
        .allSatisfy(room -> assertThat(room.isAnnotatedWith(NullMarked.class)).isTrue());
  }

  private static void knowsOnly(String room, String other, Class<?>... known) {
    noClasses()
        .that()
        .resideInAPackage(name(room))
        .should()
        .dependOnClassesThat(
            JavaClass.Predicates.resideInAPackage(name(other))
                .and(DescribedPredicate.not(JavaClass.Predicates.belongToAnyOf(known))))
        .check(HOUSE);
  }

  private static Map.Entry<String, Set<String>> room(String room, String... mayKnow) {
    return Map.entry(room, Set.of(mayKnow));
  }

  private static Set<String> rooms() {
    Set<String> rooms = new TreeSet<>();
    HOUSE.forEach(c -> rooms.add(c.getPackageName().replaceFirst("org\\.arcwright\\.?", "")));
    return rooms;
  }

  private static String name(String room) {
    return "org.arcwright." + room;
  }
}
