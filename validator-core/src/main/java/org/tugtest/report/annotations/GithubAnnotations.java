package org.tugtest.report.annotations;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.report.FindingGroup;
import org.tugtest.report.PrintableText;
import org.tugtest.report.Report;
import org.tugtest.text.Place;

/**
 * Workflow commands of GitHub Actions, each to be printed as a line of its own: the runner knows
 * them only where a line begins with {@code ::}. GitLab reads nothing from a log; it shows the file
 * of {@link org.tugtest.report.gitlab.GitlabReport}.
 */
public final class GithubAnnotations {
  /** The runner shows no more of one step and level. */
  private static final int MOST = 10;

  private GithubAnnotations() {}

  /** The gravest ten findings, and a line that tells how many more there are. */
  public static List<String> lines(Report report) {
    List<FindingGroup> groups = FindingGroup.standing(report);
    List<String> lines = new ArrayList<>();
    groups.stream()
        .sorted(Comparator.comparing(group -> group.finding().level()))
        .limit(MOST)
        .map(group -> line(report, group))
        .forEach(lines::add);
    int more = groups.size() - MOST;
    if (more > 0) {
      lines.add(
          command(Level.NOTE)
              + " title=tugtest::"
              + data(more + " more in the report; only the gravest " + MOST + " are shown here"));
    }
    return lines;
  }

  private static String line(Report report, FindingGroup group) {
    Finding finding = group.finding();
    Place place = finding.at().get(0);
    StringBuilder line = new StringBuilder(command(finding.level()));
    line.append(" file=").append(property(report.path(place.file())));
    line.append(",line=").append(place.line());
    line.append(",endLine=").append(place.endLine());
    if (place.line() == place.endLine()) {
      line.append(",col=").append(place.column());
      line.append(",endColumn=").append(place.endColumn());
    }
    line.append(",title=").append(property(finding.rule())).append("::");
    String follow =
        group.follow().isEmpty() ? "" : "\n" + group.follow().size() + " more follow from this";
    String remedy = finding.remedy().isBlank() ? "" : "\n" + PrintableText.of(finding.remedy());
    line.append(data(PrintableText.of(finding.message()) + remedy + follow));
    return line.toString();
  }

  private static String command(Level level) {
    return switch (level) {
      case ERROR -> "::error";
      case WARNING -> "::warning";
      case NOTE -> "::notice";
    };
  }

  /** Text after the second {@code ::}; line ends in it are shown as such. */
  private static String data(String text) {
    return text.replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A");
  }

  /** The value of a property. */
  private static String property(String text) {
    return data(PrintableText.of(text)).replace(":", "%3A").replace(",", "%2C");
  }
}
