package org.arcwright.cli;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.arcwright.format.BriefFormat;

/** Documents are drawn from an answer alone; commands know them, never the other way round. */
@AnalyzeClasses(packages = "org.arcwright.cli", importOptions = DoNotIncludeTests.class)
class CommandLineHouseTest {
  private static final String[] DRAWN = {
    "org.arcwright.cli.document",
    "org.arcwright.cli.handout",
    "org.arcwright.cli.picture",
    "org.arcwright.cli.words"
  };

  @ArchTest
  static final ArchRule DOCUMENTS_KNOW_NO_COMMAND =
      noClasses()
          .that()
          .resideInAnyPackage(DRAWN)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.arcwright.cli", "picocli..");

  /**
   * A brief is quoted in its own words; that form is written here, and never read. Character sets
   * count octets; nothing is read with them.
   */
  @ArchTest
  static final ArchRule DOCUMENTS_READ_NOTHING_BUT_THEIR_ANSWER =
      noClasses()
          .that()
          .resideInAnyPackage(DRAWN)
          .should()
          .dependOnClassesThat(
              resideInAnyPackage("java.io", "java.nio..", "org.arcwright.format..")
                  .and(not(equivalentTo(BriefFormat.class)))
                  .and(not(equivalentTo(Charset.class)))
                  .and(not(equivalentTo(StandardCharsets.class))))
          .orShould()
          .dependOnClassesThat()
          .belongToAnyOf(java.time.Clock.class, java.time.InstantSource.class, System.class);

  /** The rooms of the documents from the ground up; each uses those below it at most. */
  @ArchTest
  static final ArchRule PAGES_KNOW_NOTHING_OF_WHAT_STANDS_ON_THEM =
      noClasses()
          .that()
          .resideInAnyPackage("org.arcwright.cli.page", "org.arcwright.cli.words")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.arcwright.cli",
              "org.arcwright.cli.document",
              "org.arcwright.cli.handout",
              "org.arcwright.cli.picture",
              "org.arcwright.agenda",
              "org.arcwright.brief");

  @ArchTest
  static void someClassesWereRead(JavaClasses classes) {
    assertThat(classes).hasSizeGreaterThan(30);
  }
}
