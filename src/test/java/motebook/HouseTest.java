package motebook;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The rooms of the house and what each may touch. */
@AnalyzeClasses(packages = "motebook", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {

  @ArchTest
  static final ArchRule ARROWS_POINT_DOWN_ONLY =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("main")
          .definedBy("motebook")
          .layer("screen")
          .definedBy("motebook.screen..")
          .layer("command")
          .definedBy("motebook.command..")
          .layer("report")
          .definedBy("motebook.report..")
          .layer("desk")
          .definedBy("motebook.desk..")
          .layer("entry")
          .definedBy("motebook.entry..")
          .layer("journal")
          .definedBy("motebook.journal..")
          .layer("reference")
          .definedBy("motebook.reference..")
          .layer("science")
          .definedBy("motebook.science..")
          .layer("model")
          .definedBy("motebook.model..")
          .whereLayer("main")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("screen")
          .mayOnlyBeAccessedByLayers("main")
          .whereLayer("command")
          .mayOnlyBeAccessedByLayers("main")
          .whereLayer("report")
          .mayOnlyBeAccessedByLayers("screen", "command", "main")
          .whereLayer("desk")
          .mayOnlyBeAccessedByLayers("report", "screen", "command", "main")
          .whereLayer("entry")
          .mayOnlyBeAccessedByLayers("desk", "report", "screen", "command", "main")
          .whereLayer("journal")
          .mayOnlyBeAccessedByLayers("entry", "desk", "report", "screen", "command", "main")
          .whereLayer("reference")
          .mayOnlyBeAccessedByLayers(
              "journal", "entry", "desk", "report", "screen", "command", "main");

  @ArchTest
  static final ArchRule SCIENCE_KNOWS_NUMBERS_ONLY =
      classes()
          .that()
          .resideInAPackage("motebook.science..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage("motebook.science..", "java..", "org.hipparchus..");

  @ArchTest
  static final ArchRule THE_MODEL_HAS_NO_ROOM_BELOW =
      classes()
          .that()
          .resideInAPackage("motebook.model..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage("motebook.model..", "java..");

  @ArchTest
  static final ArchRule LANTERNA_STAYS_IN_THE_ADAPTER =
      noClasses()
          .that()
          .resideOutsideOfPackage("motebook.screen.terminal..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("com.googlecode.lanterna..");

  @ArchTest
  static final ArchRule PDFBOX_STAYS_WITH_THE_SHEET =
      noClasses()
          .that()
          .resideOutsideOfPackage("motebook.report.sheet..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.apache.pdfbox..");

  @ArchTest
  static final ArchRule SQL_STAYS_IN_THE_JOURNAL =
      noClasses()
          .that()
          .resideOutsideOfPackage("motebook.journal..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.sql..", "javax.sql..", "org.sqlite..", "org.apache.commons.dbutils..");

  @ArchTest
  static final ArchRule THE_CALENDAR_LIBRARY_STAYS_IN_ITS_WRITER =
      noClasses()
          .that()
          .doNotHaveFullyQualifiedName("motebook.report.CalendarFile")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("net.fortuna.ical4j..");
}
