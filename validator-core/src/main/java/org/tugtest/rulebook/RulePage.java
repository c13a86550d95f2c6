package org.tugtest.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.text.Quoted;

/** The page of one rule: as Markdown for the documentation and reports, as text for a terminal. */
public final class RulePage {
  private static final String INDENT = "  ";
  private static final String LINKS = "Cause and consequence";

  private final RuleInfo rule;

  private RulePage(RuleInfo rule) {
    this.rule = rule;
  }

  /** The page as Markdown, with a title. */
  public static String markdown(RuleInfo rule) {
    return "# " + rule.id() + "\n\n" + new RulePage(rule).markdownBody();
  }

  /** The page as plain text, for a terminal. */
  public static String text(RuleInfo rule) {
    return new RulePage(rule).textPage();
  }

  /** What it looks for, why, the remedy and the basis as Markdown, without examples. */
  public static String markdownReasons(RuleInfo rule) {
    return new RulePage(rule)
        .sections().stream()
            .map(section -> "**" + section.title() + "**\n\n" + plain(section.body()) + "\n")
            .collect(Collectors.joining("\n"));
  }

  /** What it looks for, why, the remedy and the basis as plain text, without examples. */
  public static String textReasons(RuleInfo rule) {
    return new RulePage(rule)
        .sections().stream()
            .map(section -> section.title() + "\n" + section.body() + "\n")
            .collect(Collectors.joining("\n"));
  }

  /** The summary as a sentence. */
  public static String summary(RuleInfo rule) {
    String summary = rule.summary();
    return summary.isEmpty()
        ? rule.id()
        : summary.substring(0, 1).toUpperCase(Locale.ROOT) + summary.substring(1) + ".";
  }

  private String markdownBody() {
    StringBuilder page = new StringBuilder();
    page.append(plain(summary(rule))).append("\n\n");
    page.append("| heading | level | judges |\n| --- | --- | --- |\n| ");
    page.append(rule.heading().word()).append(" | ").append(rule.level().word()).append(" | ");
    page.append(plain(rule.subjects())).append(" |\n");
    for (Section section : sections()) {
      page.append("\n## ").append(section.title()).append("\n\n");
      page.append(plain(section.body())).append('\n');
    }
    if (!links().isEmpty()) {
      page.append("\n## ").append(LINKS).append("\n\n").append(plain(links())).append('\n');
    }
    if (!rule.settings().isEmpty()) {
      page.append("\n## Settings\n\n");
      page.append("| name | standard | least | greatest | unit | meaning |\n");
      page.append("| --- | --- | --- | --- | --- | --- |\n");
      for (Setting setting : rule.settings()) {
        page.append("| `").append(setting.name()).append("` | ");
        page.append(Quoted.number(setting.standard())).append(" | ");
        page.append(Quoted.number(setting.least())).append(" | ");
        page.append(Quoted.number(setting.greatest())).append(" | ");
        page.append(plain(setting.unit())).append(" | ");
        page.append(plain(oneLine(setting.meaning()))).append(" |\n");
      }
      page.append("\nChanged for a harness, or for one place, under `limits`:\n\n");
      page.append("```json\n").append(limits()).append("\n```\n");
    }
    examples(page, "It fires in", rule.failing());
    examples(page, "It does not fire in", rule.passing());
    page.append("\n## Accepting a finding\n\n").append("```json\n");
    page.append(waiver()).append("\n```\n");
    return page.toString();
  }

  private static void examples(StringBuilder page, String title, List<String> examples) {
    if (examples.isEmpty()) {
      return;
    }
    page.append("\n## ").append(title).append("\n");
    for (String example : examples) {
      page.append("\n```json\n").append(example.strip()).append("\n```\n");
    }
  }

  private String textPage() {
    StringBuilder page = new StringBuilder();
    page.append(rule.id()).append(" (");
    page.append(rule.heading().word()).append(", ").append(rule.level().word()).append(")\n");
    page.append(summary(rule)).append("\nJudges: ").append(rule.subjects()).append(".\n");
    for (Section section : sections()) {
      page.append('\n').append(section.title()).append('\n').append(indented(section.body()));
    }
    if (!links().isEmpty()) {
      page.append('\n').append(LINKS).append('\n').append(indented(links()));
    }
    if (!rule.settings().isEmpty()) {
      page.append("\nSettings\n");
      for (Setting setting : rule.settings()) {
        String unit = setting.unit().isEmpty() ? "" : " " + setting.unit();
        page.append(INDENT).append(setting.name()).append(": ");
        page.append(Quoted.number(setting.standard())).append(unit).append(" (");
        page.append(Quoted.number(setting.least()))
            .append(" to ")
            .append(Quoted.number(setting.greatest()));
        page.append("): ").append(oneLine(setting.meaning())).append('\n');
      }
      page.append(indented(limits()));
    }
    for (String example : rule.failing()) {
      page.append("\nIt fires in\n").append(indented(example.strip()));
    }
    for (String example : rule.passing()) {
      page.append("\nIt does not fire in\n").append(indented(example.strip()));
    }
    page.append("\nAccepting a finding\n").append(indented(waiver()));
    return page.toString();
  }

  private record Section(String title, String body) {}

  private List<Section> sections() {
    List<Section> sections = new ArrayList<>();
    sections.add(new Section("What it looks for", rule.looksFor()));
    sections.add(new Section("Why it matters", rule.why()));
    sections.add(new Section("How to put it right", rule.remedy()));
    sections.add(new Section("Basis", rule.basis()));
    sections.removeIf(section -> section.body().isBlank());
    return sections;
  }

  /** What its findings may follow from, and whether others follow from them. */
  private String links() {
    List<String> lines = new ArrayList<>();
    if (!rule.follows().isEmpty()) {
      lines.add("A finding is listed under its cause where it follows from\n");
      rule.follows().forEach(cause -> lines.add("- " + cause.words()));
    }
    if (!rule.causes().isEmpty()) {
      lines.add((lines.isEmpty() ? "" : "\n") + "What follows from it is listed under it.");
    }
    return String.join("\n", lines);
  }

  private String limits() {
    Setting first = rule.settings().get(0);
    return "{\"limits\": {\""
        + rule.id()
        + "\": {\""
        + first.name()
        + "\": "
        + Quoted.number(first.standard())
        + "}}}";
  }

  private String waiver() {
    return "{\"waivers\": {\"NAME\": {\"rule\": \""
        + rule.id()
        + "\", \"at\": \"PLACE\", \"reason\": \"REASON\", \"until\": \"YEAR-MONTH-DAY\"}}}";
  }

  private static String oneLine(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }

  private static String indented(String text) {
    return text.lines()
        .map(line -> line.isBlank() ? "\n" : INDENT + line + "\n")
        .collect(Collectors.joining());
  }

  /** Text of a rule in Markdown: what would be markup or end a table's cell is written plainly. */
  private static String plain(String text) {
    return text.replace("\\", "\\\\")
        .replace("<", "&lt;")
        .replace("*", "\\*")
        .replace("|", "\\|")
        .replace("`", "\\`");
  }
}
