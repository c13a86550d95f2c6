package org.tugtest;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.File;
import java.io.FileReader;
import java.io.FileWriter;
import java.nio.charset.Charset;
import org.apache.maven.plugins.annotations.Mojo;
import org.jspecify.annotations.NullMarked;

/** The arrows between the packages of this module, and what none of them may do. */
@AnalyzeClasses(
    packages = {
      "org.tugtest.files",
      "org.tugtest.git",
      "org.tugtest.base",
      "org.tugtest.fleet",
      "org.tugtest.hook",
      "org.tugtest.goal"
    },
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule PACKAGES_USE_THOSE_BEFORE_THEM =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("files")
          .definedBy("org.tugtest.files")
          .layer("git")
          .definedBy("org.tugtest.git")
          .layer("base")
          .definedBy("org.tugtest.base")
          .layer("fleet")
          .definedBy("org.tugtest.fleet")
          .layer("hook")
          .definedBy("org.tugtest.hook")
          .layer("goal")
          .definedBy("org.tugtest.goal")
          .whereLayer("goal")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("hook")
          .mayOnlyBeAccessedByLayers("goal")
          .whereLayer("fleet")
          .mayOnlyBeAccessedByLayers("hook", "goal")
          .whereLayer("base")
          .mayOnlyBeAccessedByLayers("fleet", "hook", "goal")
          .whereLayer("git")
          .mayOnlyBeAccessedByLayers("base", "fleet", "hook", "goal");

  @ArchTest
  static final ArchRule ONLY_GOALS_KNOW_MAVEN =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.tugtest.goal")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.apache.maven..");

  @ArchTest
  static final ArchRule ONLY_GIT_KNOWS_JGIT =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.tugtest.git")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.eclipse.jgit..");

  @ArchTest
  static final ArchRule NO_CYCLES =
      slices().matching("org.tugtest.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule GOALS_ARE_NAMED_ALIKE =
      classes()
          .that()
          .areAnnotatedWith(Mojo.class)
          .should()
          .haveSimpleNameEndingWith("Mojo")
          .andShould()
          .resideInAPackage("org.tugtest.goal");

  @ArchTest
  static final ArchRule NO_STATE_IS_SHARED = noFields().that().areStatic().should().notBeFinal();

  @ArchTest
  static final ArchRule PROPERTIES_COME_FROM_MAVEN =
      noClasses()
          .that()
          .doNotHaveFullyQualifiedName("org.tugtest.hook.Guard")
          .should()
          .callMethod(System.class, "getProperty", String.class)
          .orShould()
          .callMethod(System.class, "getProperty", String.class, String.class)
          .orShould()
          .callMethod(System.class, "getProperties")
          .orShould()
          .callMethod(System.class, "getenv")
          .orShould()
          .callMethod(System.class, "getenv", String.class);

  @ArchTest
  static final ArchRule TEXT_HAS_AN_ENCODING =
      noClasses()
          .should()
          .callMethod(Charset.class, "defaultCharset")
          .orShould()
          .callConstructor(String.class, byte[].class)
          .orShould()
          .callMethod(String.class, "getBytes")
          .orShould()
          .dependOnClassesThat()
          .belongToAnyOf(FileReader.class, FileWriter.class);

  @ArchTest
  static final ArchRule WORDS_HAVE_A_LOCALE =
      noClasses()
          .should()
          .callMethod(String.class, "toLowerCase")
          .orShould()
          .callMethod(String.class, "toUpperCase")
          .orShould()
          .callMethod(String.class, "format", String.class, Object[].class);

  @ArchTest
  static final ArchRule FILES_ARE_NEVER_MEANT_FROM_THE_PRESENT_FOLDER =
      noClasses().should().callConstructor(File.class, String.class);

  @ArchTest
  static final ArchRule NOTHING_OPENS_A_CONNECTION =
      noClasses()
          .should()
          .dependOnClassesThat(
              JavaClass.Predicates.resideInAnyPackage(
                      "java.net..", "java.net.http..", "javax.net..")
                  .and(
                      JavaClass.Predicates.simpleName("URI")
                          .or(JavaClass.Predicates.simpleName("URLClassLoader"))
                          .negate()));

  @ArchTest
  static final ArchRule ONLY_THE_INSTALLER_STARTS_A_PROCESS =
      noClasses()
          .that()
          .doNotHaveFullyQualifiedName("org.tugtest.hook.Program")
          .should()
          .dependOnClassesThat()
          .belongToAnyOf(ProcessBuilder.class, Runtime.class, Process.class);

  @ArchTest
  static final ArchRule PACKAGES_ARE_NULL_MARKED =
      classes().that().haveSimpleName("package-info").should().beAnnotatedWith(NullMarked.class);
}
