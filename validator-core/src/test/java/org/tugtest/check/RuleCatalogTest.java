package org.tugtest.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;

class RuleCatalogTest {
  static Stream<Rule> rules() {
    return RuleCatalog.standard().rules().stream();
  }

  @Test
  void noRuleClassIsMissing() {
    List<String> classes =
        new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("org.tugtest.rule")
                .stream()
                .filter(type -> type.isAssignableTo(Rule.class) && !type.isInterface())
                .map(JavaClass::getName)
                .sorted()
                .toList();
    assertThat(rules().map(rule -> rule.getClass().getName()).sorted().toList())
        .as("the lines of RuleCatalog.standard()")
        .isEqualTo(classes);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theIdIsTheNameOfTheClassAndTheTestBearsItToo(Rule rule) {
    String name = rule.getClass().getSimpleName();
    String kebab = name.replaceAll("(?<!^)([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    assertThat(rule.info().id()).isEqualTo(kebab);
    assertThat(rule.getClass().getPackageName())
        .isEqualTo("org.tugtest.rule." + rule.info().heading().word());
    String path = rule.getClass().getName().replace('.', '/') + "Test.java";
    assertThat(Files.exists(Path.of("src/test/java").resolve(path))).as(path).isTrue();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void everythingIsSaidOfIt(Rule rule) {
    RuleInfo info = rule.info();
    assertThat(
            List.of(
                info.summary(),
                info.subjects(),
                info.looksFor(),
                info.why(),
                info.remedy(),
                info.basis()))
        .as(info.id())
        .noneMatch(String::isBlank);
    assertThat(info.summary()).as(info.id()).doesNotEndWith(".");
  }

  @Test
  void twoRulesOfOneIdAreRefused() {
    Rule rule = RuleCatalog.standard().rules().get(0);
    assertThatThrownBy(() -> RuleCatalog.of(List.of(rule, rule)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(rule.info().id());
  }

  @Test
  void idsAreUnique() {
    List<String> ids = RuleCatalog.standard().infos().stream().map(RuleInfo::id).toList();
    assertThat(new TreeSet<>(ids)).hasSize(ids.size());
  }
}
