package org.tugtest;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.File;
import java.net.Socket;
import java.net.URL;
import java.nio.charset.Charset;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.NullMarked;
import org.tugtest.rule.Rule;

/** The order of the packages of this module, and what none of them may do. */
@AnalyzeClasses(
    packages = "org.tugtest",
    importOptions = {
      ImportOption.DoNotIncludeTests.class,
      ImportOption.DoNotIncludeJars.class,
      ArchitectureTest.OnlyThisModule.class
    })
class ArchitectureTest {
  private static final String BASE = "org.tugtest.";

  /** A package may use those before it alone; packages below one of these belong to it. */
  private static final List<String> ORDER =
      List.of(
          "threads",
          "finding",
          "table",
          "network",
          "solve",
          "route",
          "heat",
          "operate",
          "protect",
          "facts",
          "expect",
          "rule",
          "check",
          "trace",
          "compare",
          "built",
          "bench",
          "rulebook",
          "report");

  /** Leaves out tests, and the module that this one uses, which may stand in a folder too. */
  static final class OnlyThisModule implements ImportOption {
    @Override
    public boolean includes(com.tngtech.archunit.core.importer.Location location) {
      return List.of(
              "harness-model",
              "/test",
              "tugtest/text/",
              "tugtest/model/",
              "tugtest/schema/",
              "tugtest/read/",
              "tugtest/write/")
          .stream()
          .noneMatch(location::contains);
    }
  }

  @ArchTest
  static void everyPackageHasItsPlaceInTheOrder(JavaClasses all) {
    Set<String> unknown = new TreeSet<>();
    for (JavaClass one : all) {
      if (!ORDER.contains(layer(one))) {
        unknown.add(one.getPackageName());
      }
    }
    assertThat(unknown).isEmpty();
  }

  @ArchTest
  static void arrowsPointBackwardsInTheOrder(JavaClasses all) {
    Set<String> wrong = new TreeSet<>();
    for (JavaClass one : all) {
      int at = ORDER.indexOf(layer(one));
      one.getDirectDependenciesFromSelf().stream()
          .filter(dependency -> ORDER.indexOf(layer(dependency.getTargetClass())) > at)
          .forEach(dependency -> wrong.add(dependency.getDescription()));
    }
    assertThat(wrong).isEmpty();
  }

  private static String layer(JavaClass one) {
    String name = one.getPackageName();
    if (!name.startsWith(BASE)) {
      return "";
    }
    String rest = name.substring(BASE.length());
    int dot = rest.indexOf('.');
    return dot < 0 ? rest : rest.substring(0, dot);
  }

  @ArchTest
  static final ArchRule NO_CYCLES = slices().matching("org.tugtest.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule HEADINGS_DO_NOT_KNOW_EACH_OTHER =
      slices().matching("org.tugtest.rule.(*)..").should().notDependOnEachOther();

  @ArchTest
  static final ArchRule RULES_ARE_FINAL_AND_WITHOUT_STATE =
      classes()
          .that()
          .implement(Rule.class)
          .should()
          .haveModifier(com.tngtech.archunit.core.domain.JavaModifier.FINAL)
          .andShould()
          .haveOnlyFinalFields();

  @ArchTest
  static final ArchRule NO_STATE_IS_SHARED = noFields().that().areStatic().should().notBeFinal();

  @ArchTest
  static final ArchRule NOTHING_ASKS_THE_MACHINE =
      noClasses()
          .should()
          .callMethod(System.class, "getProperty", String.class)
          .orShould()
          .callMethod(System.class, "getProperty", String.class, String.class)
          .orShould()
          .callMethod(System.class, "getenv", String.class)
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callMethod(LocalDate.class, "now")
          .orShould()
          .callMethod(LocalDateTime.class, "now")
          .orShould()
          .callMethod(ZonedDateTime.class, "now")
          .orShould()
          .callMethod(Instant.class, "now")
          .orShould()
          .callMethod(Locale.class, "getDefault")
          .orShould()
          .callMethod(Charset.class, "defaultCharset")
          .orShould()
          .dependOnClassesThat()
          .areAssignableTo(Clock.class);

  @ArchTest
  static final ArchRule WORDS_HAVE_A_LOCALE =
      noClasses()
          .should()
          .callMethod(String.class, "toLowerCase")
          .orShould()
          .callMethod(String.class, "toUpperCase")
          .orShould()
          .callMethod(String.class, "format", String.class, Object[].class)
          .orShould()
          .callMethod(String.class, "formatted", Object[].class);

  @ArchTest
  static final ArchRule NOTHING_IS_RANDOM =
      noClasses()
          .should()
          .callConstructor(Random.class)
          .orShould()
          .callMethod(Math.class, "random");

  @ArchTest
  static final ArchRule NO_FILE_AND_NO_CONNECTION_IS_OPENED =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.nio.file..", "java.net.http..", "javax.net..")
          .orShould()
          .dependOnClassesThat()
          .belongToAnyOf(File.class, Socket.class, URL.class);

  @ArchTest
  static final ArchRule NO_PROCESS_IS_STARTED =
      noClasses()
          .should()
          .dependOnClassesThat()
          .belongToAnyOf(ProcessBuilder.class, Runtime.class, Process.class);

  @ArchTest
  static final ArchRule PACKAGES_ARE_NULL_MARKED =
      classes().that().haveSimpleName("package-info").should().beAnnotatedWith(NullMarked.class);

  @ArchTest
  static final ArchRule NAMES_SAY_WHAT_A_THING_IS =
      noClasses()
          .should()
          .haveSimpleNameStartingWith("Abstract")
          .orShould()
          .haveSimpleNameEndingWith("Util")
          .orShould()
          .haveSimpleNameEndingWith("Utils")
          .orShould()
          .haveSimpleNameEndingWith("Helper");
}
