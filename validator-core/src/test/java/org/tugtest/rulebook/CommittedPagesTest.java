package org.tugtest.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tugtest.check.RuleCatalog;
import org.tugtest.rule.RuleInfo;

/** The committed pages are those that the rules make. */
class CommittedPagesTest {
  private static final Path FOLDER = Path.of("docs/rules");
  private static final String WRITE = "tugtest.rulebook.write";
  private static final String INDEX = "README.md";

  private static Map<String, String> made() {
    Map<String, String> pages = new TreeMap<>();
    pages.put(INDEX, RuleIndex.markdown(RuleCatalog.standard().infos()));
    for (RuleInfo info : RuleCatalog.standard().infos()) {
      pages.put(RuleIndex.fileName(info), RulePage.markdown(info));
    }
    return pages;
  }

  @Test
  void everyRuleHasItsPageAndEveryPageItsRule() throws IOException {
    Map<String, String> made = made();
    if (Boolean.getBoolean(WRITE)) {
      Files.createDirectories(FOLDER);
      for (Map.Entry<String, String> page : made.entrySet()) {
        Files.writeString(FOLDER.resolve(page.getKey()), page.getValue());
      }
    }
    Map<String, String> committed = new TreeMap<>();
    try (Stream<Path> files = Files.list(FOLDER)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        committed.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    assertThat(committed)
        .as("the pages in %s; write them with this test and -D%s=true", FOLDER, WRITE)
        .isEqualTo(made);
  }
}
