package org.tugtest.goal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.RuleCatalog;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rulebook.FormatBook;
import org.tugtest.rulebook.RuleIndex;
import org.tugtest.rulebook.RulePage;
import org.tugtest.text.Nearest;

/**
 * Prints the page of a rule: what it looks for, why it matters, how to put it right, and what its
 * figures rest on; or the meaning of a property of the harness format. Without a name it lists the
 * rules.
 */
@Mojo(name = "explain", requiresProject = false, threadSafe = true)
public final class ExplainMojo extends TugtestGoal {
  private static final int MOST_NAMED = 8;

  /** Skips this goal alone. */
  @Parameter(property = "tugtest.explain.skip", defaultValue = "false")
  private boolean skipExplain;

  /**
   * The id of a rule, such as <code>cavity-doubled</code>, or a property of the format, such as
   * <code>wires.cutMm</code>; left out: all rules are listed.
   */
  @Parameter(property = "tugtest.rule")
  private @Nullable String rule;

  @Override
  boolean skippedAlone() {
    return skipExplain;
  }

  @Override
  void run(Surroundings around) throws MojoExecutionException {
    RuleCatalog catalog = TeamRules.catalog();
    String text = rule == null || rule.isBlank() ? list(around, catalog) : page(catalog, rule);
    text.lines().forEach(getLog()::info);
  }

  private static String list(Surroundings around, RuleCatalog catalog) {
    return RuleIndex.text(catalog.infos())
        + "\n"
        + around.goals()
        + "explain -Dtugtest.rule=NAME prints the page of one\n";
  }

  private static String page(RuleCatalog catalog, String name) throws MojoExecutionException {
    Optional<Rule> found = catalog.rule(name.strip());
    if (found.isPresent()) {
      return RulePage.text(found.get().info());
    }
    FormatBook book = FormatBook.published();
    Optional<String> field = book.explain(name.strip());
    if (field.isPresent()) {
      return field.get();
    }
    List<String> known = new ArrayList<>(catalog.infos().stream().map(RuleInfo::id).toList());
    known.addAll(book.paths());
    throw new MojoExecutionException(
        "there is no rule and no property of the format called "
            + name.strip()
            + "; "
            + instead(name.strip(), known));
  }

  /** What may have been meant: names that are near, else those that hold it. */
  private static String instead(String name, List<String> known) {
    String part = name.toLowerCase(Locale.ROOT);
    List<String> holding =
        known.stream().filter(word -> word.toLowerCase(Locale.ROOT).contains(part)).toList();
    String near = Nearest.question(name, known);
    if (!near.isEmpty() || holding.isEmpty()) {
      return near.isEmpty() ? "without tugtest.rule this goal lists all of them" : near;
    }
    int more = holding.size() - MOST_NAMED;
    return "it is part of "
        + String.join(", ", holding.stream().limit(MOST_NAMED).toList())
        + (more > 0 ? " and " + more + " more" : "");
  }
}
