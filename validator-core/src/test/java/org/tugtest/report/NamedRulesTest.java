package org.tugtest.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tugtest.check.RuleCatalog;
import org.tugtest.rule.RuleInfo;

/** Every rule that the code knows by its name is there; another name would never meet a finding. */
class NamedRulesTest {
  private static final Pattern NAME = Pattern.compile("\"([a-z]+(?:-[a-z]+)+)\"");
  private static final Set<String> RULES =
      RuleCatalog.standard().infos().stream().map(RuleInfo::id).collect(Collectors.toSet());

  /** A class that names rules, and the word of the same form in it that is none. */
  @ParameterizedTest
  @CsvSource({
    "check/Offers,",
    "check/Trial,",
    "report/MissingData,",
    "report/Merges,",
    "report/html/Mark, findings-left",
    "report/sheets/Incomplete,",
    "report/sheets/list/CrossMates, cross-mates",
    "rule/built/ReadingLimit,"
  })
  void aRuleThatIsNamedIsThere(String file, @Nullable String word) throws IOException {
    String text = Files.readString(Path.of("src/main/java/org/tugtest/" + file + ".java"));
    List<String> named =
        NAME.matcher(text)
            .results()
            .map(each -> each.group(1))
            .filter(name -> !name.equals(word))
            .toList();
    assertThat(named).isNotEmpty().isSubsetOf(RULES);
  }
}
