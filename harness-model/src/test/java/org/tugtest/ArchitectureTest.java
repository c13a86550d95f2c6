package org.tugtest;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;

/** A package may use only the packages before it: text, model, schema, read, write. */
@AnalyzeClasses(packages = "org.tugtest", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule EACH_PACKAGE_USES_ONLY_THOSE_BEFORE_IT =
      layeredArchitecture()
          .consideringOnlyDependenciesInAnyPackage("org.tugtest..")
          .layer("text")
          .definedBy("org.tugtest.text")
          .layer("model")
          .definedBy("org.tugtest.model")
          .layer("schema")
          .definedBy("org.tugtest.schema")
          .layer("read")
          .definedBy("org.tugtest.read")
          .layer("write")
          .definedBy("org.tugtest.write")
          .whereLayer("text")
          .mayNotAccessAnyLayer()
          .whereLayer("model")
          .mayOnlyAccessLayers("text")
          .whereLayer("schema")
          .mayOnlyAccessLayers("text", "model")
          .whereLayer("read")
          .mayOnlyAccessLayers("text", "model", "schema")
          .whereLayer("write")
          .mayOnlyAccessLayers("text", "model", "schema", "read")
          .ensureAllClassesAreContainedInArchitecture();

  @ArchTest
  static final ArchRule NO_PACKAGES_IN_A_CIRCLE =
      slices().matching("org.tugtest.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule ONLY_READING_AND_SCHEMAS_KNOW_THE_SCHEMA_LIBRARY =
      ArchRuleDefinition.noClasses()
          .that()
          .resideOutsideOfPackage("org.tugtest.schema")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("com.networknt..");

  @ArchTest
  static final ArchRule VALUES_KNOW_NO_JSON =
      ArchRuleDefinition.noClasses()
          .that()
          .resideInAnyPackage("org.tugtest.text", "org.tugtest.model")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("tools.jackson..");
}
