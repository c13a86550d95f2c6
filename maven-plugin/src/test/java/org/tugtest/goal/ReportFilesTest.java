package org.tugtest.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.junit.jupiter.api.Test;
import org.tugtest.git.Environment;
import org.tugtest.report.ReportWriter;

class ReportFilesTest {
  private static List<String> formats(ReportFiles files) {
    return files.writers().stream().map(ReportWriter::format).toList();
  }

  @Test
  void allAreWrittenUnlessSomeAreNamed() throws MojoExecutionException {
    List<String> all = List.of("html", "markdown", "sarif", "junit", "gitlab", "json");
    assertThat(formats(ReportFiles.of(null, CiSystem.NONE))).isEqualTo(all);
    assertThat(formats(ReportFiles.of(List.of(" "), CiSystem.NONE))).isEqualTo(all);
    assertThat(formats(ReportFiles.of(List.of("sarif", "html"), CiSystem.NONE)))
        .containsExactly("html", "sarif");
  }

  @Test
  void whatTheCiSystemNeedsIsAdded() throws MojoExecutionException {
    assertThat(formats(ReportFiles.of(List.of("html"), CiSystem.GITLAB)))
        .containsExactly("html", "gitlab");
    assertThat(formats(ReportFiles.of(List.of("html"), CiSystem.GITHUB))).containsExactly("html");
  }

  @Test
  void aComparisonHasThree() throws MojoExecutionException {
    assertThat(formats(ReportFiles.ofComparison(null)))
        .containsExactly("html", "markdown", "json", "rework");
    assertThat(formats(ReportFiles.ofComparison(List.of("json")))).containsExactly("json");
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> ReportFiles.ofComparison(List.of("sarif")))
        .withMessage("tugtest.formats is \"sarif\"; it takes html, markdown, json, rework");
  }

  @Test
  void theSummaryOfAStepIsMarkdown() {
    assertThat(ReportFiles.summary()).map(ReportWriter::format).contains("markdown");
  }

  @Test
  void theCiSystemIsKnownByItsVariablesOrNamed() throws MojoExecutionException {
    Environment github = new Environment(Map.of("GITHUB_ACTIONS", "true"));
    Environment gitlab = new Environment(Map.of("GITLAB_CI", "true"));
    Environment neither = new Environment(Map.of("GITHUB_ACTIONS", "false"));
    assertThat(CiSystem.of("auto", github)).isEqualTo(CiSystem.GITHUB);
    assertThat(CiSystem.of("auto", gitlab)).isEqualTo(CiSystem.GITLAB);
    assertThat(CiSystem.of("auto", neither)).isEqualTo(CiSystem.NONE);
    assertThat(CiSystem.of("never", github)).isEqualTo(CiSystem.NONE);
    assertThat(CiSystem.of("gitlab", github)).isEqualTo(CiSystem.GITLAB);
    assertThat(CiSystem.of("github", neither)).isEqualTo(CiSystem.GITHUB);
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> CiSystem.of("gihub", neither))
        .withMessage("tugtest.annotations is \"gihub\"; did you mean github?");
  }
}
